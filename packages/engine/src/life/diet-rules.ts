import type { Prior } from '../plan/prior.ts';
import { type Habitat, TRAIT_SPECS, type TraitId } from './traits.ts';

/** What a species file says an animal eats; the last is everything it hunts, by whatever kinds. */
export const DIET_PARTS = [
  'algae',
  'biofilm',
  'suspended algae',
  'detritus',
  'litter',
  'fungi',
  'soil',
  'plants',
  'feed',
  'carrion',
  'prey',
] as const;
export type DietPart = (typeof DIET_PARTS)[number];

/** What the rules of a diet need of a life history. */
export interface DietFacts {
  readonly habitat: Habitat;
  /** Shares of what it eats, any weights. */
  readonly diet: Readonly<Partial<Record<DietPart, number>>>;
}

interface Rule {
  readonly part: DietPart;
  readonly preference: TraitId;
  readonly efficiency: TraitId;
  /** Carbon usually lying on a square metre [mol/m2]; a food that is scarce and yet eaten must be sought out. */
  readonly usual: number;
  /** Share of its carbon assimilated [1]. */
  readonly worth: number;
  readonly place: 'water' | 'land' | 'both';
}

/**
 * Usual amounts and worth of each food.
 * @source assumed: 5 g dry algae, 5 g detritus, 80 g leaves, 0.1 g feed a square metre and the like, of the fungi of leaves
 * those outside of them (`land-breakdown`); efficiencies of small detritivores and grazers as recalled in the species files;
 * of soil organic matter worms of cool soils assimilate 1 to 3 % (lavelle-1988, memory)
 */
const RULES: readonly Rule[] = [
  {
    part: 'algae',
    preference: 'preferenceForAlgae',
    efficiency: 'efficiencyOnAlgae',
    usual: 0.2,
    worth: 0.6,
    place: 'water',
  },
  {
    part: 'biofilm',
    preference: 'preferenceForBiofilm',
    efficiency: 'efficiencyOnBiofilm',
    usual: 0.1,
    worth: 0.6,
    place: 'water',
  },
  {
    part: 'carrion',
    preference: 'preferenceForCarrion',
    efficiency: 'efficiencyOnCarrion',
    usual: 0.004,
    worth: 0.7,
    place: 'water',
  },
  {
    part: 'suspended algae',
    preference: 'preferenceForSuspended',
    efficiency: 'efficiencyOnSuspended',
    usual: 0.02,
    worth: 0.6,
    place: 'water',
  },
  {
    part: 'detritus',
    preference: 'preferenceForDetritus',
    efficiency: 'efficiencyOnDetritus',
    usual: 0.2,
    worth: 0.35,
    place: 'water',
  },
  {
    part: 'litter',
    preference: 'preferenceForLitter',
    efficiency: 'efficiencyOnLitter',
    usual: 3,
    worth: 0.12,
    place: 'water',
  },
  {
    part: 'plants',
    preference: 'preferenceForPlants',
    efficiency: 'efficiencyOnPlants',
    usual: 3,
    worth: 0.3,
    place: 'water',
  },
  {
    part: 'feed',
    preference: 'preferenceForFeed',
    efficiency: 'efficiencyOnFeed',
    usual: 0.004,
    worth: 0.7,
    place: 'water',
  },
  {
    part: 'litter',
    preference: 'preferenceForLandLitter',
    efficiency: 'efficiencyOnLandLitter',
    usual: 10,
    worth: 0.25,
    place: 'land',
  },
  {
    part: 'fungi',
    preference: 'preferenceForFungi',
    efficiency: 'efficiencyOnFungi',
    usual: 0.09,
    worth: 0.5,
    place: 'land',
  },
  {
    part: 'soil',
    preference: 'preferenceForSoil',
    efficiency: 'efficiencyOnSoil',
    usual: 60,
    worth: 0.03,
    place: 'land',
  },
  {
    part: 'carrion',
    preference: 'preferenceForRemains',
    efficiency: 'efficiencyOnRemains',
    usual: 0.004,
    worth: 0.7,
    place: 'land',
  },
  {
    part: 'plants',
    preference: 'preferenceForLandPlants',
    efficiency: 'efficiencyOnLandPlants',
    usual: 5,
    worth: 0.3,
    place: 'land',
  },
  {
    part: 'prey',
    preference: 'preferenceForPrey',
    efficiency: 'efficiencyOnPrey',
    usual: 0.02,
    worth: 0.75,
    place: 'both',
  },
];

/** Weighted food at which a diet of usual amounts is reckoned [mol/m2]; half saturation is a quarter of it. */
export const USUAL_WEIGHT = 0.2;

/** Carbon of a food that usually lies on a square metre [mol/m2], > 0. @source assumed, see the table */
export function usualAmount(preference: Rule['preference']): number {
  const rule = RULES.find((each) => each.preference === preference);
  if (!rule) throw new RangeError(`no rule of diets gives ${preference}`);
  return rule.usual;
}

/** Most carbon eaten over what ample growth needs [1]: animals raise their intake of poor food. @source assumed */
const GUT_RESERVE = 1.6;

