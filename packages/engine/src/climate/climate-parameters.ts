import type { ParameterSpec, ParameterSpecs } from '../process/contract.ts';

/** What is uncertain about heat and moisture in the box; `CLIMATE_PARAMETERS` gives units and ranges. */
export interface ClimateParameters {
  readonly draught: number;
  readonly leakage: number;
  readonly evaporationFactor: number;
  readonly airResistance: number;
  readonly drynessResistance: number;
  readonly landStore: number;
  readonly wicking: number;
  readonly innerFilmCoefficient: number;
  readonly outerFilmCoefficient: number;
  readonly baseConductance: number;
  readonly groundCoupling: number;
  readonly lampHeatInside: number;
  readonly dripLimit: number;
  readonly fogThreshold: number;
}

const specs = {
  draught: { unit: 'm/s', min: 0, max: 1, meaning: 'room air passing through the open part of the cover' },
  leakage: {
    unit: '1/h',
    min: 0,
    max: 20,
    meaning: 'box air renewed each hour through joints of the closed cover',
  },
  evaporationFactor: {
    unit: '1',
    min: 0.1,
    max: 3,
    meaning: 'evaporation of the pool against the quiet-air equation',
  },
  airResistance: {
    unit: 's/m',
    min: 50,
    max: 1000,
    meaning: 'resistance of the air above moist ground and plants',
  },
  drynessResistance: {
    unit: 's/m',
    min: 1,
    max: 5000,
    meaning: 'resistance of ground and plants when their moisture store is half empty',
  },
  landStore: {
    unit: 'kg/m2',
    min: 2,
    max: 200,
    meaning: 'moisture that the upper ground and plants hold when wet',
  },
  wicking: {
    unit: 'kg/m2/day',
    min: 0,
    max: 50,
    meaning: 'water drawn up from the pool by ground that has dried out',
  },
  innerFilmCoefficient: { unit: 'W/m2/K', min: 1, max: 20, meaning: 'convection between box air and glass' },
  outerFilmCoefficient: {
    unit: 'W/m2/K',
    min: 3,
    max: 30,
    meaning: 'convection and radiation from glass to room',
  },
  baseConductance: { unit: 'W/m2/K', min: 0, max: 10, meaning: 'heat loss through base, mat and stand' },
  groundCoupling: { unit: 'W/m2/K', min: 0.1, max: 100, meaning: 'heat exchange between ground and water' },
  lampHeatInside: {
    unit: '1',
    min: 0,
    max: 1,
    meaning: 'part of the lamps\u2019 input that ends as heat in the box',
  },
  dripLimit: {
    unit: 'kg/m2',
    min: 0.005,
    max: 0.5,
    meaning: 'condensate the glass holds before it runs down',
  },
  fogThreshold: {
    unit: 'kg/m2',
    min: 1e-5,
    max: 0.005,
    meaning: 'condensate from which the glass looks fogged',
  },
} as const satisfies ParameterSpecs<ClimateParameters>;

/** Specification of the climate's parameters, for the library and for priors. */
export const CLIMATE_PARAMETERS: {
  readonly id: 'climate';
  readonly parameters: ParameterSpecs<ClimateParameters>;
} = {
  id: 'climate',
  parameters: specs,
};

/**
 * Returns the parameters of the climate, each checked against its range [units in `CLIMATE_PARAMETERS`].
 * @param given values by key
 * @throws Error when one is missing; RangeError when one lies outside its range.
 * @source derived
 */
export function climateParameters(given: Readonly<Record<string, number>>): ClimateParameters {
  for (const [key, { unit, min, max }] of Object.entries<ParameterSpec>(specs)) {
    const value = given[key];
    if (value === undefined) throw new Error(`parameter climate.${key} [${unit}] is missing`);
    if (!(value >= min && value <= max)) {
      throw new RangeError(`parameter climate.${key} = ${value} ${unit} is outside ${min} to ${max}`);
    }
  }
  return given as unknown as ClimateParameters;
}
