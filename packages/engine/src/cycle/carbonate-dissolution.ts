import { cbrt, exp } from '../numerics/elementary.ts';
import type { Process, Setting } from '../process/contract.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import {
  ARAGONITE_DENSITY,
  aragoniteOverCalcite,
  CALCITE_DENSITY,
  calciteCapacity,
  carbonateHeld,
  carbonateSurface,
  plummerConstants,
} from './carbonate-surface.ts';
import { concentration } from './concentration.ts';
import { rememberingLast } from './temperature-response.ts';

export interface CarbonateDissolutionParameters {
  readonly roughness: number;
  readonly filmConductance: number;
  readonly agedRate: number;
  readonly ageingTime: number;
  readonly phosphateHalf: number;
  readonly scaleThreshold: number;
  readonly scaleRate: number;
}

/** mmol/cm2/s in mol/m2/s, and mol/m3 in mol/kg of dilute water. */
const PER_SQUARE_METRE = 10;
const PER_KILOGRAM = 1e-3;
/** Grain of shells and scale where none was placed [m]. @source assumed */
const SHELL_GRAIN = 2e-3;

/**
 * Calcium carbonate dissolving from grains and coming out of hard water, for calcite and aragonite.
 *   per outer surface 1/R = 1/R_s + 1/R_f, two resistances in series,
 *   R_s = (k1 aH + k2 aCO2 + k3)(1 - Omega^(2/3)) roughness coat   (surface law, aH2O = 1)
 *   R_f = k_f C_held (1 - Omega^(1/3))                             (still film: diffusion of what is lacking)
 * with Omega of each mineral and coat = (aged + (1 - aged) e^(-age/tau)) / (1 + P/K), for growth on the grains and
 * adsorbed phosphate. Above the threshold ratio calcite settles on the submerged surface:
 *   scale = k3 s (Omega^(2/3) - threshold^(2/3)) A; between 1 and the threshold nothing happens.
 * @validity 5 to 60 degC, dilute water; aragonite by the calcite law; magnesium and humus are in the priors
 * @source plummer-wigley-parkhurst-1978 (rate), parkhurst-1999 (affinity term with the exponent 2/3); film and coat
 *   are derived from diffusion and assumed
 */
export const carbonateDissolution: Process<CarbonateDissolutionParameters> = {
  id: 'carbonate-dissolution',
  parameters: {
    roughness: { unit: '1', min: 1, max: 20, meaning: 'true surface over that of smooth spheres' },
    filmConductance: { unit: 'um/s', min: 0.1, max: 1e9, meaning: 'diffusion through the still film' },
    agedRate: { unit: '1', min: 0.02, max: 1, meaning: 'surface rate of overgrown over clean grains' },
    ageingTime: { unit: 'd', min: 1, max: 1000, meaning: 'time in which grains are overgrown' },
    phosphateHalf: { unit: 'mg/L', min: 0.01, max: 1e6, meaning: 'phosphorus that halves the surface rate' },
    scaleThreshold: { unit: '1', min: 1, max: 1000, meaning: 'saturation ratio above which scale forms' },
    scaleRate: { unit: '1', min: 0, max: 2, meaning: 'settling on surfaces over the rate of clean calcite' },
  },
  reads: [
    'carbonateSolid',
    'carbonateGrain',
    'carbonatePlaced',
    'aragoniteSolid',
    'aragoniteGrain',
    'aragonitePlaced',
    'carbonateAge',
    'phosphate',
    'calcium',
    'dissolvedInorganicCarbon',
    'waterVolume',
    'submergedArea',
    'waterTemperature',
    'hydrogenActivity',
    'carbonDioxide',
    'calciteSaturation',
  ],
  changes: ['carbonateSolid', 'aragoniteSolid', 'calcium', 'dissolvedInorganicCarbon'],
  prepare(parameters, setting) {
    return {
      reactions: [
        {
          name: 'dissolution of carbonate',
          stoichiometry: { carbonateSolid: -1, calcium: 1, dissolvedInorganicCarbon: 1 },
        },
        {
          name: 'dissolution of aragonite',
          stoichiometry: { aragoniteSolid: -1, calcium: 1, dissolvedInorganicCarbon: 1 },
        },
        {
          name: 'scale',
          stoichiometry: { calcium: -1, dissolvedInorganicCarbon: -1, carbonateSolid: 1 },
        },
      ],
      evaluate: evaluation(parameters, setting),
    };
  },
};

