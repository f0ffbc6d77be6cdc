import type { Prior } from '../plan/prior.ts';
import { DIET_PARTS, type DietPart, dietTraits } from './diet-rules.ts';
import { energyOfBroods, ownUpkeep, type RuledEnergy, type Sizes } from './energy-rules.ts';
import { scaledTime } from './growth-curve.ts';
import { around, between, fixed, within } from './rule-priors.ts';
import { searchOf } from './search-rule.ts';
import { type Bounds, type ToleranceFacts, toleranceTraits } from './tolerance-rules.ts';
import { type Habitat, isSpared, TRAIT_DEFAULTS, TRAIT_IDS, TRAIT_SPECS, type TraitId } from './traits.ts';

export { type Bounds, DIET_PARTS, type DietPart };

/** What is known of a species whose energetics nobody measured. Lengths all in one measure, say carapace width. */
export interface LifeHistory {
  readonly habitat: Habitat;
  /** At which the times below hold [degC]. */
  readonly temperature: number;
  /** [mm]; `adultLength` is the usual full-grown size. */
  readonly lengthAtBirth: number;
  readonly lengthAtPuberty?: number;
  readonly adultLength: number;
  /** Wet mass at `adultLength` without shell [mg], and its dry part [g/g]. */
  readonly adultMass: number;
  readonly dryPart?: number;
  /** From release to the first eggs [d]. */
  readonly maturityAge: number;
  readonly youngPerBrood: number;
  readonly broodInterval: number;
  readonly broodTime: number;
  readonly femaleShare?: number;
  readonly lifespan: number;
  /** Shares of what it eats, any weights. */
  readonly diet: Readonly<Partial<Record<DietPart, number>>>;
  /** Length of the smallest and the largest prey a full-grown animal takes [mm]. */
  readonly preySmallest?: number;
  readonly preyLargest?: number;
  /** Outermost tolerated, in the units of the traits. */
  readonly survives: ToleranceFacts['survives'];
  /** Parts of the time spent in open water and at its margin [0..1]; left out: all for water animals, none for land. */
  readonly timeInWater?: number;
  readonly timeAtMargin?: number;
  /** Claimed by a full-grown animal [cm2]. */
  readonly groundPerAdult?: number;
  /** Whether hungry ones eat their own kind. */
  readonly eatsOwnKind?: 'never' | 'when hungry' | 'often';
  readonly moults?: boolean;
  /** False for those that stop growing when grown up; left out: they grow on. */
  readonly growsOn?: boolean;
  /** Whether it climbs glass, jumps or flies, so that a gap in the cover lets it out. */
  readonly leavesByGaps?: boolean;
  /** Rest as a pupa, a part of the age at maturity [d]; insects that have one do not eat when grown. */
  readonly pupaTime?: number;
  /** Wetness of the upper ground that eggs and larvae need [0..1]. */
  readonly wetGround?: number;
  /** Length at which water larvae change [mm]. */
  readonly lengthAtChange?: number;
  /** From release to the change [d]; left out: larvae grow as their grown kind does. */
  readonly larvalTime?: number;
  /** Whether it splits or buds: then its 'eggs' are grown pieces that burn nothing on the way. */
  readonly divides?: boolean;
}

/** Full-grown sizes usually met, over the size that growth tends to. @source assumed */
const MET_OF_END = 0.95;
/** Length at which growth stops, over that to which it tended, for those that stop when grown up. @source assumed */
const STOPPED_OF_END = 0.8;
/** Length at puberty over end length where none is given. @source charnov-1993, about 0.6 to 0.7 for fish (memory); 0.6 assumed for all */
const PUBERTY_OF_END = 0.6;
/** Dry part of wet mass where none is given [g/g]. @source memory: 0.15 worms to 0.3 reptiles */
const DRY_PART = 0.22;
/** Egg over newborn mass. @source assumed: a third of an egg is burnt before hatching */
const EGG_PER_NEWBORN = 1.35;
const CARBON_CONTENT = 0.42;

/** A prior a rule gives, and whether it came from a rule or a default. */
export interface RuledTraits {
  readonly priors: Readonly<Record<TraitId, Prior>>;
  /** One sentence for each contradiction a rule had to settle. */
  readonly remarks: readonly string[];
}

/**
 * Lengths and the speed between them: L(t) = Lend - (Lend - Lb) exp(-r t), or the curve of those that start slowly
 * (`scaledTime`), reaches puberty at the age given, less the rest as a pupa. Where the time of larvae is given, from the
 * change on, and larvae grow at a pace that gets them there.
 */
