import { type Spread, spreadOf } from '../numerics/quantiles.ts';
import {
  answerHere,
  type Inquiry,
  type PlanChange,
  type TrialOrder,
  type TrialRun,
} from '../outlook/trial.ts';
import type { Action } from '../plan/care.ts';
import type { Plan, Population } from '../plan/plan.ts';

/** A hunter that might be put in against a pest. */
export interface Hunter {
  readonly population: Population;
  readonly adults: number;
}

export interface PestOptions {
  readonly days: number;
  /** Runs of each answer, 2 to 500. */
  readonly members: number;
  readonly seed: number;
  readonly hunters?: readonly Hunter[];
  /** Most animals of each stage that a week's bait or traps hold; 20 when left out. */
  readonly baitTakes?: number;
  /** Day of the run on which it is noticed: hunters come, less feed is given and baits begin; 0 when left out. */
  readonly from?: number;
}

/** One of the others under an answer: how many there are on the last day, and on the way there. */
export interface PopulationEnd {
  readonly id: string;
  readonly name: string;
  readonly end: Spread;
  /** Median of the runs, one value a day [animals]. */
  readonly course: readonly number[];
}

/** One thing to do against a pest, and what it leaves of it and of the others. */
export interface PestAnswer {
  readonly kind: 'nothing' | 'less feed' | 'drier ground' | 'bait' | 'traps' | 'hunter';
  /** As a keeper would say it: 'half the feed'. */
  readonly name: string;
  /** The hunter that is put in, and how many of it. */
  readonly hunter?: { readonly id: string; readonly adults: number };
  /** Part of those there that the bait or the traps find each week [0..1]. */
  readonly finds?: number;
  readonly pest: Spread;
  /** Day by day: median, and 10 and 90 % of the runs [animals]. */
  readonly course: readonly number[];
  readonly courseLow: readonly number[];
  readonly courseHigh: readonly number[];
  /** Runs made of it, and the part of them in which none are left [0..1]. */
  readonly runs: number;
  readonly gone: number;
  /** All others, a hunter put in among them. */
  readonly others: readonly PopulationEnd[];
}

/** Part of the feed that is left when less is given [1]. @source assumed: what keepers are usually told first */
const LESS = 0.5;
const WEEK = 7;
const BAIT_TAKES = 20;
/** Part of those there that a bait of one night finds, and sticky traps in a week [1]. @source assumed: common practice, no source */
const PEST_FINDS = { bait: 0.3, traps: 0.5 } as const;

interface Remedy extends Pick<PestAnswer, 'kind' | 'name' | 'hunter' | 'finds'> {
  readonly change: PlanChange;
}

const STAGES_TAKEN = { bait: ['adult', 'juvenile'], traps: ['adult'] } as const;

function baits(
  population: string,
  kind: 'bait' | 'traps',
  { days, from = 0, baitTakes: count = BAIT_TAKES }: PestOptions,
): Action[] {
  const weeks = Math.max(0, Math.ceil((days - from) / WEEK) - 1);
  return Array.from({ length: weeks }, (_, week) => from + (week + 1) * WEEK).flatMap((day) =>
    STAGES_TAKEN[kind].map((stage) => ({
      kind: 'remove animals' as const,
      population,
      stage,
      count,
      finds: PEST_FINDS[kind],
      day,
    })),
  );
}

function remediesFor(plan: Plan, pest: string, options: PestOptions): Remedy[] {
  const { hunters = [], baitTakes = BAIT_TAKES, from = 0 } = options;
  // Every answer holds the same populations, if empty ones, so that all draw the same random numbers.
  const base: PlanChange = {
    populations: hunters
      .filter(({ population }) => plan.populations.every(({ id }) => id !== population.id))
      .map(({ population }) => ({ ...population, founders: [] })),
  };
  const { development, priors } = plan.populations.find(({ id }) => id === pest)!.traits;
  const flies = development === 'pupa';
  const needsWetGround = priors.wetGround.median > 0;
  const feeds = [...plan.routines, ...plan.actions].some(({ kind }) => kind === 'feed');
  return [
    { kind: 'nothing', name: 'nothing is done', change: base },
    ...(feeds
      ? [
          {
            kind: 'less feed' as const,
            name: 'half the feed',
            change: { ...base, feedShare: LESS, feedFrom: from },
          },
        ]
      : []),
    ...(plan.devices.mister && needsWetGround
      ? [{ kind: 'drier ground' as const, name: 'half the mist', change: { ...base, mistShare: LESS } }]
      : []),
    flies
      ? {
          kind: 'traps' as const,
          finds: PEST_FINDS.traps,
          name: `sticky traps, half of the flies there a week, at most ${baitTakes}`,
          change: { ...base, actions: baits(pest, 'traps', options) },
        }
      : {
          kind: 'bait' as const,
          finds: PEST_FINDS.bait,
          name: `a bait a week, three in ten of those there, at most ${baitTakes} adults and ${baitTakes} young`,
          change: { ...base, actions: baits(pest, 'bait', options) },
        },
    ...hunters.map(({ population: { id, name }, adults }) => ({
      kind: 'hunter' as const,
      name: `${adults} ${name}`,
      hunter: { id, adults },
      change: {
        ...base,
        actions: [
          { kind: 'add animals' as const, population: id, stage: 'adult' as const, count: adults, day: from },
        ],
      },
    })),
  ];
}

