import { STAGES } from '../life/traits.ts';
import { type Spread, spreadOf } from '../numerics/quantiles.ts';
import { answerHere, changedPlan, type Inquiry, type PlanChange, type TrialOrder } from '../outlook/trial.ts';
import type { Plan, Population } from '../plan/plan.ts';
import { settingOf } from '../run/setting.ts';

/** What is put in: more of a population the plan has, or a species it has not. */
export interface Addition {
  readonly population: Population;
  readonly adults: number;
  /** Day of the run on which they come; 0 when left out. */
  readonly day?: number;
}

export interface AdditionOptions {
  readonly days: number;
  /** Runs with and without, 2 to 500. */
  readonly members: number;
  readonly seed: number;
}

/** One quantity with and without the addition, at the end of the run. */
export interface AdditionEffect {
  readonly series: string;
  readonly without: Spread;
  readonly with: Spread;
  /** Difference member by member, with less without. */
  readonly difference: Spread;
  /** Day by day difference: median, and 10 and 90 % of the runs. */
  readonly course: readonly number[];
  readonly courseLow: readonly number[];
  readonly courseHigh: readonly number[];
}

const LOOKED_AT = ['unionisedAmmonia', 'nitrate', 'oxygenLow', 'attachedAlgae', 'detritus', 'litter', 'KH'];

/** The plan as it is, with an empty population of a species it has not, so that both sides draw the same numbers. */
function roomFor(plan: Plan, { population }: Addition): PlanChange {
  const has = plan.populations.some(({ id }) => id === population.id);
  return { populations: has ? [] : [{ ...population, founders: [] }] };
}

function checkAddition({ adults }: Addition, { members }: AdditionOptions): void {
  if (!(adults >= 1)) throw new RangeError(`add at least 1 animal, not ${adults}`);
  if (!(Number.isInteger(members) && members >= 2 && members <= 500))
    throw new RangeError(`members must be a whole number from 2 to 500, not ${members}`);
}

/**
 * Asks what an addition does to every population and to the water: the same members with and without it, all random
 * numbers shared; answers with one effect per series, difference with less without.
 * @throws RangeError for an addition of none, or options out of range
 * @source derived: paired differences over common random numbers
 */
export function* additionInquiry(
  plan: Plan,
  addition: Addition,
  options: AdditionOptions,
): Inquiry<AdditionEffect[]> {
  checkAddition(addition, options);
  const { days, members, seed } = options;
  const { population, adults, day = 0 } = addition;
  const room = roomFor(plan, addition);
  const coming = {
    kind: 'add animals' as const,
    population: population.id,
    stage: 'adult' as const,
    count: adults,
    day,
  };
  const series = settingOf(changedPlan(plan, room), days, STAGES).seriesIds.filter(
    (id) => LOOKED_AT.includes(id) || /^population:[^:]+(?::adult)?$/.test(id),
  );
  const all = Array.from({ length: members }, (_, member) => member);
  const order = (change: PlanChange): TrialOrder => ({ change, days, seed, members: all, series });
  const orders = [order(room), order({ ...room, actions: [coming] })];
  const about = `what ${adults} more ${population.name} change`;
  const [without = [], included = []] = yield { orders, about, done: 0, expected: 2 * members };
  return series.map((id, at) =>
    effectOn(
      id,
      without.map((one) => one.series[at]!),
      included.map((one) => one.series[at]!),
    ),
  );
}

function effectOn(
  series: string,
  without: readonly Float64Array[],
  included: readonly Float64Array[],
): AdditionEffect {
  const days = without[0]!.length;
  const on = (runs: readonly Float64Array[], day: number) => Float64Array.from(runs, (run) => run[day]!);
  const difference = (day: number) =>
    spreadOf(Float64Array.from(included, (run, member) => run[day]! - without[member]![day]!));
  const course = Array.from({ length: days }, (_, day) => difference(day));
  return {
    series,
    without: spreadOf(on(without, days - 1)),
    with: spreadOf(on(included, days - 1)),
    difference: course[days - 1]!,
    course: course.map(({ q50 }) => q50),
    courseLow: course.map(({ q10 }) => q10),
    courseHigh: course.map(({ q90 }) => q90),
  };
}

/**
 * What an addition does, worked out in this thread, one effect per series.
 * @throws RangeError as `additionInquiry`. @source derived
 */
export function whatIfAdded(plan: Plan, addition: Addition, options: AdditionOptions): AdditionEffect[] {
  return answerHere(plan, additionInquiry(plan, addition, options));
}
