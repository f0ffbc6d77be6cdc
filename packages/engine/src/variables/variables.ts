import { COMPOSITIONS, keptContent, organicContent } from './compositions.ts';
import type { Content } from './elements.ts';

export type Compartment = 'water' | 'solid' | 'living' | 'air' | 'glass' | 'ground' | 'room';

/**
 * state: moved by processes and events, counted in the budgets;
 * derived: computed from state by a derivation;
 * driver: set by the climate, the life module or the season before a cycle step.
 */
export type VariableKind = 'state' | 'derived' | 'driver';

export interface VariableSpec {
  readonly name: string;
  readonly unit: string;
  readonly compartment: Compartment;
  readonly kind: VariableKind;
  readonly content?: Content;
}

const dissolved = (name: string, content: Content): VariableSpec => ({
  name,
  unit: 'mol',
  compartment: 'water',
  kind: 'state',
  content,
});
const solid = (name: string, content: Content): VariableSpec => ({
  name,
  unit: 'mol',
  compartment: 'solid',
  kind: 'state',
  content,
});
const living = (name: string, content: Content): VariableSpec => ({
  name,
  unit: 'mol',
  compartment: 'living',
  kind: 'state',
  content,
});
const ground = (name: string, content: Content): VariableSpec => ({
  name,
  unit: 'mol',
  compartment: 'ground',
  kind: 'state',
  content,
});
const derived = (name: string, unit: string, compartment: Compartment): VariableSpec => ({
  name,
  unit,
  compartment,
  kind: 'derived',
});
const driver = (name: string, unit: string, compartment: Compartment): VariableSpec => ({
  name,
  unit,
  compartment,
  kind: 'driver',
});

const ORGANIC_CARBON: Content = { carbon: 1, oxygen: -1 };
const ORGANIC_NITROGEN: Content = { nitrogen: 1, oxygen: -2 };
const ORGANIC_PHOSPHORUS: Content = { phosphorus: 1 };
const CALCIUM_CARBONATE: Content = { carbon: 1, calcium: 1, charge: 2 };

/**
 * The only authority for a variable's name, unit, compartment, kind and element content.
 * Amounts are per enclosure, not per litre: evaporation concentrates without touching them.
 */
