import type { Count } from './count.ts';
import { animalsText } from './count-words.ts';

/** Computed numbers of a population by day of the run: median, and nine runs in ten. */
export interface ComputedNumbers {
  readonly days: readonly number[];
  readonly q05: readonly number[];
  readonly q50: readonly number[];
  readonly q95: readonly number[];
}

/** A count beside what was computed for its day [animals]. */
export interface CountBeside {
  /** Day of the run. */
  readonly day: number;
  readonly counted: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Counts beside the computed population of the same days. */
export interface BesideComputed {
  readonly counts: readonly CountBeside[];
  /** Counts below, within and above what nine runs in ten hold. */
  readonly below: number;
  readonly within: number;
  readonly above: number;
  /** Counts on days that the run does not reach. */
  readonly outside: number;
  readonly sentence: string;
}

/** The last value computed on or before a day. */
function valueOn({ days }: ComputedNumbers, values: readonly number[], day: number): number | undefined {
  let found: number | undefined;
  for (const [i, each] of days.entries()) {
    if (each > day) break;
    found = values[i];
  }
  return found;
}

function besideOf(computed: ComputedNumbers, { day, number }: Count): CountBeside | undefined {
  const last = computed.days.at(-1);
  if (last === undefined || day > last) return undefined;
  const [low, middle, high] = [computed.q05, computed.q50, computed.q95].map((values) =>
    valueOn(computed, values, day),
  );
  if (low === undefined || middle === undefined || high === undefined) return undefined;
  return { day, counted: number, low, middle, high };
}

function sentenceOf(beside: readonly CountBeside[], within: number, above: number): string {
  const last = beside.at(-1);
  if (!last) return 'None of the counts lies on a day of the run, so they cannot be set beside it.';
  const { counted, low, middle, high } = last;
  const off = beside.length - within;
  const way = off === 0 ? '' : above > off / 2 ? ', the others mostly above' : ', the others mostly below';
  const all = beside.length === 1 ? '1 count' : `${beside.length} counts`;
  const computed = `${animalsText(middle)} computed (${animalsText(low)} to ${animalsText(high)})`;
  return `Of ${all} ${within} ${lie(within)} where nine runs in ten do${way}. Last: ${animalsText(counted)} counted, ${computed}.`;
}

const lie = (count: number): string => (count === 1 ? 'lies' : 'lie');

/**
 * Counts beside the computed population on the same days.
 * @param counts with days of the run
 * @param computed numbers by day of the run, days rising
 * @source derived: each count against the quantiles of its day
 */
export function besideComputed(counts: readonly Count[], computed: ComputedNumbers): BesideComputed {
  const beside = counts.flatMap((count) => besideOf(computed, count) ?? []);
  const below = beside.filter(({ counted, low }) => counted < low).length;
  const above = beside.filter(({ counted, high }) => counted > high).length;
  const within = beside.length - below - above;
  const outside = counts.length - beside.length;
  const more =
    beside.length > 0 && outside > 0
      ? ` ${outside} more ${lie(outside)} on days that the run does not hold.`
      : '';
  return {
    counts: beside,
    below,
    within,
    above,
    outside,
    sentence: `${sentenceOf(beside, within, above)}${more}`,
  };
}
