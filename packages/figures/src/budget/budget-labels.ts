import type { Palette } from '../palette/palette.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { textAt } from '../type/text.ts';
import { fitText } from '../type/text-width.ts';
import type { BudgetPlot } from './budget-plot.ts';
import { type GatheredBudget, termTotal } from './gathered.ts';
import { segmentsOf } from './stacked-bars.ts';
import { lookFill, type TermLook } from './term-look.ts';

interface Labels {
  readonly budget: GatheredBudget;
  readonly plot: BudgetPlot;
  readonly looks: readonly TermLook[];
  readonly prefix: string;
  readonly palette: Palette;
  readonly width: number;
}

interface Label {
  readonly term: number;
  /** Where its segment of the last bar lies, if it has one. */
  readonly at: number | undefined;
  y: number;
}

const LINE = 21;
const SWATCH = 14;

/** Names at the right of the last bar, each with its swatch and a line to its segment. */
export function budgetLabels(labels: Labels): SceneNode {
  const { budget, plot } = labels;
  const segments = segmentsOf(labels, budget.periods.length - 1);
  const zero = plot.value.toPixel(0);
  const side = (adds: boolean): Label[] =>
    budget.terms.flatMap((term, index) => {
      if (termTotal(term) >= 0 !== adds) return [];
      const found = segments.find((segment) => segment.term === index);
      const at = found === undefined ? undefined : (found.upper + found.lower) / 2;
      return [{ term: index, at, y: at ?? zero }];
    });
  const above = spread(side(true).reverse(), plot.top + 6, zero - 4);
  const below = spread(
    side(false),
    Math.max(zero + 14, (above[above.length - 1]?.y ?? 0) + LINE),
    plot.bottom,
  );
  return group(
    { 'data-part': 'labels' },
    [...above, ...below].map((label) => drawnLabel(labels, label)),
  );
}

/** Keeps labels a line apart, in their order, between two heights where there is room. */
function spread(labels: Label[], top: number, bottom: number): Label[] {
  let next = top;
  for (const label of labels) {
    label.y = Math.max(next, label.y);
    next = label.y + LINE;
  }
  let last = Math.max(bottom, top + LINE * (labels.length - 1));
  for (const label of [...labels].reverse()) {
    label.y = Math.min(last, label.y);
    last = label.y - LINE;
  }
  return labels;
}

function drawnLabel({ budget, plot, looks, prefix, palette, width }: Labels, label: Label): SceneNode {
  const look = looks[label.term] as TermLook;
  const x = plot.right + 22;
  const name = budget.terms[label.term]?.term ?? '';
  return group({ 'data-term': name }, [
    label.at === undefined
      ? undefined
      : element('path', {
          d: `M${plot.right + 1} ${label.at.toFixed(1)}L${x - 4} ${label.y.toFixed(1)}`,
          stroke: palette.softInk,
          'stroke-width': 0.8,
        }),
    element('rect', {
      x,
      y: label.y - SWATCH / 2,
      width: SWATCH,
      height: SWATCH,
      fill: lookFill(look, prefix),
      stroke: palette.ink,
      'stroke-width': 0.8,
    }),
    textAt(x + SWATCH + 6, label.y + 4.5, look.letter, { size: 13.5, face: 'italic', fill: palette.softInk }),
    textAt(x + SWATCH + 19, label.y + 4.5, fitText(name, width - x - SWATCH - 19, 13.5), {
      size: 13.5,
      fill: palette.ink,
    }),
  ]);
}