function checkPest(
  plan: Plan,
  pest: string,
  { days, members, baitTakes = BAIT_TAKES, from = 0 }: PestOptions,
): void {
  if (!plan.populations.some(({ id }) => id === pest))
    throw new RangeError(`there is no population '${pest}'; put it in the file or add it first`);
  if (!(Number.isInteger(members) && members >= 2 && members <= 500))
    throw new RangeError(`members must be a whole number from 2 to 500, not ${members}`);
  if (!(Number.isInteger(baitTakes) && baitTakes >= 1))
    throw new RangeError(`a bait must take a whole number of at least 1 animal, not ${baitTakes}`);
  if (!(Number.isInteger(from) && from >= 0 && from < days))
    throw new RangeError(`what is done must begin on a day of the run, 0 to ${days - 1}, not ${from}`);
}

/**
 * Asks what can be done against a population that has become a pest: nothing, half the feed, half the mist against those
 * that need wet ground, a weekly bait or sticky traps for flies, which find a part of those there up to what they hold, each hunter offered. The same members live through each answer with the same random numbers. What hunters do afterwards shows in
 * `others`: their own numbers, and those of everybody else they can catch.
 * @param pest id of a population of the plan
 * @throws RangeError for a population the plan has not, or options out of range
 * @source derived: paired runs over common random numbers
 */
export function* pestInquiry(plan: Plan, pest: string, options: PestOptions): Inquiry<PestAnswer[]> {
  checkPest(plan, pest, options);
  const { days, members, seed } = options;
  const remedies = remediesFor(plan, pest, options);
  const populations = [...plan.populations, ...(remedies[0]!.change.populations ?? [])];
  const orders = remedies.map(
    ({ change }): TrialOrder => ({
      change,
      days,
      seed,
      members: Array.from({ length: members }, (_, member) => member),
      series: populations.map(({ id }) => `population:${id}` as const),
    }),
  );
  const about = `what helps against ${populations.find(({ id }) => id === pest)!.name}`;
  const answers = yield { orders, about, done: 0, expected: members * orders.length };
  return remedies.map((remedy, at) => answerOf(remedy, populations, pest, answers[at]!));
}

function answerOf(
  { change: _, ...remedy }: Remedy,
  populations: readonly Population[],
  pest: string,
  runs: readonly TrialRun[],
): PestAnswer {
  const days = runs[0]!.series[0]!.length;
  const courseOf = (at: number): Spread[] =>
    Array.from({ length: days }, (_, day) => spreadOf(runs.map(({ series }) => series[at]![day]!)));
  const own = populations.findIndex(({ id }) => id === pest);
  const course = courseOf(own);
  const gone = runs.filter(({ series }) => series[own]![days - 1] === 0).length / runs.length;
  return {
    ...remedy,
    pest: course[days - 1]!,
    course: course.map(({ q50 }) => q50),
    courseLow: course.map(({ q10 }) => q10),
    courseHigh: course.map(({ q90 }) => q90),
    runs: runs.length,
    gone,
    others: populations.flatMap(({ id, name }, at) => {
      if (id === pest) return [];
      const other = courseOf(at);
      return [{ id, name, end: other[days - 1]!, course: other.map(({ q50 }) => q50) }];
    }),
  };
}

/**
 * What can be done against a pest, worked out in this thread, one answer after the other.
 * @throws RangeError as `pestInquiry`. @source derived
 */
export function answersToPest(plan: Plan, pest: string, options: PestOptions): PestAnswer[] {
  return answerHere(plan, pestInquiry(plan, pest, options));
}