function sizes(history: LifeHistory, accelerated: number): Sizes & { larvalPace: number } {
  const { larvalTime = 0, lengthAtChange = 0, lengthAtBirth: birth, maturityAge, pupaTime = 0 } = history;
  const growsOn = history.growsOn ?? true;
  const end = history.adultLength / (growsOn ? MET_OF_END : STOPPED_OF_END);
  const puberty = !growsOn
    ? history.adultLength
    : (history.lengthAtPuberty ?? Math.max(PUBERTY_OF_END * end, birth + 0.3 * (end - birth)));
  const changes = larvalTime > 0 && lengthAtChange > birth && lengthAtChange < puberty;
  const start = changes ? lengthAtChange : birth;
  const growing = maturityAge - pupaTime - (changes ? larvalTime : 0);
  const curve = { end, accelerated };
  const rate = scaledTime(curve, start, puberty) / growing;
  const larvalPace = changes ? scaledTime(curve, birth, lengthAtChange) / (rate * larvalTime) : 1;
  return { birth, puberty, end, rate, accelerated, larvalPace };
}

/**
 * Traits of a species without measured energetics, from what keepers and field guides tell: sizes, ages, broods,
 * diet and the ranges it lives in. Documented in docs/science/life-history.md.
 *   Lend = adult length / 0.95;  Lpuberty = 0.6 Lend where not given
 *   r = ln((Lend - Lbirth)/(Lend - Lpuberty)) / age at maturity, of larvae from their change on; longer by `scaledTime` where
 *   the file states that young start slowly (`lengthAccelerated`)
 *   those that stop growing when grown up: Lpuberty = adult length, Lend = adult length / 0.8
 *   c = wet mass x dry part / adult length^3
 *   kappa and upkeep as in `energy-rules.ts`
 * Spreads are wide: a factor 1.3 on times and 2 on feeding, as geometric standard deviations.
 * @param given priors the file states itself, which win over every rule
 * @throws RangeError when lengths or ages contradict each other; says which
 * @source derived: the inversion of `energeticsOf`; constants assumed where their own line says so
 */
export function traitsOfLifeHistory(
  owner: string,
  history: LifeHistory,
  given: Readonly<Partial<Record<TraitId, Prior>>> = {},
): RuledTraits {
  const { larvalPace, ...size } = sizes(history, given.lengthAccelerated?.median ?? 0);
  const { birth, puberty, end, rate } = size;
  if (!(birth > 0 && birth < puberty && puberty < end))
    throw new RangeError(
      `${owner}: lengths must rise from birth (${birth} mm) over puberty (${puberty} mm) to ${end} mm`,
    );
  if (
    !(history.maturityAge > 0 && history.broodInterval > 0 && history.broodTime > 0 && history.lifespan > 0)
  )
    throw new RangeError(`${owner}: age at maturity, brood times and lifespan must be above 0 d`);
  if (!(rate > 0))
    throw new RangeError(
      `${owner}: maturityAge must be longer than the time as a larva and the rest as a pupa`,
    );
  const remarks: string[] = [];
  const energy = energyOf(history, size, given);
  if (energy.kappa !== energy.asked)
    remarks.push(
      `${owner}: the broods given ask for a share of ${(1 - energy.asked).toFixed(2)} of the food; ${(1 - energy.kappa).toFixed(2)} is taken`,
    );
  const ruled: Partial<Record<TraitId, Prior>> = {
    ...growthTraits(history, { birth, puberty, end, rate }, energy),
    ...breedingTraits(history),
    ...bodyTraits(history),
    ...pupaTraits(history, { birth, puberty }),
    larvalPace: larvalPace === 1 ? fixed(1) : around('larvalPace', larvalPace, 1.2),
    ...dietTraits(history, { ...energy, puberty: Math.max(puberty, size.accelerated ?? 0), end }),
    ...deathTraits(history),
    ...placeTraits(history, history.growsOn === false ? puberty : end),
    ...toleranceTraits(history),
    ...given,
  };
  const priors = Object.fromEntries(
    TRAIT_IDS.map((id) => [id, ruled[id] ?? (isSpared(id) ? fixed(TRAIT_DEFAULTS[id]) : missing(owner, id))]),
  );
  return { priors: priors as RuledTraits['priors'], remarks };
}

function missing(owner: string, id: TraitId): never {
  throw new RangeError(`${owner}: no rule gives trait ${id}; state it in the file`);
}

/** Dry mass of a full-grown animal [mg]. */
const dryMassOf = ({ adultMass, dryPart = DRY_PART }: LifeHistory): number => adultMass * dryPart;

