import { memberDraw } from '../outlook/prepare.ts';
import type { FeedComposition } from '../plan/care.ts';
import type { Plan, Population } from '../plan/plan.ts';
import { type ChosenBy, judgedAfresh, RAISE, raisedUntilHalf } from './feeding-choice.ts';
import type { FeedingPlan, HeldPopulation } from './feeding-found.ts';
import { feedingSentences } from './feeding-sentences.ts';
import {
  arrivalOf,
  type Dose,
  type FeedingTrial,
  fedWith,
  type TargetAdults,
  tryFeeding,
  withTargets,
} from './feeding-trial.ts';
import { earliest, type WaterJudge, type WaterLeaving, waterJudge } from './feeding-water.ts';
import { medianTraits } from './need.ts';
import { larderOf, larderTemperature } from './production.ts';
import { steadyPopulation } from './steady-population.ts';

export type { ChosenBy, HeldIn } from './feeding-choice.ts';
export type { FeedingPlan, HeldPopulation } from './feeding-found.ts';
export type { TargetAdults } from './feeding-trial.ts';

export interface FeedingPlanOptions {
  /** Feed to be given; the one of the plan's routine when left out. */
  readonly feed?: FeedComposition;
  /** Between feedings [d], 1 to 30; 3 when left out. */
  readonly everyDays?: number;
  /** Where it is given; when left out, where most of those wanted live. */
  readonly onLand?: boolean;
  /** Hour of the day at which it is given; the day's beginning when left out. */
  readonly hour?: number;
  /** Length of the trial [d]; 400 when left out. */
  readonly days?: number;
  /** Of the runs that are drawn; 1 when left out. */
  readonly seed?: number;
  /** Fresh runs by which the dose that was found is judged, 2 to 2000; 24 when left out. */
  readonly members?: number;
}

const USUAL_INTERVAL = 3;
const USUAL_DAYS = 400;
/** Part of a target that still counts as held. @source assumed */
const HELD = 0.8;
/** Part of feed that is eaten before it falls apart, and of what the place grows that is within reach. @source assumed */
const EATEN = 0.75;
const OWN = 0.3;
/** Share of own food that is assimilated. @source assumed: a mean of the foods of small grazers */
const OWN_WORTH = 0.4;
/** Least part of the need that the first dose gives. @source assumed */
const LEAST_PART = 0.15;
const MOST_DOSES = 9;
/** Part of the most carried that is nearly as many. @source assumed */
const NEARLY = 0.98;
/** Runs that judge the dose found. @source assumed: they tell a share to a sixth or so */
const JUDGING = 24;

function feedOfPlan({ routines }: Plan): FeedComposition | undefined {
  for (const routine of routines) if (routine.kind === 'feed') return routine.feed;
  return undefined;
}

/** Carbon of feed a day from which the wanted adults, with their young, could live beside what the place grows [mol/d]. */
function firstGuess(plan: Plan, targets: TargetAdults, onLand: boolean): number {
  const larder = larderOf({ ...plan, routines: plan.routines.filter(({ kind }) => kind !== 'feed') }, 60);
  let eaten = 0;
  let assimilated = 0;
  for (const population of plan.populations) {
    const target = targets[population.id] ?? 0;
    if (target <= 0) continue;
    const values = medianTraits(population);
    const species = { id: population.id, traits: population.traits, values };
    const steady = steadyPopulation(species, larderTemperature(larder, values));
    if (!steady?.adults) continue;
    assimilated += target / steady.adults;
    eaten += target / steady.adults / (onLand ? values.efficiencyOnRemains : values.efficiencyOnFeed);
  }
  const own = larder.productions.reduce((sum, { food, perDay }) => (food === 'soil' ? sum : sum + perDay), 0);
  const lacking = Math.max(LEAST_PART, 1 - (OWN * OWN_WORTH * own) / Math.max(assimilated, 1e-12));
  return (lacking * eaten) / EATEN;
}

function checked(plan: Plan, targets: TargetAdults, members: number): readonly Population[] {
  if (!(Number.isInteger(members) && members >= 2 && members <= 2000))
    throw new RangeError(`members must be a whole number from 2 to 2000, not ${members}`);
  const known = new Set(plan.populations.map(({ id }) => id));
  for (const id of Object.keys(targets))
    if (!known.has(id))
      throw new RangeError(`the plan has no population '${id}'; it has ${[...known].join(', ') || 'none'}`);
  const wanted = plan.populations.filter(({ id }) => (targets[id] ?? 0) > 0);
  if (wanted.length === 0) throw new RangeError('say how many adults are wanted of at least one population');
  return wanted;
}