/** Which share of a diet falls to a rule's food in the places the animal feeds in. */
function shareOf(rule: Rule, history: DietFacts, inWater: number): number {
  const part = (name: DietPart): number => history.diet[name] ?? 0;
  if (rule.place === 'water') {
    if (inWater <= 0) return 0;
    if (rule.part === 'detritus') return part('detritus') + part('soil');
    if (rule.part === 'litter') return part('litter') + part('fungi');
    return part(rule.part);
  }
  if (rule.place === 'land') {
    if (inWater >= 1) return 0;
    if (rule.part === 'fungi') return part('fungi') + part('algae') + part('biofilm');
    if (rule.part === 'soil') return part('soil') + part('detritus');
    if (rule.part === 'carrion') return part('carrion') + part('feed');
  }
  return part(rule.part);
}

interface Growth {
  readonly kappa: number;
  readonly puberty: number;
  readonly end: number;
  /** [1/d] */
  readonly upkeep: number;
}

/**
 * Weights and worth of foods from the shares of a diet: weight = share / usual amount, scaled so that usual amounts
 * weigh 0.2 mol/m2, four times the half saturation.
 * Most intake at puberty = 1.6 u Lend / (kappa efficiency), u the upkeep, over the body carbon there.
 * @source derived: with usual amounts an animal then eats the shares its file states
 */
export function dietTraits(history: DietFacts, growth: Growth): Partial<Record<TraitId, Prior>> {
  const inWater = history.habitat === 'water' ? 1 : history.habitat === 'land' ? 0 : 0.5;
  const shares = RULES.map((rule) => shareOf(rule, history, inWater));
  const total = shares.reduce((sum, share) => sum + share, 0);
  if (!(total > 0)) throw new RangeError('the diet names nothing the animal could eat where it lives');
  const traits: Partial<Record<TraitId, Prior>> = {};
  let worth = 0;
  for (const [order, rule] of RULES.entries()) {
    const share = shares[order]! / total;
    worth += share * rule.worth;
    traits[rule.preference] = wide(rule.preference, (share * USUAL_WEIGHT) / rule.usual);
    traits[rule.efficiency] = {
      kind: 'normal',
      median: rule.worth,
      spread: 0.15 * rule.worth,
      min: 0.6 * rule.worth,
      max: Math.min(0.95, 1.4 * rule.worth),
    };
  }
  const { kappa, puberty, end, upkeep } = growth;
  const needed = (upkeep * end) / (kappa * worth * puberty);
  return {
    ...traits,
    ...foodsBeside(traits),
    maxIngestion: wide('maxIngestion', GUT_RESERVE * needed, 1.4),
    halfSaturation: wide('halfSaturation', USUAL_WEIGHT / 4),
    algaeRefuge: wide('algaeRefuge', 0.02),
    nutrientEfficiency: { kind: 'normal', median: 0.7, spread: 0.08, min: 0.5, max: 0.9 },
  };
}

/** Dead water plants over living ones and over leaf litter, and most of their weight [1]; moss over taller plants. @source assumed */
const DEAD_OVER_LIVING = 10;
const DEAD_OVER_LITTER = 3;
const MOST_DEAD = 1;
const MOSS_OVER_PLANTS = 0.1;

/**
 * Weights of foods that are eaten by those that eat another: floating plants as submerged ones; dead water plants, soft
 * and half rotten, ten times as readily as living ones or three times as leaf litter, the greater; moss a tenth as
 * readily as taller plants.
 * @param priors of what the animal eats; those left out count as none
 * @returns priors of the weights [1]
 * @source assumed; directions: a caterpillar ate far less of any moss than of lettuce (haines-renwick-2009), most
 *   invertebrates take water plants dead rather than alive (newman-1991)
 */
export function foodsBeside(
  priors: Readonly<Partial<Record<TraitId, Prior>>>,
): Pick<Record<TraitId, Prior>, 'preferenceForFloating' | 'preferenceForDeadPlants' | 'preferenceForMoss'> {
  const weight = (id: TraitId): number => priors[id]?.median ?? 0;
  const plants = weight('preferenceForPlants');
  const dead = Math.max(DEAD_OVER_LITTER * weight('preferenceForLitter'), DEAD_OVER_LIVING * plants);
  return {
    preferenceForFloating: wide('preferenceForFloating', plants),
    preferenceForDeadPlants: wide('preferenceForDeadPlants', Math.min(MOST_DEAD, dead)),
    preferenceForMoss: wide('preferenceForMoss', MOSS_OVER_PLANTS * weight('preferenceForLandPlants')),
  };
}

function wide(id: TraitId, value: number, spread = 1.8): Prior {
  const { min, max } = TRAIT_SPECS[id];
  const median = Math.min(max, Math.max(min, value));
  if (!(median > 0)) return { kind: 'fixed', median, spread: 0, min: median, max: median };
  return {
    kind: 'lognormal',
    median,
    spread,
    min: Math.max(min, median / (spread * spread)),
    max: Math.min(max, median * spread * spread),
  };
}
