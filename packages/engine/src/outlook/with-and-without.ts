import { quantiles } from '../numerics/quantiles.ts';
import type { HardscapePiece, Plan } from '../plan/plan.ts';
import { seriesSpec } from '../run/series.ts';
import { effectSentence } from './effect-sentences.ts';
import type { EffectCourse, EffectSeries, PieceEffect } from './piece-effects.ts';
import type { Inquiry, TrialMember, TrialOrder, TrialRun } from './trial.ts';

const EFFECT_SERIES = ['pH', 'KH', 'dissolvedOrganicCarbon'] as const satisfies readonly EffectSeries[];

export interface EffectOptions {
  readonly days: number;
  readonly seed: number;
  /** Members of the small ensemble, 24 when left out. */
  readonly members?: number;
  /** Pieces to look at; all that bring anything into the water when left out. */
  readonly pieces?: readonly string[];
}

const FEW_MEMBERS = 24;
const MOSTLY = 0.9;

/** Pieces that bring something into the water or hold it: wood, litter, peat, carbonate; bare stones do not. `derived`. */
export function piecesWithEffect({ hardscape }: Plan): HardscapePiece[] {
  return hardscape.filter(
    ({ contents, exchanger }) => exchanger || Object.values(contents).some((amount) => (amount ?? 0) > 0),
  );
}

function chosen(plan: Plan, ids: readonly string[] | undefined): HardscapePiece[] {
  if (!ids) return piecesWithEffect(plan);
  return ids.map((id) => {
    const piece = plan.hardscape.find((each) => each.id === id);
    if (piece) return piece;
    const known = plan.hardscape.map((each) => each.id).join(', ') || 'none';
    throw new RangeError(`the plan has no piece '${id}'; its pieces are: ${known}`);
  });
}

/** Difference with less without, of one series and day, over all members but the expected run. */
function differences(
  kept: readonly TrialRun[],
  left: readonly TrialRun[],
  at: { readonly series: number; readonly day: number },
): Float64Array {
  const values: number[] = [];
  for (const [m, { member, series }] of kept.entries()) {
    if (member !== 'expected')
      values.push(series[at.series]![at.day]! - left[m]!.series[at.series]![at.day]!);
  }
  return Float64Array.from(values);
}

function largestOf(q50: readonly number[]): number {
  let day = 0;
  for (const [d, value] of q50.entries()) if (Math.abs(value) > Math.abs(q50[day]!)) day = d;
  return day;
}

function courseOf(kept: readonly TrialRun[], left: readonly TrialRun[], series: number): EffectCourse {
  const id = EFFECT_SERIES[series]!;
  const days = kept[0]!.series[series]!.length;
  const q05: number[] = [];
  const q50: number[] = [];
  const q95: number[] = [];
  for (let day = 0; day < days; day += 1) {
    const [low = 0, middle = 0, high = 0] = quantiles(
      differences(kept, left, { series, day }),
      [0.05, 0.5, 0.95],
    );
    q05.push(low);
    q50.push(middle);
    q95.push(high);
  }
  const run = kept.findIndex(({ member }) => member === 'expected');
  const without = left[run]!.series[series]!;
  const day = largestOf(q50);
  const { name, unit } = seriesSpec(id);
  return {
    series: id,
    name,
    unit,
    expected: Array.from(kept[run]!.series[series]!, (value, d) => value - without[d]!),
    q05,
    q50,
    q95,
    largest: { day, q05: q05[day]!, q50: q50[day]!, q95: q95[day]! },
    mostlyBy: q50.findIndex((value) => Math.abs(value) >= MOSTLY * Math.abs(q50[day]!)),
  };
}

function effectOf(piece: HardscapePiece, kept: readonly TrialRun[], left: readonly TrialRun[]): PieceEffect {
  const courses = EFFECT_SERIES.map((_, series) => courseOf(kept, left, series));
  return {
    piece: piece.id,
    name: piece.name,
    kind: piece.kind,
    mass: piece.mass,
    courses,
    sentence: effectSentence(piece.name, courses),
  };
}

/**
 * What each piece does to pH, carbonate hardness and colour: the plan with it against the plan without it, in the
 * expected run and in a small ensemble whose members share all their random numbers.
 * @returns an inquiry; answer it with `answerHere` or `answerWith`. Effects in the series' units, with less without.
 * @throws RangeError for a piece the plan does not have, or fewer than 2 members.
 * @source derived: paired differences
 */
export function* withAndWithout(plan: Plan, options: EffectOptions): Inquiry<PieceEffect[]> {
  const pieces = chosen(plan, options.pieces);
  const count = options.members ?? FEW_MEMBERS;
  if (!(Number.isInteger(count) && count >= 2))
    throw new RangeError(`members must be 2 or more, not ${count}`);
  if (pieces.length === 0) return [];
  const members: TrialMember[] = ['expected', ...Array.from({ length: count }, (_, member) => member)];
  const { days, seed } = options;
  const base: TrialOrder = { change: {}, days, seed, members, series: EFFECT_SERIES };
  const orders = [base, ...pieces.map(({ id }) => ({ ...base, change: { without: [id] } }))];
  const [kept = [], ...left] = yield {
    orders,
    about: 'what each piece does',
    done: 0,
    expected: orders.length * members.length,
  };
  return pieces.map((piece, p) => effectOf(piece, kept, left[p]!));
}
