import type { Prior } from '../plan/prior.ts';
import type { ParameterSpec } from '../process/contract.ts';

function trait(unit: string, min: number, max: number, meaning: string): ParameterSpec {
  return { unit, min, max, meaning };
}

/**
 * Every number the life module needs of an aquatic species: unit, range outside which it is refused, meaning.
 * Rates hold at the reference temperature. "Half die in four days" is the scale of all water tolerances.
 * @source derived: the traits are what rearing studies report; `energetics.ts` turns them into DEBkiss parameters.
 */
export const TRAIT_SPECS = {
  // Size and growth
  referenceTemperature: trait('°C', 0, 35, 'temperature at which the rates below were measured'),
  dryMassPerCube: trait('mg/mm³', 1e-5, 0.5, 'dry mass without shell, divided by body length cubed'),
  lengthAtBirth: trait('mm', 0.05, 50, 'body length when the young leave the egg or the pouch'),
  lengthAtPuberty: trait('mm', 0.1, 200, 'body length at which the first eggs are made'),
  lengthAtEnd: trait('mm', 0.2, 500, 'body length approached with ample food'),
  growthRate: trait('1/d', 1e-4, 1, 'von Bertalanffy rate of body length with ample food'),
  shareToSoma: trait('1', 0.2, 0.99, 'share of assimilated food that goes to body upkeep and growth'),

  // Breeding
  eggPerNewborn: trait('1', 1, 3, 'mass of an egg when laid over mass of the newborn'),
  femaleShare: trait('1', 0.01, 1, 'share of animals that bear eggs; 1 for hermaphrodites'),
  broodTime: trait('d', 0.5, 400, 'time from egg laid to young released'),
  broodInterval: trait('d', 0.5, 400, 'time from one brood laid to the next with ample food'),
  breedingCoolest: trait('°C', -2, 35, 'no eggs are laid below this'),
  breedingWarmest: trait('°C', 0, 45, 'no eggs are laid above this and carried eggs are lost'),

  // Temperature
  activationEnergy: trait('eV', 0.05, 2, 'rise of feeding, upkeep, growth and ageing with temperature'),
  broodActivationEnergy: trait('eV', 0.05, 2, 'rise of egg development with temperature'),
  heatLimit: trait('°C', 5, 50, 'temperature at which heat has halved the rates'),

  // Body
  carbonContent: trait('g/g', 0.1, 0.6, 'carbon in dry mass'),
  nitrogenContent: trait('g/g', 0.01, 0.2, 'nitrogen in dry mass'),
  phosphorusContent: trait('g/g', 0.001, 0.06, 'phosphorus in dry mass'),

  // Diet
  maxIngestion: trait('1/d', 0.005, 10, 'most food carbon eaten a day over body carbon, at puberty'),
  halfSaturation: trait('mol/m²', 1e-5, 10, 'weighted food carbon on the ground at which intake is half'),
  algaeRefuge: trait('mol/m²', 0, 1, 'attached algae that cannot be scraped off'),
  preferenceForAlgae: trait('1', 0, 100, 'weight of attached algae among foods of equal amount'),
  preferenceForDetritus: trait('1', 0, 100, 'weight of detritus among foods of equal amount'),
  preferenceForLitter: trait('1', 0, 100, 'weight of leaf litter among foods of equal amount'),
  preferenceForFeed: trait('1', 0, 1000, 'weight of feed among foods of equal amount'),
  preferenceForPlants: trait('1', 0, 100, 'weight of submerged plants among foods of equal amount'),
  efficiencyOnAlgae: trait('1', 0.01, 0.95, 'share of eaten algae carbon that is assimilated'),
  efficiencyOnDetritus: trait('1', 0.01, 0.95, 'share of eaten detritus carbon that is assimilated'),
  efficiencyOnLitter: trait('1', 0.01, 0.95, 'share of eaten litter carbon that is assimilated'),
  efficiencyOnFeed: trait('1', 0.01, 0.95, 'share of eaten feed carbon that is assimilated'),
  efficiencyOnPlants: trait('1', 0.01, 0.95, 'share of eaten plant carbon that is assimilated'),
  nutrientEfficiency: trait('1', 0.05, 0.99, 'share of eaten nitrogen and phosphorus that is assimilated'),

  // Death
  lifespan: trait('d', 5, 20000, 'age at which old age alone has left 37 % alive'),
  adultLoss: trait('1/d', 0, 0.5, 'deaths of adults from causes not modelled'),
  juvenileLoss: trait('1/d', 0, 0.5, 'deaths of young from causes not modelled'),
  broodLoss: trait('1/d', 0, 0.5, 'eggs lost from causes not modelled'),
  starvedUpkeep: trait('1', 0.1, 1, 'upkeep of a starving animal over that of a fed one'),
  starvationCondition: trait('1', 0.1, 1, 'part of its best body mass below which an animal may starve'),
  starvationHazard: trait('1/d', 0, 10, 'deaths by starvation when body mass is half of that limit'),

  // Water
  temperatureLow: trait('°C', -2, 40, 'coldest water tolerated'),
  temperatureHigh: trait('°C', 0, 45, 'warmest water tolerated'),
  temperatureMargin: trait('°C', 0.1, 20, 'distance beyond either at which half die in four days'),
  pHLow: trait('pH', 2, 9, 'lowest pH tolerated'),
  pHHigh: trait('pH', 6, 12, 'highest pH tolerated'),
  pHMargin: trait('pH', 0.1, 5, 'distance beyond either at which half die in four days'),
  hardnessLow: trait('°dGH', 0, 20, 'lowest general hardness tolerated'),
  hardnessHigh: trait('°dGH', 2, 200, 'highest general hardness tolerated'),
  hardnessMargin: trait('°dGH', 0.1, 100, 'distance beyond either at which half die in four days'),
  oxygenNeeded: trait('mg/L', 0, 10, 'lowest oxygen tolerated'),
  oxygenMargin: trait('mg/L', 0.05, 10, 'shortfall at which half die in four days'),
  ammoniaNoEffect: trait('mg N/L', 0, 10, 'un-ionised ammonia that kills nobody however long it lasts'),
  ammoniaMedianLethal: trait('mg N/L', 0.001, 50, 'un-ionised ammonia at which half die in four days'),
  ammoniaRecovery: trait('1/d', 0.01, 10, 'rate at which the body follows the ammonia around it'),
  crowdingDensity: trait('1/L', 0.01, 1000, 'full-grown equivalents per litre above which crowding kills'),
  crowdingHazard: trait('1/d', 0, 1, 'deaths by crowding at twice that density'),
} as const satisfies Record<string, ParameterSpec>;