/**
 * Which feed, how much and how often, so that the wanted adults are held without fouling the water: a dose reckoned
 * from what a population with so many adults needs beyond what the plan grows, then doubled, halved and closed in on by
 * pairs of trial runs: one begins with the wanted adults on the day they come, one with the plan's own animals, both
 * beside all others as planned. A dose with which the plan's own animals come to what is wanted is raised until half of
 * the runs drawn do so too; the share that is told is counted in fresh runs, which had no part in the choice.
 * @param targets adults wanted, by population id, >= 0
 * @throws RangeError for a population the plan has not, no target above 0, no feed to give, or members out of range
 * @source derived: trial runs of medians and of members; starting dose from `steadyPopulation` and `larderOf`
 */
export function feedingPlan(
  plan: Plan,
  targets: TargetAdults,
  options: FeedingPlanOptions = {},
): FeedingPlan {
  const { everyDays = USUAL_INTERVAL, days = USUAL_DAYS, seed = 1, members = JUDGING, hour } = options;
  const wanted = checked(plan, targets, members);
  const feed = options.feed ?? feedOfPlan(plan);
  if (!feed) throw new RangeError('the plan has no feeding routine; say which feed is to be given');
  const onLand = options.onLand ?? wanted.every((population) => medianTraits(population).shareInWater < 0.5);
  const dose = { feed, everyDays, onLand, ...(hour === undefined ? {} : { hour }) };
  const start = (firstGuess(plan, targets, onLand) * everyDays) / feed.carbon;
  const search = { targets, days, seed, members, dose, judge: waterJudge(plan, days) };
  return described(plan, search, madeSure(plan, search, closeIn(plan, search, start), start));
}

interface Search {
  readonly targets: TargetAdults;
  readonly days: number;
  readonly seed: number;
  readonly members: number;
  readonly dose: Omit<Dose, 'mass'>;
  readonly judge: WaterJudge;
}

interface Tried {
  readonly mass: number;
  readonly trial: FeedingTrial;
  /** The same with the animals the plan itself begins with. */
  readonly own: FeedingTrial;
  /** Whether the targets are held once there, and reached from the plan's own animals. */
  readonly holds: boolean;
  readonly reaches: boolean;
  /** Limit of ammonia, nitrite or oxygen left first, and of pH or carbonate hardness left further than without the feed. */
  readonly fouls?: WaterLeaving;
  readonly sours?: WaterLeaving;
  /** Whether all wanted are still there on the last day. */
  readonly lives: boolean;
}

const isClean = ({ fouls, sours }: Tried): boolean => !fouls && !sours;

/** Whether every target is met in the last part of a trial. */
const meeting =
  ({ populations }: Plan, targets: TargetAdults) =>
  ({ adults }: FeedingTrial): boolean =>
    populations.every(({ id }, p) => adults[p]! >= HELD * (targets[id] ?? 0));

function attempt(plan: Plan, { targets, days, dose, judge }: Search, mass: number, unfed?: Tried): Tried {
  const trial = tryFeeding(fedWith(withTargets(plan, targets), { ...dose, mass }), days);
  const own = tryFeeding(fedWith(plan, { ...dose, mass }), days);
  const meets = meeting(plan, targets);
  const isThere = ({ course }: FeedingTrial, p: number): boolean => course[p]!.at(-1)! >= 1;
  const fouls = earliest([judge.fouling(trial), judge.fouling(own)]);
  const sours = unfed && earliest([judge.leaving(trial, unfed.trial), judge.leaving(own, unfed.own)]);
  return {
    mass,
    trial,
    own,
    holds: meets(trial),
    reaches: meets(own),
    ...(fouls ? { fouls } : {}),
    ...(sours ? { sours } : {}),
    lives: plan.populations.every(
      ({ id }, p) =>
        !((targets[id] ?? 0) > 0) ||
        (isThere(trial, p) && (isThere(own, p) || arrivalOf(plan, id) === undefined)),
    ),
  };
}

interface Found {
  readonly best: Tried;
  readonly unfed: Tried;
  /** The least dose tried that takes the water out of band. */
  readonly tooMuch?: Tried;
  /** Runs made in looking for it, those of members too. */
  readonly trials: number;
  readonly chosenBy: ChosenBy;
}

/** Whether a dose leaves the water as it is without: sour or foul anyway is not the fault of the feed. */
const isBearable = (one: Tried, unfed: Tried): boolean => !one.sours && (!one.fouls || !!unfed.fouls);

/** Adults over those wanted, none beyond them, summed over populations. */
function carried(plan: Plan, { targets }: Search, { adults }: FeedingTrial): number {
  return plan.populations.reduce((sum, { id }, p) => {
    const target = targets[id] ?? 0;
    return target > 0 ? sum + Math.min(1, adults[p]! / target) : sum;
  }, 0);
}

/** The one with which a trial carries the most, or the least of those with which it carries nearly as many. */
function mostCarrying(byMass: readonly Tried[], carriedWith: (one: Tried) => number): Tried | undefined {
  const most = Math.max(...byMass.map(carriedWith));
  return byMass.find((one) => carriedWith(one) >= NEARLY * most);
}

