import type { ReadSystem } from './equations/written-system.ts';
import { type Course, limitOfSmallSteps } from './limit-of-small-steps.ts';

const LEVELS = 6;
/** Steps from one wanted time to the next on the coarsest first grid; each further one has twice as many. */
const FIRST = 10;
/** Steps in all that may be taken. */
const MOST_STEPS = 1_500_000;
const EXPLICIT_SHARE = 0.5;

export interface Wanted {
  readonly start: readonly number[];
  readonly from: number;
  readonly times: readonly number[];
  /** Relative accuracy to which the limit must be known. */
  readonly accuracy: number;
}

type States = readonly (readonly number[])[];

function largestChange(before: States, after: States): number {
  const largest = Math.max(...after.flat().map(Math.abs));
  return Math.max(
    ...after.flatMap((state, t) =>
      state.map((value, i) => Math.abs(value - before[t]![i]!) / (Math.abs(value) + 1e-12 * largest)),
    ),
  );
}

/**
 * The course of a system that is known by its equations alone, in the limit of small steps: grids are refined until
 * two limits agree. Undefined when they do not agree within the accuracy, for want of steps or by rounding.
 */
export function writtenCourse({ transfers, hasClock }: ReadSystem, wanted: Wanted): States | undefined {
  const { start, from, times, accuracy } = wanted;
  const course: Course = {
    transfers,
    start: hasClock ? [...start, from] : start,
    from,
    times,
    step: Number.POSITIVE_INFINITY,
  };
  const limit = (perInterval: number): States =>
    limitOfSmallSteps({ ...course, perInterval }, { levels: LEVELS, explicitShare: EXPLICIT_SHARE });
  let states = limit(FIRST);
  let taken = 0;
  for (let perInterval = 2 * FIRST; ; perInterval *= 2) {
    taken += perInterval * times.length * 2 ** LEVELS;
    if (taken > MOST_STEPS) return undefined;
    const finer = limit(perInterval);
    const change = largestChange(states, finer);
    if (change < accuracy) return finer;
    states = finer;
  }
}
