import type { Palette } from '../palette/palette.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { textAt } from '../type/text.ts';
import type { BudgetPlot } from './budget-plot.ts';
import { type GatheredBudget, termTotal } from './gathered.ts';
import { lookFill, type TermLook } from './term-look.ts';

interface Bars {
  readonly budget: GatheredBudget;
  readonly plot: BudgetPlot;
  readonly looks: readonly TermLook[];
  readonly prefix: string;
  readonly palette: Palette;
  readonly chosen?: number;
}

/** A part of a bar: one term in one period, away from the line in the order of the terms. */
export interface Segment {
  readonly term: number;
  readonly upper: number;
  readonly lower: number;
}

const LEAST_FOR_LETTER = 14;

export function stackedBars(bars: Bars): SceneNode {
  return group(
    { 'data-part': 'bars' },
    bars.budget.periods.map((_, period) => bar(bars, period)),
  );
}

/** The segments of one period [px], those that add above the line and those that remove below it. */
export function segmentsOf({ budget, plot }: Pick<Bars, 'budget' | 'plot'>, period: number): Segment[] {
  let [added, removed] = [0, 0];
  return budget.terms.flatMap((each, term) => {
    const amount = termTotal(each, period);
    if (amount === 0) return [];
    const from = amount > 0 ? added : removed;
    if (amount > 0) added += amount;
    else removed += amount;
    const [a, b] = [plot.value.toPixel(from), plot.value.toPixel(from + amount)];
    return [{ term, upper: Math.min(a, b), lower: Math.max(a, b) }];
  });
}

function bar(bars: Bars, period: number): SceneNode {
  const { budget, plot, palette, chosen } = bars;
  const { from, to } = budget.periods[period] ?? { from: 0, to: 1 };
  const gap = Math.min(4, (plot.toX(to) - plot.toX(from)) * 0.16);
  const [left, right] = [plot.toX(from) + gap / 2, plot.toX(to) - gap / 2];
  const net = budget.terms.reduce((sum, term) => sum + termTotal(term, period), 0);
  const mark = plot.value.toPixel(net);
  return group({ 'data-period': period }, [
    period === chosen ? frame(bars, left, right) : undefined,
    ...segmentsOf(bars, period).map((segment) => drawn(bars, segment, { left, right, net: mark })),
    netMark((left + right) / 2, mark, palette),
  ]);
}

/** What is left of a period when all that was added and removed is summed. */
export function netMark(x: number, y: number, palette: Palette): SceneNode {
  return element('path', {
    d: `M${x.toFixed(1)} ${(y - 5).toFixed(1)}l5 5l-5 5l-5 -5z`,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': 1.3,
  });
}

function frame({ plot, palette }: Bars, left: number, right: number): SceneNode {
  return element('rect', {
    x: left - 3,
    y: plot.top,
    width: right - left + 6,
    height: plot.bottom - plot.top,
    fill: palette.band,
    stroke: palette.vermilion,
    'stroke-width': 1.4,
  });
}

function drawn(
  { looks, prefix, palette }: Bars,
  { term, upper, lower }: Segment,
  { left, right, net }: { left: number; right: number; net: number },
): SceneNode {
  const look = looks[term] as TermLook;
  const height = lower - upper;
  const roomy = height >= LEAST_FOR_LETTER && right - left >= 11;
  const at = letterPlace({ x: (left + right) / 2, upper, lower }, net, right - left);
  return group({}, [
    element('rect', {
      x: left,
      y: upper,
      width: right - left,
      height,
      fill: lookFill(look, prefix),
      stroke: palette.ink,
      'stroke-width': 0.8,
    }),
    roomy
      ? textAt(at.x, at.y + 4.5, look.letter, {
          size: 13,
          face: 'italic',
          fill: palette.ink,
          anchor: 'middle',
          halo: palette.paper,
          haloWidth: 4,
        })
      : undefined,
  ]);
}

/** Room the diamond and a letter take together [px]. */
const CLEAR = 14;

/** The middle of a segment, or beside the diamond where that lies there. */
function letterPlace(
  { x, upper, lower }: { x: number; upper: number; lower: number },
  net: number,
  width: number,
): { x: number; y: number } {
  const middle = (upper + lower) / 2;
  if (Math.abs(net - middle) >= CLEAR) return { x, y: middle };
  if (width >= 3 * CLEAR) return { x: x - CLEAR - 2, y: middle };
  const [above, below] = [net - CLEAR, net + CLEAR];
  if (below + 8 <= lower) return { x, y: below };
  return above - 8 >= upper ? { x, y: above } : { x, y: middle };
}