/** Upkeep by rule unless the file states it, and the share to soma that goes with it and the broods. */
function energyOf(
  history: LifeHistory,
  size: Sizes,
  given: Readonly<Partial<Record<TraitId, Prior>>>,
): RuledEnergy & { own: number } {
  const { adultLength: length, broodInterval: interval, temperature, youngPerBrood } = history;
  const { birth } = size;
  const body = { dryMass: dryMassOf(history), carbonContent: CARBON_CONTENT, temperature };
  const own = given.upkeep?.median ?? ownUpkeep(size, body, history.growsOn);
  const perBrood = history.pupaTime ? 0 : youngPerBrood;
  const egg = given.eggPerNewborn?.median ?? (history.divides ? 1 : EGG_PER_NEWBORN);
  const eggs = perBrood * egg * birth * birth * birth;
  return { own, ...energyOfBroods(own, size, { length, eggs, interval }) };
}

function growthTraits(
  history: LifeHistory,
  { birth, puberty, end, rate }: Sizes,
  { kappa, own }: { kappa: number; own: number },
): Partial<Record<TraitId, Prior>> {
  const length = history.adultLength;
  const cube = dryMassOf(history) / (length * length * length);
  return {
    referenceTemperature: fixed(history.temperature),
    dryMassPerCube: around('dryMassPerCube', cube, 1.3),
    lengthAtBirth: between('lengthAtBirth', birth, 0.06 * birth, [
      0.88 * birth,
      Math.min(1.12 * birth, birth + 0.3 * (puberty - birth)),
    ]),
    lengthAtPuberty: between('lengthAtPuberty', puberty, 0.05 * puberty, [
      puberty - 0.3 * (puberty - birth),
      puberty + 0.3 * (end - puberty),
    ]),
    lengthAtEnd: between('lengthAtEnd', end, 0.05 * end, [end - 0.3 * (end - puberty), 1.15 * end]),
    growthRate: around('growthRate', rate, 1.3),
    upkeep: around('upkeep', own, 1.6),
    growsOn: fixed(history.growsOn === false ? 0 : 1),
    shareToSoma: between('shareToSoma', kappa, 0.2 * (1 - kappa), [
      kappa - 0.5 * (1 - kappa),
      kappa + 0.4 * (1 - kappa),
    ]),
  };
}

/** Most of a body that eggs can take [1]. @source assumed */
const MOST_EGGS = 0.6;

/**
 * Of those that pupate: their rest, and the part of a female's body at that length that all her eggs take, since she does
 * not eat. What she lays in all is given as young a brood.
 */
function pupaTraits(
  { pupaTime, wetGround, youngPerBrood }: LifeHistory,
  { birth, puberty }: Pick<Sizes, 'birth' | 'puberty'>,
): Partial<Record<TraitId, Prior>> {
  const wet = wetGround
    ? { wetGround: between('wetGround', wetGround, 0.15 * wetGround, [0.6 * wetGround, 1.4 * wetGround]) }
    : {};
  if (!pupaTime) return wet;
  const size = birth / puberty;
  const eggs = Math.min(MOST_EGGS, youngPerBrood * EGG_PER_NEWBORN * size * size * size);
  return {
    ...wet,
    pupaTime: around('pupaTime', pupaTime, 1.2),
    eggsOfBody: between('eggsOfBody', eggs, 0.2 * eggs, [0.5 * eggs, Math.min(0.75, 1.4 * eggs)]),
  };
}

/** Spread of the coolest water to breed in, over how far the usual temperature lies above the least survived [1]. @source assumed */
const COOLEST_SPREAD = 0.15;

function breedingTraits(history: LifeHistory): Partial<Record<TraitId, Prior>> {
  const { femaleShare = 0.5, broodTime, broodInterval, habitat, survives, temperature } = history;
  const around20 = habitat === 'land' ? survives.airTemperature : survives.waterTemperature;
  const low = around20?.low ?? temperature - 12;
  const high = around20?.high ?? temperature + 8;
  const cooler = temperature - low;
  const coolest = low + 0.2 * cooler;
  return {
    eggPerNewborn: history.divides ? fixed(1) : between('eggPerNewborn', EGG_PER_NEWBORN, 0.12, [1.05, 1.8]),
    femaleShare:
      femaleShare >= 1
        ? fixed(1)
        : between('femaleShare', femaleShare, 0.05, [0.6 * femaleShare, Math.min(0.95, 1.4 * femaleShare)]),
    broodTime: around('broodTime', broodTime, 1.2),
    broodInterval: around('broodInterval', broodInterval, 1.3),
    breedingCoolest: between('breedingCoolest', coolest, Math.min(1.5, COOLEST_SPREAD * cooler), [
      coolest - 3,
      Math.min(coolest + 3, coolest + 2 * COOLEST_SPREAD * cooler),
    ]),
    breedingWarmest: between('breedingWarmest', Math.max(high - 1, temperature + 1), 1, [
      temperature + 0.5,
      high + 1,
    ]),
  };
}

