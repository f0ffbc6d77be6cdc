import { quantiles } from '../numerics/quantiles.ts';
import { type RunRecord, run } from '../run/run.ts';
import { expectedDraw, memberDraw, type PreparedOutlook } from './prepare.ts';

/** Runs `from` up to `to` of an ensemble, ready to be sent between threads. */
export interface MemberBatch {
  readonly from: number;
  readonly to: number;
  /** Series of all members end to end: member, series, day. */
  readonly series: Float64Array;
  /** Books of all members end to end. */
  readonly books: Float64Array;
}

/** Returns the run with median parameters and mean births and deaths. @throws as `run`. `derived`. */
export function expectedRun({ plan, setting }: PreparedOutlook): RunRecord {
  return run(setting, expectedDraw(plan));
}

/**
 * Returns the runs of members `from` (included) to `to` (excluded).
 * @throws Error naming the member whose run failed.
 * @source derived
 */
export function runMembers(
  { plan, options, setting }: PreparedOutlook,
  from: number,
  to: number,
): MemberBatch {
  const seriesLength = setting.seriesIds.length * setting.days;
  const series = new Float64Array((to - from) * seriesLength);
  let books = new Float64Array(0);
  for (let member = from; member < to; member += 1) {
    const record = run(setting, memberDraw(plan, options.seed, member));
    const at = member - from;
    for (const [s, values] of record.series.entries())
      series.set(values, at * seriesLength + s * setting.days);
    if (books.length === 0) books = new Float64Array((to - from) * record.bookRows.length);
    books.set(record.bookRows, at * record.bookRows.length);
  }
  return { from, to, series, books };
}

/** All members of an outlook by number. */
export interface Ensemble {
  readonly count: number;
  series(member: number, position: number): Float64Array;
  book(member: number): Float64Array;
}

/** Puts batches together, in any order. @throws Error when a member is missing or doubled. `derived`. */
export function ensembleOf({ options, setting }: PreparedOutlook, batches: readonly MemberBatch[]): Ensemble {
  const owner = new Array<MemberBatch | undefined>(options.members).fill(undefined);
  for (const batch of batches) {
    for (let member = batch.from; member < batch.to; member += 1) {
      if (member >= options.members || owner[member])
        throw new Error(`member ${member} came twice or is too many`);
      owner[member] = batch;
    }
  }
  const missing = owner.indexOf(undefined);
  if (missing >= 0) throw new Error(`member ${missing} was not run`);
  const { days } = setting;
  const perMember = setting.seriesIds.length * days;
  return {
    count: options.members,
    series(member, position) {
      const batch = owner[member]!;
      const start = (member - batch.from) * perMember + position * days;
      return batch.series.subarray(start, start + days);
    },
    book(member) {
      const batch = owner[member]!;
      const length = batch.books.length / (batch.to - batch.from);
      return batch.books.subarray((member - batch.from) * length, (member - batch.from + 1) * length);
    },
  };
}

/** Day by day quantiles over members of one series: one row of `days` values per probability. `derived`. */
export function dailyQuantiles(
  ensemble: Ensemble,
  position: number,
  days: number,
  probabilities: readonly number[],
): number[][] {
  const sample = new Float64Array(ensemble.count);
  const rows = probabilities.map(() => new Array<number>(days).fill(0));
  for (let day = 0; day < days; day += 1) {
    for (let member = 0; member < ensemble.count; member += 1)
      sample[member] = ensemble.series(member, position)[day]!;
    for (const [p, value] of quantiles(sample, probabilities).entries()) rows[p]![day] = value;
  }
  return rows;
}
