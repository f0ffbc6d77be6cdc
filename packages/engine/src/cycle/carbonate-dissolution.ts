import { cbrt, exp10 } from '../numerics/elementary.ts';
import type { Process } from '../process/contract.ts';
import { ICE_POINT } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { rememberingLast } from './temperature-response.ts';

export interface CarbonateDissolutionParameters {
  readonly roughness: number;
  readonly hindrance: number;
}

/** Density of calcite [kg/m3]. @source deer-1992 (memory) */
const CALCITE_DENSITY = 2710;
/** mmol/cm2/s in mol/m2/s, and mol/m3 in mol/kg of dilute water. */
const PER_SQUARE_METRE = 10;
const PER_KILOGRAM = 1e-3;
/** Below this share of what was placed, grains are taken to vanish whole instead of shrinking further. */
const LAST_SHARE = 1e-3;

/**
 * Forward rate constants of calcite dissolution [mmol/cm2/s per unit activity]: log k1 = 0.198 - 444/T,
 * log k2 = 2.84 - 2177/T, log k3 = -5.86 - 317/T up to 25 degC and -1.10 - 1737/T above (T in K).
 * @param temperature [degC], 5 to 60
 * @source plummer-wigley-parkhurst-1978 (rate constants; read in parkhurst-1999)
 */
export function plummerConstants(temperature: number): { k1: number; k2: number; k3: number } {
  const inverse = 1 / (temperature + ICE_POINT);
  return {
    k1: exp10(0.198 - 444 * inverse),
    k2: exp10(2.84 - 2177 * inverse),
    k3: temperature <= 25 ? exp10(-5.86 - 317 * inverse) : exp10(-1.1 - 1737 * inverse),
  };
}

/**
 * Surface of the carbonate that is left [m2]: of smooth spheres of the starting grain, 6 M / (rho d), times the
 * roughness, times (placed / left)^(1/3) since each grain shrinks while their number stays. When less than a
 * thousandth is left the factor stays at 10 and the surface falls with the mass.
 * @param left amount left [mol], >= 0
 * @param placed amount placed so far [mol]; taken as `left` when less than that
 * @param grain starting diameter d [m]; no surface when 0
 * @source derived: geometry of shrinking spheres
 */
export function carbonateSurface(left: number, placed: number, grain: number): number {
  if (!(left > 0 && grain > 0)) return 0;
  const mass = (left * MOLAR_MASS.calciumCarbonate) / 1000;
  const remaining = placed > left ? Math.max(LAST_SHARE, left / placed) : 1;
  return (6 * mass) / (CALCITE_DENSITY * grain * cbrt(remaining));
}

/**
 * Dissolution of calcium carbonate (calcite law):
 * R = (k1 aH + k2 aCO2 + k3 aH2O) (1 - Omega^(2/3)) A roughness hindrance, aH2O = 1.
 * `hindrance` stands for the still film of water, growth on the grains and adsorbed phosphate and humus.
 * Nothing precipitates: above saturation the rate is 0 and water may stay supersaturated.
 * @validity 5 to 60 degC; aragonite dissolves at a similar rate but to a higher saturation, which is not told apart
 * @source plummer-wigley-parkhurst-1978 (rate), parkhurst-1999 (affinity term with the exponent 2/3)
 */
export const carbonateDissolution: Process<CarbonateDissolutionParameters> = {
  id: 'carbonate-dissolution',
  parameters: {
    roughness: { unit: '1', min: 1, max: 20, meaning: 'true surface over that of smooth spheres' },
    hindrance: {
      unit: '1',
      min: 0.01,
      max: 1,
      meaning: 'rate in the enclosure over that of a clean stirred grain',
    },
  },
  reads: [
    'carbonateSolid',
    'carbonateGrain',
    'carbonatePlaced',
    'waterTemperature',
    'hydrogenActivity',
    'carbonDioxide',
    'calciteSaturation',
  ],
  changes: ['carbonateSolid', 'calcium', 'dissolvedInorganicCarbon'],
  prepare(parameters, setting) {
    const solid = setting.index('carbonateSolid');
    const grain = setting.index('carbonateGrain');
    const placed = setting.index('carbonatePlaced');
    const temperature = setting.index('waterTemperature');
    const hydrogen = setting.index('hydrogenActivity');
    const carbonDioxide = setting.index('carbonDioxide');
    const saturation = setting.index('calciteSaturation');
    const factor = parameters.roughness * parameters.hindrance * PER_SQUARE_METRE;
    const k1 = rememberingLast((degrees) => plummerConstants(degrees).k1);
    const k2 = rememberingLast((degrees) => plummerConstants(degrees).k2 * PER_KILOGRAM);
    const k3 = rememberingLast((degrees) => plummerConstants(degrees).k3);
    return {
      reactions: [
        {
          name: 'dissolution of carbonate',
          stoichiometry: { carbonateSolid: -1, calcium: 1, dissolvedInorganicCarbon: 1 },
        },
      ],
      evaluate(values, rates, offset) {
        const left = values[solid]!;
        const omega = values[saturation]!;
        if (!(left > 0 && omega < 1)) {
          rates[offset] = 0;
          return;
        }
        const degrees = values[temperature]!;
        const forward = k1(degrees) * values[hydrogen]! + k2(degrees) * values[carbonDioxide]! + k3(degrees);
        const surface = carbonateSurface(left, values[placed]!, values[grain]!);
        rates[offset] = factor * surface * forward * (1 - cbrt(omega * omega));
      },
    };
  },
};