function bodyTraits({ habitat, survives, temperature }: LifeHistory): Partial<Record<TraitId, Prior>> {
  const high =
    (habitat === 'land' ? survives.airTemperature?.high : survives.waterTemperature?.high) ?? temperature + 8;
  return {
    activationEnergy: between('activationEnergy', 0.65, 0.1, [0.4, 0.95]),
    broodActivationEnergy: between('broodActivationEnergy', 0.65, 0.1, [0.4, 0.95]),
    heatLimit: between('heatLimit', high + 3, 1.5, [high + 0.5, high + 6]),
    carbonContent: between('carbonContent', CARBON_CONTENT, 0.03, [0.34, 0.5]),
    nitrogenContent: between('nitrogenContent', 0.09, 0.01, [0.065, 0.12]),
    phosphorusContent: between('phosphorusContent', 0.012, 0.003, [0.006, 0.025]),
  };
}

function deathTraits({ lifespan }: LifeHistory): Partial<Record<TraitId, Prior>> {
  return {
    lifespan: around('lifespan', lifespan, 1.25),
    adultLoss: around('adultLoss', Math.min(0.01, 0.2 / lifespan), 1.6),
    juvenileLoss: around('juvenileLoss', Math.min(0.02, 0.5 / lifespan + 0.002), 1.6),
    broodLoss: around('broodLoss', 0.005, 1.8),
    starvedUpkeep: between('starvedUpkeep', 0.5, 0.08, [0.3, 0.8]),
    starvationCondition: between('starvationCondition', 0.55, 0.07, [0.35, 0.75]),
    starvationHazard: around('starvationHazard', 0.5, 1.6),
  };
}

/** Share of its life in water: open water, and half of the time at the margin. */
function shareInWater({ habitat, timeInWater, timeAtMargin = 0 }: LifeHistory): number {
  if (habitat === 'water') return 1;
  if (habitat === 'land') return 0;
  return Math.min(1, (timeInWater ?? 0.3) + 0.5 * timeAtMargin);
}

const OWN_KIND = { never: 0, 'when hungry': 0.5, often: 1.5 } as const;

function placeTraits(history: LifeHistory, fullGrown: number): Partial<Record<TraitId, Prior>> {
  const { preySmallest = 0, preyLargest = 0, groundPerAdult = 0, moults = false } = history;
  const young = history.lengthAtChange ?? 0;
  return {
    shareInWater: fixed(shareInWater(history)),
    lengthAtChange: fixed(young),
    preySmallest: fixed(preySmallest / fullGrown),
    preyLargest: preyLargest > 0 ? around('preyLargest', preyLargest / fullGrown, 1.2) : fixed(0),
    search: around('search', preyLargest > 0 ? searchOf(history) : 0, 2),
    cannibalism: around('cannibalism', OWN_KIND[history.eatsOwnKind ?? 'never'], 1.6),
    hiding: between('hiding', 0.8, 0.08, [0.5, 0.97]),
    groundPerAdult: around('groundPerAdult', groundPerAdult, 1.4),
    leaving: history.leavesByGaps ? around('leaving', 0.01, 2) : fixed(0),
    moultInterval: moults ? around('moultInterval', Math.max(6, 0.8 * history.broodInterval), 1.4) : fixed(0),
    moultDeath: around('moultDeath', 0.003, 1.8),
    ...(moults && history.habitat !== 'land' ? hardening(history) : {}),
    crowdingDensity: around('crowdingDensity', crowdingOf(history), 1.8),
    crowdingHazard: around('crowdingHazard', 0.02, 1.6),
  };
}

/** Hardness and pH below which moults begin to fail: a little within what is tolerated. @source assumed */
function hardening({ survives }: LifeHistory): Partial<Record<TraitId, Prior>> {
  const hardness = (survives.hardness?.low ?? 2) + 1;
  const acidity = (survives.pH?.low ?? 6) + 0.3;
  return {
    moultHardness: between('moultHardness', hardness, 0.7, [Math.max(0, hardness - 2), hardness + 2]),
    moultPH: between('moultPH', acidity, 0.2, [acidity - 0.6, acidity + 0.6]),
  };
}

/** Full-grown animals per litre that water carries: half a gram wet a litre; land animals are held by their ground. */
function crowdingOf({ habitat, adultMass }: LifeHistory): number {
  return habitat === 'land' ? TRAIT_SPECS.crowdingDensity.max : within('crowdingDensity', 500 / adultMass);
}