export type TraitId = keyof typeof TRAIT_SPECS;
export const TRAIT_IDS = Object.keys(TRAIT_SPECS) as TraitId[];

/** One value of every trait, in the units of TRAIT_SPECS. */
export type TraitValues = Readonly<Record<TraitId, number>>;

/** What the life module needs to know of a species; filled by the library. */
export interface AnimalTraits {
  /** What is believed of each trait, in the units of TRAIT_SPECS. */
  readonly priors: Readonly<Record<TraitId, Prior>>;
  readonly mating: 'two sexes' | 'self-fertile';
  /** Carried eggs share the fate of their mother; laid eggs do not. */
  readonly brood: 'carried' | 'laid';
}

/** The stages in which a population's animals are counted, youngest first; 'brooded' are eggs. */
export const STAGES = ['brooded', 'juvenile', 'adult'] as const;
export type Stage = (typeof STAGES)[number];

/** @throws RangeError when a trait is missing, outside its range or contradicts another; names it. */
export function checkTraits(owner: string, values: Readonly<Record<string, number>>): TraitValues {
  for (const id of TRAIT_IDS) {
    const spec = TRAIT_SPECS[id];
    const value = values[id];
    if (value === undefined) throw new RangeError(`${owner}: trait ${id} [${spec.unit}] is missing`);
    if (!(value >= spec.min && value <= spec.max)) {
      throw new RangeError(
        `${owner}: trait ${id} = ${value} ${spec.unit} is outside ${spec.min} to ${spec.max}`,
      );
    }
  }
  const checked = values as TraitValues;
  for (const [smaller, larger] of ORDERED) {
    if (!(checked[smaller] < checked[larger])) {
      throw new RangeError(`${owner}: ${smaller} must be less than ${larger}`);
    }
  }
  return checked;
}

/** Pairs of which the first must be the smaller one. */
const ORDERED: readonly (readonly [TraitId, TraitId])[] = [
  ['lengthAtBirth', 'lengthAtPuberty'],
  ['lengthAtPuberty', 'lengthAtEnd'],
  ['temperatureLow', 'temperatureHigh'],
  ['breedingCoolest', 'breedingWarmest'],
  ['pHLow', 'pHHigh'],
  ['hardnessLow', 'hardnessHigh'],
  ['ammoniaNoEffect', 'ammoniaMedianLethal'],
];