export const VARIABLES = {
  // Dissolved in the water [mol]
  dissolvedInorganicCarbon: dissolved('dissolved inorganic carbon', { carbon: 1 }),
  calcium: dissolved('calcium', { calcium: 1, charge: 2 }),
  magnesium: dissolved('magnesium', { magnesium: 1, charge: 2 }),
  sodium: dissolved('sodium', { sodium: 1, charge: 1 }),
  potassium: dissolved('potassium', { potassium: 1, charge: 1 }),
  chloride: dissolved('chloride', { chloride: 1, charge: -1 }),
  sulfate: dissolved('sulfate', { sulfur: 1, charge: -2 }),
  ammonium: dissolved('total ammonia', { nitrogen: 1, oxygen: -2, charge: 1 }),
  nitrite: dissolved('nitrite', { nitrogen: 1, oxygen: -0.5, charge: -1 }),
  nitrate: dissolved('nitrate', { nitrogen: 1, charge: -1 }),
  phosphate: dissolved('phosphate', { phosphorus: 1, charge: -1 }),
  oxygen: dissolved('dissolved oxygen', { oxygen: 1 }),
  dissolvedOrganicCarbon: dissolved('coloured dissolved organic carbon', ORGANIC_CARBON),
  copper: dissolved('copper', { copper: 1 }),
  labileOrganicCarbon: dissolved('colourless dissolved organic carbon that bacteria use up', ORGANIC_CARBON),

  // Dead and mineral [mol]
  feedCarbon: solid('uneaten feed, carbon', ORGANIC_CARBON),
  feedNitrogen: solid('uneaten feed, nitrogen', ORGANIC_NITROGEN),
  feedPhosphorus: solid('uneaten feed, phosphorus', ORGANIC_PHOSPHORUS),
  detritusCarbon: solid('detritus, carbon', ORGANIC_CARBON),
  detritusNitrogen: solid('detritus, nitrogen', ORGANIC_NITROGEN),
  detritusPhosphorus: solid('detritus, phosphorus', ORGANIC_PHOSPHORUS),
  litterCarbon: solid('leaf litter in the water, carbon', ORGANIC_CARBON),
  litterNitrogen: solid('leaf litter in the water, nitrogen', ORGANIC_NITROGEN),
  litterPhosphorus: solid('leaf litter in the water, phosphorus', ORGANIC_PHOSPHORUS),
  litterLeachable: solid('leachable organic carbon left in the leaf litter', ORGANIC_CARBON),
  woodLeachable: solid('leachable organic acid left in wood and peat, quick part', ORGANIC_CARBON),
  woodLeachableSlow: solid('leachable organic acid left in wood and peat, slow part', ORGANIC_CARBON),
  carcassCarbon: solid('dead animals, carbon', ORGANIC_CARBON),
  carcassNitrogen: solid('dead animals, nitrogen', ORGANIC_NITROGEN),
  carcassPhosphorus: solid('dead animals, phosphorus', ORGANIC_PHOSPHORUS),
  carbonateSolid: solid('solid calcite', CALCIUM_CARBONATE),
  aragoniteSolid: solid('solid aragonite', CALCIUM_CARBONATE),

  // Held by ground, peat and moss and given up for others [mol]; hydrogen ions carry no alkalinity
  exchangeableCalcium: solid('exchangeable calcium', { calcium: 1, charge: 2 }),
  exchangeableMagnesium: solid('exchangeable magnesium', { magnesium: 1, charge: 2 }),
  exchangeableSodium: solid('exchangeable sodium', { sodium: 1, charge: 1 }),
  exchangeablePotassium: solid('exchangeable potassium', { potassium: 1, charge: 1 }),
  exchangeableAmmonium: solid('exchangeable ammonium', { nitrogen: 1, oxygen: -2, charge: 1 }),
  exchangeableAcid: solid('exchangeable hydrogen ions', {}),
  boundPhosphate: solid('phosphate bound by the ground', { phosphorus: 1, charge: -1 }),

  // Living, fixed composition [mol C]
  ammoniaOxidisers: living('ammonia oxidisers', organicContent(COMPOSITIONS.bacteria)),
  nitriteOxidisers: living('nitrite oxidisers', organicContent(COMPOSITIONS.bacteria)),
  attachedAlgae: living('attached algae', organicContent(COMPOSITIONS.algae)),
  litterFungi: living('fungi on the leaf litter', organicContent(COMPOSITIONS.fungi)),
  shellCarbonate: living('calcium carbonate in shells and cuticles', CALCIUM_CARBONATE),
  submergedPlants: living('submerged plants', organicContent(COMPOSITIONS.submergedPlants)),
  plantRemains: living('dead water plants', organicContent(COMPOSITIONS.submergedPlants)),
  suspendedAlgae: living('suspended algae', organicContent(COMPOSITIONS.algae)),
  floatingPlants: living('floating plants', organicContent(COMPOSITIONS.floatingPlants)),
  emersedPlants: living('plants rooted in wet ground', organicContent(COMPOSITIONS.emersedPlants)),
  biofilm: living('bacterial film', organicContent(COMPOSITIONS.bacteria)),

  // Nitrogen and phosphorus that algae and plants keep of carbon they respired, per mol C of it [mol]
  keptByAttachedAlgae: living('nutrients kept by attached algae', keptContent(COMPOSITIONS.algae)),
  keptBySuspendedAlgae: living('nutrients kept by suspended algae', keptContent(COMPOSITIONS.algae)),
  keptBySubmergedPlants: living(
    'nutrients kept by submerged plants',
    keptContent(COMPOSITIONS.submergedPlants),
  ),
  keptByFloatingPlants: living('nutrients kept by floating plants', keptContent(COMPOSITIONS.floatingPlants)),
  keptByEmersedPlants: living(
    'nutrients kept by plants rooted in wet ground',
    keptContent(COMPOSITIONS.emersedPlants),
  ),

  // Animals, moved once a day by the life module [mol]
  animalCarbon: living('animals, carbon', ORGANIC_CARBON),
  animalNitrogen: living('animals, nitrogen', ORGANIC_NITROGEN),
  animalPhosphorus: living('animals, phosphorus', ORGANIC_PHOSPHORUS),
  eatenCarbon: living('eaten today, carbon', ORGANIC_CARBON),
  eatenNitrogen: living('eaten today, nitrogen', ORGANIC_NITROGEN),
  eatenPhosphorus: living('eaten today, phosphorus', ORGANIC_PHOSPHORUS),
  excretedCarbon: living('to be respired, carbon', ORGANIC_CARBON),
  excretedNitrogen: living('to be excreted, nitrogen', ORGANIC_NITROGEN),
  excretedPhosphorus: living('to be excreted, phosphorus', ORGANIC_PHOSPHORUS),

  // Life on land, moved once a day [mol]; what it gives to the air stays counted as given off
  landLitterCarbon: ground('leaf litter on land, carbon', ORGANIC_CARBON),
  landLitterNitrogen: ground('leaf litter on land, nitrogen', ORGANIC_NITROGEN),
  landLitterPhosphorus: ground('leaf litter on land, phosphorus', ORGANIC_PHOSPHORUS),
  remainsCarbon: ground('leftovers and carcasses on land, carbon', ORGANIC_CARBON),
  remainsNitrogen: ground('leftovers and carcasses on land, nitrogen', ORGANIC_NITROGEN),
  remainsPhosphorus: ground('leftovers and carcasses on land, phosphorus', ORGANIC_PHOSPHORUS),
  landWoodCarbon: ground('sugars in the wood above the water that mould can reach', ORGANIC_CARBON),
  moss: ground('moss', organicContent(COMPOSITIONS.moss)),
  landPlants: ground('plants rooted on land', organicContent(COMPOSITIONS.landPlants)),
  landFungi: ground('fungi and mould on land', organicContent(COMPOSITIONS.fungi)),
  soilCarbon: ground('soil organic matter, carbon', ORGANIC_CARBON),
  soilNitrogen: ground('soil organic matter, nitrogen', ORGANIC_NITROGEN),
  soilPhosphorus: ground('soil organic matter, phosphorus', ORGANIC_PHOSPHORUS),
  soilMineralNitrogen: ground('mineral nitrogen in the soil', ORGANIC_NITROGEN),
  soilMineralPhosphorus: ground('mineral phosphorus in the soil', ORGANIC_PHOSPHORUS),
  // What moss and land plants take from the air: counted against what they hold, so that the sum stays nil.
  airCarbonTaken: ground('carbon taken from the air on land', { carbon: -1, oxygen: 1 }),
  givenOffCarbon: ground('carbon given to the air or carried off by what left', ORGANIC_CARBON),
  givenOffNitrogen: ground('nitrogen carried off by what left', ORGANIC_NITROGEN),
  givenOffPhosphorus: ground('phosphorus carried off by what left', ORGANIC_PHOSPHORUS),

  // Water chemistry, derived from the dissolved amounts, volume and temperature
  pH: derived('pH', '1', 'water'),
  alkalinity: derived('alkalinity', 'mol/m3', 'water'),
  carbonDioxide: derived('dissolved carbon dioxide, CO2(aq)', 'mol/m3', 'water'),
  bicarbonate: derived('bicarbonate, ion pairs included', 'mol/m3', 'water'),
  unionisedAmmonia: derived('un-ionised ammonia', 'mol/m3', 'water'),
  calciteSaturation: derived('saturation ratio of calcite', '1', 'water'),
  hydrogenActivity: derived('activity of hydrogen ions', 'mol/kg', 'water'),
  carbonDioxideSaturation: derived('carbon dioxide in equilibrium with the air', 'mol/m3', 'water'),
  oxygenSaturation: derived('oxygen in equilibrium with the air', 'mol/m3', 'water'),

  // Light on the water's inhabitants
  lightOnAlgae: derived('light on attached algae', 'umol/m2/s', 'water'),
  lightOnPlants: derived('light on submerged plants', 'umol/m2/s', 'water'),
  lightOnSuspendedAlgae: derived('light on suspended algae', 'umol/m2/s', 'water'),
  lightOnFloatingPlants: derived('light on floating plants', 'umol/m2/s', 'water'),
  lightOnEmersedPlants: derived('light on plants rooted in wet ground', 'umol/m2/s', 'ground'),
  algalGroundFilled: derived('share of the room for attached algae that is filled', '1', 'water'),
  filmGroundFilled: derived('share of the room for bacterial film that is filled', '1', 'water'),

  // Set by climate, season and life before a cycle step
  waterVolume: driver('water volume', 'm3', 'water'),
  waterArea: driver('open water surface', 'm2', 'water'),
  waterDepth: driver('mean depth of the open water', 'm', 'water'),
  submergedArea: driver('submerged surface', 'm2', 'water'),
  darkFilmSurface: driver('surface for films inside substrate and filter', 'm2', 'water'),
  wetSubstrate: driver('wet substrate deep enough to run short of oxygen', 'm2', 'ground'),
  wetPlantGround: driver('wet ground planted above the water', 'm2', 'ground'),
  bicarbonateUsers: driver('share of the submerged plants that use bicarbonate', '1', 'living'),
  surfaceRenewal: driver('share of the water surface stirred by pump and fall', '1', 'water'),
  fallAeration: driver('water that a fall brings to balance with the air', 'm3/s', 'water'),
  carbonateGrain: driver('grain of the calcite when placed, surface-weighted mean', 'm', 'solid'),
  carbonatePlaced: driver('calcite placed so far', 'mol', 'solid'),
  aragoniteGrain: driver('grain of the aragonite when placed, surface-weighted mean', 'm', 'solid'),
  aragonitePlaced: driver('aragonite placed so far', 'mol', 'solid'),
  carbonateAge: driver('time the carbonate has lain in the water, mean', 'd', 'solid'),
  exchangeArea: driver('surface of exchanging ground that the water meets', 'm2', 'ground'),
  looseExchanger: driver('exchange capacity lying loose in the water', 'mol', 'solid'),
  exchangeAcidStrength: driver('hold of exchangers on hydrogen ions, over that on sodium', '1', 'ground'),
  phosphateSites: driver('phosphate that the ground can bind', 'mol', 'ground'),
  phosphateHalf: driver('phosphate of the water at which the ground holds half of it', 'mol/m3', 'ground'),
  phosphateBedArea: driver('surface of ground that binds phosphate', 'm2', 'ground'),
  litterPace: driver('breakdown of the leaves present, over that of oak', '1', 'solid'),
  feedPace: driver('breakdown of the uneaten feed present, over that of flakes', '1', 'solid'),
  remainsPace: driver('breakdown of the dead plants present, over that of soft shoots', '1', 'solid'),
  carcassPace: driver('breakdown of the dead animals present, over that of small ones', '1', 'solid'),
  shellTarget: driver('calcium carbonate that bodies of this size carry', 'mol', 'living'),
  shellLoss: driver('part of the shells that the dead of a day leave', '1/s', 'living'),
  shellAragonite: driver('part of the shells left by the dead that is aragonite', '1', 'living'),
  waterTemperature: driver('water temperature', 'degC', 'water'),
  lightAtSurface: driver('light at the water surface', 'umol/m2/s', 'water'),
  roomCarbonDioxide: driver('carbon dioxide in the air, dry', 'umol/mol', 'room'),
  airPressure: driver('air pressure', 'Pa', 'room'),
  grazingOnAlgae: driver('clearance of attached algae by animals', '1/s', 'living'),
  grazingOnDetritus: driver('clearance of detritus by animals', '1/s', 'living'),
  grazingOnLitter: driver('clearance of leaf litter by animals', '1/s', 'living'),
  grazingOnFeed: driver('clearance of feed by animals', '1/s', 'living'),
  grazingOnPlants: driver('clearance of submerged plants by animals', '1/s', 'living'),
  grazingOnSuspended: driver('clearance of suspended algae by animals', '1/s', 'living'),
  grazingOnFloating: driver('clearance of floating plants by animals', '1/s', 'living'),
  grazingOnCarrion: driver('clearance of dead animals by animals', '1/s', 'living'),
  woodMouldCover: driver('part of the bare wood above the water that mould covers', '1', 'ground'),
  landArea: driver('land surface', 'm2', 'ground'),
  grazingOnDeadPlants: driver('clearance of dead water plants by animals', '1/s', 'living'),
  toughSubmerged: driver('part of the submerged plants that no animal takes', '1', 'living'),
  toughFloating: driver('part of the floating plants that no animal takes', '1', 'living'),
  toughEmersed: driver('part of the plants rooted in wet ground that no animal takes', '1', 'living'),
  toughMoss: driver('part of the moss that no animal takes', '1', 'ground'),
  fungiInLeaves: driver('part of the fungi on land that no small animal reaches', '1', 'ground'),
  toughLandPlants: driver('part of the plants rooted on land that no animal takes', '1', 'ground'),
  grazingOnBiofilm: driver('clearance of bacterial film by animals', '1/s', 'living'),
} as const satisfies Record<string, VariableSpec>;

export type VariableId = keyof typeof VARIABLES;
export const VARIABLE_IDS = Object.keys(VARIABLES) as VariableId[];

/** Position of each variable in a value array; states come first because the list does. */
export const VARIABLE_INDEX = Object.fromEntries(VARIABLE_IDS.map((id, index) => [id, index])) as Record<
  VariableId,
  number
>;

/** Name, unit, compartment, kind and content of a variable. */
export function variableSpec(id: VariableId): VariableSpec {
  return VARIABLES[id];
}

export const STATE_IDS = VARIABLE_IDS.filter((id) => variableSpec(id).kind === 'state');
