import type { Band } from '../plan/plan.ts';
import type { SeriesId } from '../run/series.ts';
import { dailyLimits, type Limit, type Limits, limitOn, limitsOf, type Side } from './bands.ts';
import type { BufferLimit, ShareOfRuns } from './buffer-question.ts';
import { firstLeaving } from './crossings.ts';
import { shareOfRuns } from './share-of-runs.ts';
import type { TrialMember, TrialRun } from './trial.ts';

/** Series a buffer is judged by, in the order in which runs bring them. */
export const JUDGED_SERIES = ['pH', 'KH', 'carbonateSolid'] as const satisfies readonly SeriesId[];
const HELD = ['pH', 'KH'] as const;

/** A limit that a run left: whose it is and on which day. */
export interface Leaving {
  readonly series: 'pH' | 'KH';
  readonly side: Side;
  readonly limit: Limit;
  readonly day: number;
}

/** One run as the buffer's question sees it. */
export interface Judged {
  readonly member: TrialMember;
  /** First lower and first upper limit left, if any. */
  readonly below?: Leaving;
  readonly above?: Leaving;
  /** Lowest over the run [dKH]. */
  readonly leastKH: number;
  /** Lowest from the day on which somebody has a lower limit; [dKH] and pH. */
  readonly leastHeld: Readonly<Record<'pH' | 'KH', number>>;
  /** Solid carbonate on the first and on the last day [g]. */
  readonly solidAtStart: number;
  readonly solidAtEnd: number;
}

export interface Judge {
  readonly limits: readonly BufferLimit[];
  judge(run: TrialRun): Judged;
}

interface HeldLimits extends Limits {
  readonly series: 'pH' | 'KH';
  readonly daily: Float64Array;
}

const isHeld = (series: SeriesId): series is 'pH' | 'KH' => series === 'pH' || series === 'KH';

function earliest(leavings: readonly Leaving[], side: Side): Leaving | undefined {
  let first: Leaving | undefined;
  for (const leaving of leavings)
    if (leaving.side === side && (!first || leaving.day < first.day)) first = leaving;
  return first;
}

function leavingsOf({ series }: TrialRun, held: readonly HeldLimits[]): Leaving[] {
  return held.flatMap((limits): Leaving[] => {
    const day = firstLeaving(series[HELD.indexOf(limits.series)]!, limits.daily, limits.side);
    const limit = day < 0 ? undefined : limitOn(limits, day);
    return limit ? [{ series: limits.series, side: limits.side, limit, day }] : [];
  });
}

const least = (values: Float64Array): number => values.reduce((low, value) => Math.min(low, value));

/** Lowest value of a series from the first day on which somebody has a lower limit on it. */
function leastFrom(values: Float64Array, series: 'pH' | 'KH', held: readonly HeldLimits[]): number {
  const low = held.find((limits) => limits.series === series && limits.side === 'low');
  const from = low?.daily.findIndex((value) => value > Number.NEGATIVE_INFINITY) ?? 0;
  return least(values.subarray(Math.max(0, from)));
}

/**
 * A judge of runs by the bands of pH and KH over `days`: a limit counts as left after three days running.
 * @throws RangeError when no band of pH or KH is among them
 * @source derived
 */
export function judgeOf(bands: readonly Band[], days: number): Judge {
  const held = limitsOf(bands).flatMap((limits): HeldLimits[] => {
    const { series } = limits;
    return isHeld(series) ? [{ ...limits, series, daily: dailyLimits(limits, days) }] : [];
  });
  if (held.length === 0) {
    throw new RangeError(
      'nobody who lives here has a band of pH or carbonate hardness: state the band to hold, such as KH from 3 °dKH',
    );
  }
  return {
    limits: held.map(({ series, side, limits: [narrowest] }) => ({
      series,
      side,
      value: narrowest!.value,
      owner: narrowest!.owner,
    })),
    judge(run) {
      const leavings = leavingsOf(run, held);
      const below = earliest(leavings, 'low');
      const above = earliest(leavings, 'high');
      const [pH, KH, solid] = run.series as readonly [Float64Array, Float64Array, Float64Array];
      return {
        member: run.member,
        ...(below && { below }),
        ...(above && { above }),
        leastKH: least(KH),
        leastHeld: { pH: leastFrom(pH, 'pH', held), KH: leastFrom(KH, 'KH', held) },
        solidAtStart: solid[0]!,
        solidAtEnd: solid.at(-1)!,
      };
    },
  };
}

/** Runs that stay above every lower limit, and below every upper one too. `derived`. */
export const holdsLow = ({ below }: Judged): boolean => below === undefined;
export const holdsAll = ({ below, above }: Judged): boolean => below === undefined && above === undefined;

/** Share of judged runs, the expected one left out, that pass a test. `derived`. */
export function shareThat(judged: readonly Judged[], test: (run: Judged) => boolean): ShareOfRuns {
  const members = judged.filter(({ member }) => member !== 'expected');
  return shareOfRuns(members.filter(test).length, members.length);
}
