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
  /** Lowest of that limit's quantity at the most that was tried, median of the failing members; that mass [kg]. */
  readonly lowest?: number;
  readonly most?: number;
  /** Undissolved at the end, share of the mass. */
  readonly left?: number;
}

/** Carbonate needs about two weeks before it can be felt; a limit left earlier is the fill's doing. @source assumed */
const TOO_EARLY = 14;
/** Below this share left over the buffer counts as used up. @source assumed */
const USED_UP = 0.2;
/** More mass of which, gram for gram, less than this dissolves than of the mass before finds the water saturated. @source assumed */
const NO_MORE = 0.25;

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
    lowest: median(failing.map(({ leastHeld }) => leastHeld[below.series])),
    most: top.mass,
    left: leftOf(failing, without),
  };
  return { kind: kindOf(below, figures.left, furtherDissolved(tried, without)), ...figures };
}

function kindOf(below: Leaving, left: number, further: number): BufferObstacle {
  if (below.day <= TOO_EARLY) return 'too late';
  if (left < USED_UP) return 'acid too strong';
  return further < NO_MORE ? 'saturated' : 'dissolves too slowly';
}

/**
 * Of the last mass added, what dissolved of a gram over what dissolved of a gram of the mass before, in the expected run:
 * 1 where grains set the pace, 0 where the water takes up no more however much lies in it.
 */
function furtherDissolved(tried: readonly Tried[], without: readonly Judged[]): number {
  const idle = median(without.map(({ solidAtStart, solidAtEnd }) => solidAtStart - solidAtEnd));
  const expected = tried.flatMap(({ mass, runs }) => {
    const run = runs.find(({ member }) => member === 'expected');
    return run ? [{ mass, dissolved: run.solidAtStart - run.solidAtEnd - idle }] : [];
  });
  const [before, last] = expected.slice(-2);
  if (!before || !last) return Number.POSITIVE_INFINITY;
  if (before.dissolved <= 0) return last.dissolved > 0 ? Number.POSITIVE_INFINITY : 0;
  return (last.dissolved / before.dissolved - 1) / (last.mass / before.mass - 1);
}