function evaluation(parameters: CarbonateDissolutionParameters, setting: Setting) {
  const calcite = grainsOf(setting, 'carbonateSolid', 'carbonatePlaced', 'carbonateGrain');
  const aragonite = grainsOf(setting, 'aragoniteSolid', 'aragonitePlaced', 'aragoniteGrain');
  const calcium = setting.index('calcium');
  const carbon = setting.index('dissolvedInorganicCarbon');
  const area = setting.index('submergedArea');
  const temperature = setting.index('waterTemperature');
  const saturation = setting.index('calciteSaturation');
  const ratio = rememberingLast(aragoniteOverCalcite);
  const k3 = rememberingLast((degrees) => plummerConstants(degrees).k3);
  const threshold = cbrt(parameters.scaleThreshold * parameters.scaleThreshold);
  const scale = parameters.scaleRate * PER_SQUARE_METRE;
  const rate = ratePerSurface(parameters, setting);

  return (values: Float64Array, rates: Float64Array, offset: number): void => {
    const omega = values[saturation]!;
    const degrees = values[temperature]!;
    const { left, grown } = surfaceOf(values, calcite, CALCITE_DENSITY);
    rates[offset] = left > 0 && omega < 1 ? grown * rate(values, omega) : 0;
    rates[offset + 1] = 0;
    if (values[aragonite.solid]! > 0) {
      const own = omega * ratio(degrees);
      const { grown: surface } = surfaceOf(values, aragonite, ARAGONITE_DENSITY);
      if (own < 1) rates[offset + 1] = surface * rate(values, own);
    }
    const excess = omega > parameters.scaleThreshold ? cbrt(omega * omega) - threshold : 0;
    const dissolved = values[calcium]! > 0 && values[carbon]! > 0;
    rates[offset + 2] = excess > 0 && dissolved ? scale * k3(degrees) * values[area]! * excess : 0;
  };
}

type Solid = 'carbonateSolid' | 'aragoniteSolid';
type Placed = 'carbonatePlaced' | 'aragonitePlaced';
type Grain = 'carbonateGrain' | 'aragoniteGrain';
interface Grains {
  readonly solid: number;
  readonly placed: number;
  readonly grain: number;
}

function grainsOf(setting: Setting, solid: Solid, placed: Placed, grain: Grain): Grains {
  return { solid: setting.index(solid), placed: setting.index(placed), grain: setting.index(grain) };
}

const surface = { left: 0, grown: 0 };
function surfaceOf(values: Float64Array, { solid, placed, grain }: Grains, density: number): typeof surface {
  surface.left = values[solid]!;
  surface.grown = carbonateSurface(surface.left, values[placed]!, values[grain]! || SHELL_GRAIN, density);
  return surface;
}

/** Dissolution per outer surface [mol/m2/s] in undersaturated water. */
function ratePerSurface(parameters: CarbonateDissolutionParameters, setting: Setting) {
  const temperature = setting.index('waterTemperature');
  const hydrogen = setting.index('hydrogenActivity');
  const carbonDioxide = setting.index('carbonDioxide');
  const age = setting.index('carbonateAge');
  const phosphate = setting.index('phosphate');
  const volume = setting.index('waterVolume');
  const { agedRate, ageingTime } = parameters;
  const law = parameters.roughness * PER_SQUARE_METRE;
  const film = parameters.filmConductance * 1e-6;
  const phosphateHalf = parameters.phosphateHalf / MOLAR_MASS.phosphorus;
  const k1 = rememberingLast((degrees) => plummerConstants(degrees).k1);
  const k2 = rememberingLast((degrees) => plummerConstants(degrees).k2 * PER_KILOGRAM);
  const k3 = rememberingLast((degrees) => plummerConstants(degrees).k3);
  const capacity = rememberingLast(calciteCapacity);
  const overgrown = rememberingLast((days) => agedRate + (1 - agedRate) * exp(-days / ageingTime));
  return (values: Float64Array, omega: number): number => {
    const degrees = values[temperature]!;
    const gas = values[carbonDioxide]!;
    const forward = k1(degrees) * values[hydrogen]! + k2(degrees) * gas + k3(degrees);
    const phosphorus = concentration(values[phosphate]!, values[volume]!);
    const coat = (overgrown(values[age]!) * phosphateHalf) / (phosphateHalf + phosphorus);
    const root = cbrt(omega);
    const onSurface = law * coat * forward * (1 - root * root);
    const throughFilm = film * carbonateHeld(capacity(degrees), gas) * (1 - root);
    return onSurface > 0 ? (onSurface * throughFilm) / (onSurface + throughFilm) : 0;
  };
}