/**
 * Finds the least dose that holds the targets and reaches them from the plan's own animals, or else of those that hold
 * them the one that comes nearest to that; where none does with the water in band, of those in band the one that carries the most.
 */
function closeIn(plan: Plan, search: Search, start: number): Found {
  const unfed = attempt(plan, search, 0);
  const tried = [unfed];
  const isEnough = (one: Tried): boolean => one.holds && one.reaches;
  let low = 0;
  let high = Number.POSITIVE_INFINITY;
  let mass = start;
  while (!isEnough(unfed) && tried.length < MOST_DOSES && high > 1.25 * low) {
    const one = attempt(plan, search, mass, unfed);
    tried.push(one);
    if (isEnough(one) || !isBearable(one, unfed)) high = mass;
    else low = mass;
    mass = high === Number.POSITIVE_INFINITY ? 2 * low : low === 0 ? high / 2 : (low + high) / 2;
  }
  const byMass = [...tried].sort((a, b) => a.mass - b.mass);
  const fit = byMass.filter((one) => one.lives && isBearable(one, unfed));
  const best =
    fit.find(isEnough) ??
    mostCarrying(
      fit.filter(({ holds }) => holds),
      ({ own }) => carried(plan, search, own),
    ) ??
    mostCarrying(fit, ({ trial }) => carried(plan, search, trial)) ??
    unfed;
  const tooMuch = byMass.find((one) => !isBearable(one, unfed));
  const trials = 2 * tried.length;
  return { best, unfed, ...(tooMuch ? { tooMuch } : {}), trials, chosenBy: 'expected run' };
}

/** Tells of a member whether the plan's own animals meet every target in its run with a dose. */
function holdingWith(
  plan: Plan,
  { targets, days, seed, dose }: Search,
  mass: number,
): (member: number) => boolean {
  const fed = fedWith(plan, { ...dose, mass });
  const meets = meeting(plan, targets);
  return (member) => meets(tryFeeding(fed, days, memberDraw(fed, seed, member)));
}

/**
 * Raises a dose found by the expected run until half of the runs drawn meet the targets, as long as the water stays clean:
 * traits are not surely known, and the median animal is no promise. Where the plan's own animals do not come to them
 * in the expected run either, its dose stays.
 */
function madeSure(plan: Plan, search: Search, found: Found, start: number): Found {
  if (!found.best.reaches) return found;
  let { trials } = found;
  const { dose, chosenBy, drawn } = raisedUntilHalf(found.best, {
    holds: ({ mass }, member) => holdingWith(plan, search, mass)(member),
    raised({ mass }) {
      const more = attempt(plan, search, mass > 0 ? RAISE * mass : start, found.unfed);
      trials += 2;
      return isBearable(more, found.unfed) && more.holds && more.lives ? more : undefined;
    },
  });
  return { ...found, best: dose, chosenBy, trials: trials + drawn };
}

function described(
  plan: Plan,
  search: Search,
  { best, unfed, tooMuch, trials, chosenBy }: Found,
): FeedingPlan {
  const { targets, days, dose, judge, members } = search;
  const { trial, own } = best;
  const populations = plan.populations.map(({ id }, p): HeldPopulation => {
    const target = targets[id] ?? 0;
    const day = target > 0 ? own.course[p]!.findIndex((adults) => adults >= HELD * target) : -1;
    return {
      id,
      target,
      adults: trial.adults[p]!,
      atEnd: trial.course[p]!.at(-1)!,
      fromPlan: own.adults[p]!,
      ...(day >= 0 ? { reachedOn: day } : {}),
    };
  });
  const left = earliest([tooMuch?.sours, unfed.fouls ? undefined : tooMuch?.fouls]);
  const leftUnfed = earliest([judge.souring(unfed.trial), judge.souring(unfed.own)]);
  const found = {
    feed: dose.feed.id,
    feedName: dose.feed.name,
    mass: best.mass,
    everyDays: dose.everyDays,
    onLand: dose.onLand,
    ...(dose.hour === undefined ? {} : { hour: dose.hour }),
    holds: best.holds,
    clean: isClean(best),
    advised: best.lives,
    ...(left && tooMuch && !(best.holds && best.reaches) ? { leaves: { ...left, mass: tooMuch.mass } } : {}),
    ...(leftUnfed ? { leftUnfed } : {}),
    populations,
    ammonia: Math.max(trial.ammonia, own.ammonia),
    nitrite: Math.max(trial.nitrite, own.nitrite),
    oxygen: Math.min(trial.oxygen, own.oxygen),
    trials,
    chosenBy,
    heldIn: judgedAfresh(holdingWith(plan, search, best.mass), members),
  };
  const names = new Map(
    plan.populations.flatMap(({ id, species, name }) => [
      [id, name],
      [species, name],
    ]),
  );
  return {
    ...found,
    sentences: feedingSentences(found, {
      names,
      days,
      isFed: best.mass > 0,
      isFoulUnfed: !!unfed.fouls,
      held: HELD,
    }),
  };
}
