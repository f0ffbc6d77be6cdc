import { quantiles } from '../numerics/quantiles.ts';
import { runTrial, type TrialOrder } from '../outlook/trial.ts';
import type { Plan, Population } from '../plan/plan.ts';
import type { EffectSpread } from './what-if-added.ts';

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
  /** Most animals of each stage that a week's bait takes out; 20 when left out. */
  readonly baitTakes?: number;
}

/** Numbers of one population on the last day of the runs. */
export interface PopulationEnd {
  readonly id: string;
  readonly name: string;
  readonly end: EffectSpread;
}

/** One thing to do against a pest, and what it leaves of it and of the others. */
export interface PestAnswer {
  readonly kind: 'nothing' | 'less feed' | 'bait' | 'hunter';
  /** As a keeper would say it: 'half the feed'. */
  readonly name: string;
  readonly pest: EffectSpread;
  /** Runs in which none are left [0..1]. */
  readonly gone: number;
  /** All others, a hunter put in among them. */
  readonly others: readonly PopulationEnd[];
}

/** Part of the feed that is left when less is given [1]. @source assumed: what keepers are usually told first */
const LESS = 0.5;
const WEEK = 7;
const BAIT_TAKES = 20;

interface Remedy extends Pick<PestAnswer, 'kind' | 'name'> {
  readonly plan: Plan;
}

function withLessFeed(plan: Plan): Plan {
  const less = <T extends { readonly kind: string }>(care: T): T =>
    care.kind === 'feed' && 'mass' in care ? { ...care, mass: LESS * Number(care.mass) } : care;
  return { ...plan, routines: plan.routines.map(less), actions: plan.actions.map(less) };
}

function withActions(plan: Plan, actions: Plan['actions']): Plan {
  return { ...plan, actions: [...plan.actions, ...actions].sort((a, b) => a.day - b.day) };
}

function baited(plan: Plan, population: string, days: number, count: number): Plan {
  const weeks = Array.from(
    { length: Math.max(0, Math.ceil(days / WEEK) - 1) },
    (_, week) => (week + 1) * WEEK,
  );
  return withActions(
    plan,
    weeks.flatMap((day) =>
      (['adult', 'juvenile'] as const).map((stage) => ({
        kind: 'remove animals' as const,
        population,
        stage,
        count,
        day,
      })),
    ),
  );
}

function remediesFor(plan: Plan, pest: string, options: PestOptions): Remedy[] {
  const { days, hunters = [], baitTakes = BAIT_TAKES } = options;
  const strangers = hunters.filter(({ population }) =>
    plan.populations.every(({ id }) => id !== population.id),
  );
  // Every answer holds the same populations, if empty ones, so that all draw the same random numbers.
  const base: Plan = {
    ...plan,
    populations: [
      ...plan.populations,
      ...strangers.map(({ population }) => ({ ...population, founders: [] })),
    ],
  };
  const feeds = [...plan.routines, ...plan.actions].some(({ kind }) => kind === 'feed');
  return [
    { kind: 'nothing', name: 'nothing is done', plan: base },
    ...(feeds ? [{ kind: 'less feed' as const, name: 'half the feed', plan: withLessFeed(base) }] : []),
    {
      kind: 'bait',
      name: `a bait a week, at most ${baitTakes} adults and ${baitTakes} young taken out`,
      plan: baited(base, pest, days, baitTakes),
    },
    ...hunters.map(({ population, adults }) => ({
      kind: 'hunter' as const,
      name: `${adults} ${population.name}`,
      plan: withActions(base, [
        { kind: 'add animals', population: population.id, stage: 'adult', count: adults, day: 0 },
      ]),
    })),
  ];
}

function spreadOf(values: readonly number[]): EffectSpread {
  const [q10 = 0, q50 = 0, q90 = 0] = quantiles(Float64Array.from(values), [0.1, 0.5, 0.9]);
  return { q10, q50, q90 };
}

function checkPest(plan: Plan, pest: string, { members, baitTakes = BAIT_TAKES }: PestOptions): void {
  if (!plan.populations.some(({ id }) => id === pest))
    throw new RangeError(`there is no population '${pest}'; put it in the file or add it first`);
  if (!(Number.isInteger(members) && members >= 2 && members <= 500))
    throw new RangeError(`members must be a whole number from 2 to 500, not ${members}`);
  if (!(Number.isInteger(baitTakes) && baitTakes >= 1))
    throw new RangeError(`a bait must take a whole number of at least 1 animal, not ${baitTakes}`);
}

/**
 * Compares what can be done against a population that has become a pest: nothing, half the feed, a weekly bait, each
 * hunter offered. The same members live through each answer with the same random numbers. What hunters do afterwards
 * shows in `others`: their own numbers, and those of everybody else they can catch.
 * @param pest id of a population of the plan
 * @throws RangeError for a population the plan has not, or options out of range
 * @source derived: paired runs over common random numbers
 */
export function answersToPest(plan: Plan, pest: string, options: PestOptions): PestAnswer[] {
  checkPest(plan, pest, options);
  const { days, members, seed } = options;
  const remedies = remediesFor(plan, pest, options);
  const populations = remedies[0]!.plan.populations;
  const order: TrialOrder = {
    change: {},
    days,
    seed,
    members: Array.from({ length: members }, (_, member) => member),
    series: populations.map(({ id }) => `population:${id}` as const),
  };
  return remedies.map(({ kind, name, plan: changed }) => {
    const runs = runTrial(changed, order);
    const ends = (at: number): number[] => runs.map(({ series }) => series[at]![days - 1]!);
    const own = ends(populations.findIndex(({ id }) => id === pest));
    return {
      kind,
      name,
      pest: spreadOf(own),
      gone: own.filter((count) => count === 0).length / members,
      others: populations.flatMap(({ id, name: called }, at) =>
        id === pest ? [] : [{ id, name: called, end: spreadOf(ends(at)) }],
      ),
    };
  });
}
