import { quantileOfSorted } from '../numerics/quantiles.ts';
import { holdsLow, type Judged, type Leaving, shareThat } from './buffer-judge.ts';
import type { BufferObstacle } from './buffer-question.ts';
import type { Search, SearchSetting, Tried } from './buffer-search.ts';

/** What stood in the way, with the figures it was told from. */
export interface Obstacle {
  readonly kind: BufferObstacle;
  /** The lower limit most often left at the most that was tried. */
  readonly below?: Leaving;
  /** The upper limit left, where one was. */
  readonly above?: Leaving | undefined;
  /** Least KH at the most that was tried, median of the members [dKH], and that mass [kg]. */
  readonly leastKH?: number;
  readonly most?: number;
  /** Undissolved at the end, share of the mass. */
  readonly left?: number;
}

/** Carbonate needs about two weeks before it can be felt; a limit left earlier is the fill's doing. @source assumed */
const TOO_EARLY = 14;
/** Below this share left over the buffer counts as used up. @source assumed */
const USED_UP = 0.2;
/** Gain in the least KH from four times the mass below which more no longer helps [dKH]. @source assumed */
const NO_GAIN = 0.1;

function median(values: readonly number[]): number {
  return quantileOfSorted(Float64Array.from(values).sort(), 0.5);
}

/**
 * Undissolved share of a buffer at the end [1], median over the members: what the solids exceed those without the
 * buffer by, over the same on the first day. Members without a counterpart are compared with the median one.
 * @source derived
 */
export function leftOf(runs: readonly Judged[], without: readonly Judged[]): number {
  const start = median(without.map(({ solidAtStart }) => solidAtStart));
  const end = median(without.map(({ solidAtEnd }) => solidAtEnd));
  return median(
    runs.map(({ solidAtStart, solidAtEnd }) => {
      const placed = solidAtStart - start;
      return placed > 0 ? (solidAtEnd - end) / placed : 0;
    }),
  );
}

const membersOf = ({ runs }: Tried): Judged[] => runs.filter(({ member }) => member !== 'expected');

/** The limit most of the leavings are about, at the median of its days. */
function commonest(leavings: readonly Leaving[]): Leaving | undefined {
  const byLimit = new Map<string, Leaving[]>();
  for (const leaving of leavings) {
    const key = `${leaving.series} ${leaving.side}`;
    byLimit.set(key, [...(byLimit.get(key) ?? []), leaving]);
  }
  const [largest = []] = [...byLimit.values()].sort((a, b) => b.length - a.length);
  const [first] = largest;
  return first && { ...first, day: Math.round(median(largest.map(({ day }) => day))) };
}

/**
 * What kept a search from an answer, told from its runs.
 * @source derived
 */
export function obstacleOf({ tried, holds }: Search, { probability, without }: SearchSetting): Obstacle {
  const membered = tried.filter((each) => membersOf(each).length > 0);
  const top = membered.at(-1)!;
  if (holds || shareThat(top.runs, holdsLow).share >= probability) {
    const above = commonest(membersOf(holds ?? top).flatMap((run) => run.above ?? []));
    return { kind: 'rises too high', above, most: (holds ?? top).mass };
  }
  const failing = membersOf(top).filter((run) => !holdsLow(run));
  const below = commonest(failing.flatMap((run) => run.below ?? []))!;
  const figures = {
    below,
    leastKH: median(failing.map(({ leastKH }) => leastKH)),
    most: top.mass,
    left: leftOf(failing, without),
  };
  const kind = below.day <= TOO_EARLY ? 'too late' : lateObstacle(figures.left, gainAtTop(tried));
  return { kind, ...figures };
}

function lateObstacle(left: number, gain: number): BufferObstacle {
  if (left < USED_UP) return 'acid too strong';
  return gain < NO_GAIN ? 'saturated' : 'dissolves too slowly';
}

/** What the last rung of the ladder added to the least KH of the expected run [dKH]. */
function gainAtTop(tried: readonly Tried[]): number {
  const expected = tried.flatMap(({ runs }) => runs.filter(({ member }) => member === 'expected'));
  const [before, last] = expected.slice(-2);
  return before && last ? last.leastKH - before.leastKH : Number.POSITIVE_INFINITY;
}
