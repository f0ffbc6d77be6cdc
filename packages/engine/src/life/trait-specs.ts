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
  hardnessHigh: trait('°dGH', 2, 500, 'highest general hardness tolerated'),
  hardnessMargin: trait('°dGH', 0.1, 100, 'distance beyond either at which half die in four days'),
  oxygenNeeded: trait('mg/L', 0, 10, 'lowest oxygen tolerated'),
  oxygenMargin: trait('mg/L', 0.05, 10, 'shortfall at which half die in four days'),
  ammoniaNoEffect: trait('mg N/L', 0, 10, 'un-ionised ammonia that kills nobody however long it lasts'),
  ammoniaMedianLethal: trait('mg N/L', 0.001, 50, 'un-ionised ammonia at which half die in four days'),
  ammoniaRecovery: trait('1/d', 0.01, 10, 'rate at which the body follows the ammonia around it'),
  crowdingDensity: trait('1/L', 0.01, 1000, 'full-grown equivalents per litre above which crowding kills'),
  crowdingHazard: trait('1/d', 0, 1, 'deaths by crowding at twice that density'),

  // Poisons and salt of the water: a file may leave these and all below out; rules give them by kind of animal
  nitriteNoEffect: trait(
    'mg N/L',
    0,
    1e4,
    'nitrite that kills nobody however long it lasts, at 20 mg/L chloride',
  ),
  nitriteMedianLethal: trait(
    'mg N/L',
    0.01,
    1e5,
    'nitrite at which half die in four days, at 20 mg/L chloride',
  ),
  nitriteRecovery: trait('1/d', 0.05, 10, 'rate at which the body follows the nitrite around it'),
  nitriteChloride: trait('mg/L', 0.05, 1e5, 'chloride that doubles the nitrite borne in water without any'),
  copperNoEffect: trait(
    'µg/L',
    0,
    1e5,
    'copper that kills nobody however long it lasts, at 50 mg/L hardness',
  ),
  copperMedianLethal: trait('µg/L', 0.5, 1e6, 'copper at which half die in four days, at 50 mg/L hardness'),
  copperRecovery: trait('1/d', 0.05, 10, 'rate at which the body follows the copper around it'),
  saltLow: trait('mS/cm', 0, 60, 'lowest conductivity of the water tolerated; 0 for animals of fresh water'),
  saltLowMargin: trait('mS/cm', 0.1, 200, 'shortfall of it at which half die in four days'),
  saltHigh: trait('mS/cm', 0.2, 100, 'highest conductivity of the water tolerated'),
  saltHighMargin: trait('mS/cm', 0.1, 200, 'excess of it at which half die in four days'),

  // Harm short of death
  oxygenSlowing: trait('mg/L', 0, 15, 'oxygen at which a fifth less is eaten; 0 for those that breathe air'),
  ammoniaSlowing: trait(
    'mg N/L',
    0.05,
    1e5,
    'ammonia and ammonium that take a fifth off growth or young over weeks, at pH 7 and 20 °C',
  ),
  nitriteSlowing: trait(
    'mg N/L',
    0.001,
    1e5,
    'nitrite that takes a fifth off growth or young over weeks, at 20 mg/L chloride',
  ),
  nitrateSlowing: trait('mg N/L', 0.5, 1e6, 'nitrate that takes a fifth off growth or young over weeks'),
  copperSlowing: trait(
    'µg/L',
    0.1,
    1e6,
    'copper that takes a fifth off growth or young over weeks, at 50 mg/L hardness',
  ),
  eggSensitivity: trait(
    '1',
    1,
    20,
    'dose of a poison that takes a fifth off growth over that which takes a fifth off young',
  ),
  ammoniaYoung: trait('1', 0.2, 20, 'lethal ammonia of the grown over that of the young'),
  nitriteYoung: trait('1', 0.2, 20, 'lethal nitrite of the grown over that of the young'),
  copperYoung: trait('1', 0.2, 20, 'lethal copper of the grown over that of the young'),
  testedYoung: trait(
    '1',
    0,
    1,
    '1 where the lethal concentrations above are those of the young, 0 of the grown',
  ),

  // Growth, finer
  growthYield: trait('1', 0.3, 0.98, 'body carbon made per carbon put into growth'),
  upkeep: trait('1/d', 0, 3, 'carbon an unfed animal burns over its own; 0 where it follows from growth'),
  lengthAccelerated: trait(
    'mm',
    0,
    200,
    'body length up to which feeding per surface rises with length, so that young start slowly; 0 for none',
  ),
  lateMaturing: trait(
    '1',
    0,
    1,
    'part of the egg share still spent on ripening at puberty, falling with length',
  ),
  crowdedEggs: trait(
    '1',
    0,
    10,
    'how crowding cuts eggs: at the crowding density their number is 1/(1 + this)',
  ),
  store: trait('1', 0, 3, 'reserve of a well-fed animal, a part of its mass, over the mass without it'),
  gorge: trait(
    '1',
    0,
    2,
    'reserve laid up at a meal after hunger beyond that of the always fed, over a well-fed body',
  ),
  growsOn: trait('1', 0, 1, '1 for those that grow on when grown up, 0 for those that stop at puberty'),
  variation: trait('1', 0, 0.5, 'spread of what animals of one length eat over its mean; 0 for all alike'),
  coldLimit: trait('°C', -30, 30, 'temperature at which cold has halved the rates; -30 where it does not'),
  filtering: trait('1', 0, 1, '1 for those that filter their food out of the water, 0 for all others'),

  // More foods
  preferenceForSuspended: trait('1', 0, 1000, 'weight of algae afloat among foods of equal amount'),
  preferenceForBiofilm: trait('1', 0, 100, 'weight of bacterial film among foods of equal amount'),
  preferenceForCarrion: trait(
    '1',
    0,
    1000,
    'weight of dead animals in the water among foods of equal amount',
  ),
  preferenceForFloating: trait('1', 0, 100, 'weight of floating plants among foods of equal amount'),
  preferenceForLandLitter: trait('1', 0, 100, 'weight of leaf litter on land among foods of equal amount'),
  preferenceForFungi: trait('1', 0, 1000, 'weight of fungi and mould on land among foods of equal amount'),
  preferenceForSoil: trait('1', 0, 100, 'weight of soil organic matter among foods of equal amount'),
  preferenceForRemains: trait('1', 0, 1000, 'weight of leftovers and carcasses on land among equal amounts'),
  preferenceForDeadPlants: trait('1', 0, 100, 'weight of dead water plants among foods of equal amount'),
  preferenceForMoss: trait('1', 0, 100, 'weight of living moss among foods of equal amount'),
  preferenceForLandPlants: trait(
    '1',
    0,
    100,
    'weight of living plants of land and wet ground among foods of equal amount',
  ),
  preferenceForPrey: trait('1', 0, 1000, 'weight of prey within reach among foods of equal amount'),
  efficiencyOnSuspended: trait('1', 0.01, 0.95, 'share of eaten floating algae carbon that is assimilated'),
  efficiencyOnBiofilm: trait('1', 0.01, 0.95, 'share of eaten bacterial film carbon that is assimilated'),
  efficiencyOnCarrion: trait('1', 0.01, 0.95, 'share of eaten dead animals in the water that is assimilated'),
  efficiencyOnFloating: trait('1', 0.01, 0.95, 'share of eaten floating plant carbon that is assimilated'),
  efficiencyOnLandLitter: trait('1', 0.01, 0.95, 'share of eaten land litter carbon that is assimilated'),
  efficiencyOnFungi: trait('1', 0.01, 0.95, 'share of eaten fungal carbon that is assimilated'),
  efficiencyOnSoil: trait('1', 0.01, 0.95, 'share of eaten soil organic carbon that is assimilated'),
  efficiencyOnRemains: trait('1', 0.01, 0.95, 'share of eaten leftovers on land that is assimilated'),
  efficiencyOnDeadPlants: trait(
    '1',
    0.01,
    0.95,
    'share of eaten carbon of dead water plants that is assimilated',
  ),
  efficiencyOnMoss: trait('1', 0.01, 0.95, 'share of eaten moss carbon that is assimilated'),
  efficiencyOnLandPlants: trait(
    '1',
    0.01,
    0.95,
    'share of eaten carbon of plants of land and wet ground that is assimilated',
  ),
  efficiencyOnPrey: trait('1', 0.01, 0.95, 'share of prey carbon that is assimilated'),

  // Eating and being eaten
  preySmallest: trait('1', 0, 10, 'length of the smallest prey over own length'),
  preyLargest: trait('1', 0, 10, 'length of the largest prey over own length'),
  search: trait(
    'm²/d',
    0,
    1000,
    'ground a full-grown animal searches for prey; 0 for those that find prey as readily as other food',
  ),
  cannibalism: trait('1', 0, 10, 'weight of own kind among prey when nothing was eaten; none when sated'),
  hiding: trait('1', 0, 0.999, 'part of these animals that predators cannot reach where cover is full'),

  // Place
  shareInWater: trait('1', 0, 1, 'part of its life that an animal past any larval stage spends in water'),
  larvalPace: trait('1', 0.2, 20, 'how much faster larvae feed, burn and grow than their grown kind'),
  larvalLoss: trait('1/d', 0, 0.5, 'deaths of larvae from causes not modelled, on top of those of all young'),
  lengthAtChange: trait('mm', 0, 200, 'length below which the young live in water as larvae; 0 for none'),
  pupaTime: trait(
    'd',
    0,
    200,
    'rest as a pupa before grown insects that do not eat; 0 for those that have none',
  ),
  eggsOfBody: trait('1', 0, 0.8, 'part of the body of a pupa that becomes eggs of the female'),
  wetGround: trait('1', 0, 1, 'wetness of the upper ground that eggs and larvae in it need; 0 for none'),
  groundPerAdult: trait(
    'cm²',
    0,
    1e5,
    'ground a full-grown animal claims, below which crowding kills; 0 for none',
  ),
  leaving: trait('1/d', 0, 1, 'adults that leave a day where the cover leaves them a way out'),

  // Drowning
  strayIntoWater: trait(
    'm/d',
    0,
    1,
    'strip along the shore from which animals of the land get into the water a day',
  ),
  timeAfloat: trait('d', 0.01, 100, 'time in which half drown where they cannot leave the water'),

  // Drying out
  timeDry: trait('d', 0.005, 1000, 'time in which half die where the water they live in is gone'),

  // Air
  airTemperatureLow: trait('°C', -20, 40, 'coldest air tolerated'),
  airTemperatureHigh: trait('°C', 5, 50, 'warmest air tolerated'),
  airTemperatureMargin: trait('°C', 0.1, 20, 'distance beyond either at which half die in four days'),
  humidityLow: trait('%', 0, 100, 'lowest relative humidity tolerated where it stays'),
  humidityMargin: trait('%', 0.5, 100, 'shortfall at which half die in four days'),
  moistShelter: trait('1', 0, 1, 'part of the dryness of the air that moist ground and litter spare it'),

  // Moulting
  moultInterval: trait(
    'd',
    0,
    400,
    'time between moults of a full-grown animal; 0 for those that do not moult',
  ),
  moultDeath: trait('1', 0, 0.5, 'share that dies at a moult in good water'),
  moultHardness: trait('°dGH', 0, 30, 'general hardness below which moults begin to fail'),
  moultPH: trait('pH', 2, 9, 'pH below which moults begin to fail'),
} as const satisfies Record<string, ParameterSpec>;

export type TraitId = keyof typeof TRAIT_SPECS;
export const TRAIT_IDS = Object.keys(TRAIT_SPECS) as TraitId[];
