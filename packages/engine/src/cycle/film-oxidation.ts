import type { ParameterSpecs, Setting } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import type { VariableId } from '../variables/variables.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { acidityResponse } from './acidity-response.ts';
import { concentration, monod } from './concentration.ts';
import { arrheniusResponse, thetaResponse } from './temperature-response.ts';

/** Parameters that ammonia and nitrite oxidisers have in common. */
export interface FilmOxidationParameters {
  readonly maximumGrowth: number;
  readonly activationEnergy: number;
  readonly yield: number;
  readonly oxygenHalf: number;
  readonly inorganicCarbonHalf: number;
  readonly phosphateHalf: number;
  readonly acidSide: number;
  readonly alkalineSide: number;
  readonly arealCapacity: number;
  readonly decayRate: number;
  readonly decayTheta: number;
}

export const FILM_OXIDATION_SPECS: ParameterSpecs<FilmOxidationParameters> = {
  maximumGrowth: { unit: '1/d', min: 0.1, max: 2, meaning: 'highest growth at 20 degC' },
  activationEnergy: {
    unit: 'kJ/mol',
    min: 20,
    max: 110,
    meaning: 'activation energy of growth and capacity',
  },
  yield: { unit: 'g COD/g N', min: 0.01, max: 0.4, meaning: 'biomass grown per nitrogen oxidised' },
  oxygenHalf: { unit: 'mg/L', min: 0.05, max: 3, meaning: 'oxygen at half the highest rate' },
  inorganicCarbonHalf: {
    unit: 'mmol/L',
    min: 0.005,
    max: 1,
    meaning: 'inorganic carbon at half the highest rate',
  },
  phosphateHalf: { unit: 'mg P/L', min: 0.0005, max: 0.05, meaning: 'phosphate at half the highest rate' },
  acidSide: { unit: 'pH', min: 4.5, max: 7.2, meaning: 'pH on the acid side at about half the highest rate' },
  alkalineSide: {
    unit: 'pH',
    min: 8.5,
    max: 11,
    meaning: 'pH on the alkaline side at about half the highest rate',
  },
  arealCapacity: {
    unit: 'g N/m²/d',
    min: 0.01,
    max: 2,
    meaning: 'nitrogen a thick film oxidises per film surface at 20 degC, nothing lacking',
  },
  decayRate: { unit: '1/d', min: 0.005, max: 0.3, meaning: 'decay at 20 degC' },
  decayTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of decay per degree' },
};

/** The pools of one guild. */
export interface Guild {
  readonly biomass: VariableId;
  readonly substrate: VariableId;
}

const SHARED_READS = [
  'oxygen',
  'dissolvedInorganicCarbon',
  'phosphate',
  'hydrogenActivity',
  'waterVolume',
  'waterTemperature',
  'submergedArea',
  'darkFilmSurface',
] as const satisfies readonly VariableId[];

/** What `filmCapacity` and `filmDecay` read for a guild. */
export function filmReads(guild: Guild): readonly VariableId[] {
  return [guild.biomass, guild.substrate, ...SHARED_READS];
}

/**
 * Biomass grown per nitrogen oxidised [mol C/mol N] from g COD per g N; 1 mol C of biomass is burnt by 1 mol O2,
 * nitrogen left as ammonia.
 * @source derived: C5H7O2N + 5 O2 -> 5 CO2 + NH3 + 2 H2O
 */
export function molarYield(gramsDemandPerGramNitrogen: number): number {
  return (gramsDemandPerGramNitrogen * MOLAR_MASS.nitrogen) / MOLAR_MASS.oxygen;
}

/** A rate [mol/s] read from the value array. */
export type RateOf = (values: Float64Array) => number;

/**
 * Nitrogen that a guild of film bacteria would oxidise if there were plenty of it [mol N/s, >= 0]:
 * q = limits v c/(v + c), v = mu20 e(T) X / Y, c = c20 e(T) A, with e(T) the Arrhenius factor, X the biomass, A all wetted
 * surface for films, and limits the product of S/(K + S) for oxygen, inorganic carbon and phosphate, times the response to
 * acidity. A thin film works in proportion to its biomass; a thick one is held by what diffuses into it, in proportion to
 * its surface.
 * @source monod-1949, henze-2000 (product of limits); `derived`: the harmonic joining of volume and surface limits
 */
export function filmCapacity(parameters: FilmOxidationParameters, guild: Guild, setting: Setting): RateOf {
  const [oxygen, inorganicCarbon, phosphate, hydrogen, volume, temperature, area, darkArea] =
    SHARED_READS.map((id) => setting.index(id)) as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
  const biomass = setting.index(guild.biomass);

  const perBiomass = parameters.maximumGrowth / SECONDS_PER_DAY / molarYield(parameters.yield);
  const perArea = parameters.arealCapacity / MOLAR_MASS.nitrogen / SECONDS_PER_DAY;
  const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
  const carbonHalf = parameters.inorganicCarbonHalf;
  const phosphateHalf = parameters.phosphateHalf / MOLAR_MASS.phosphorus;
  const warmth = arrheniusResponse(parameters.activationEnergy * 1000, 20);
  const acidity = acidityResponse(parameters.acidSide, parameters.alkalineSide);

  return (values) => {
    const byBiomass = perBiomass * values[biomass]!;
    const byArea = perArea * (values[area]! + values[darkArea]!);
    const water = values[volume]!;
    if (!(byBiomass > 0 && byArea > 0 && water > 0)) return 0;
    const limits =
      monod(concentration(values[oxygen]!, water), oxygenHalf) *
      monod(concentration(values[inorganicCarbon]!, water), carbonHalf) *
      monod(concentration(values[phosphate]!, water), phosphateHalf) *
      acidity(values[hydrogen]!);
    return limits * warmth(values[temperature]!) * byBiomass * (byArea / (byBiomass + byArea));
  };
}

/**
 * Decay of a guild [mol C/s, >= 0]: b20 theta^(T - 20) X.
 * @source henze-2000
 */
export function filmDecay(parameters: FilmOxidationParameters, guild: Guild, setting: Setting): RateOf {
  const biomass = setting.index(guild.biomass);
  const temperature = setting.index('waterTemperature');
  const rate = parameters.decayRate / SECONDS_PER_DAY;
  const warmth = thetaResponse(parameters.decayTheta, 20);
  return (values) => rate * warmth(values[temperature]!) * values[biomass]!;
}

/** Dead bacteria become detritus of their own composition. */
export const BACTERIA_TO_DETRITUS = {
  detritusCarbon: 1,
  detritusNitrogen: COMPOSITIONS.bacteria.nitrogenPerCarbon,
  detritusPhosphorus: COMPOSITIONS.bacteria.phosphorusPerCarbon,
} as const;
