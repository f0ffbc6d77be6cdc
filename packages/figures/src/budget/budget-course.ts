import type { Palette } from '../palette/palette.ts';
import { type TimeAxis, timeAxis } from '../ribbon/time-axis.ts';
import { roundStep, roundTicks, stepDigits } from '../scale/ticks.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { dateLabel } from '../time/calendar.ts';
import { numberText } from '../type/number-text.ts';
import { textAt } from '../type/text.ts';
import { textWidth } from '../type/text-width.ts';
import { amountText } from './amount-text.ts';
import { budgetLabels } from './budget-labels.ts';
import { type BudgetPlot, budgetPlot } from './budget-plot.ts';
import { type GatheredBudget, termTotal } from './gathered.ts';
import { netMark, stackedBars } from './stacked-bars.ts';
import { lookPatterns, termLooks } from './term-look.ts';

export interface BudgetCourseOptions {
  readonly budget: GatheredBudget;
  readonly name: string;
  readonly startDate: string;
  readonly width: number;
  readonly height: number;
  readonly palette: Palette;
  /** Position of the period that is looked at. */
  readonly chosen?: number;
}

/** Who adds (above the line) and who removes (below it), period by period; a diamond marks what is left of both. */
export function budgetCourseScene(options: BudgetCourseOptions): Scene {
  const { budget, palette, width, height, startDate, name } = options;
  const plot = budgetPlot(options);
  const prefix = `budget-${name.replaceAll(/[^A-Za-z0-9]+/g, '-')}`;
  const looks = termLooks(budget.terms);
  const time: TimeAxis = {
    startDate,
    days: budget.periods[budget.periods.length - 1]?.to ?? 1,
    left: plot.left,
    right: plot.right,
    toX: plot.toX,
    palette,
  };
  return sceneOf({ width, height }, sentence(options), [
    lookPatterns(looks, prefix, palette),
    sides(plot, palette, budget.unit),
    valueFigures(plot, palette),
    stackedBars({ ...options, plot, looks, prefix }),
    element('path', {
      d: `M${plot.left} ${plot.value.toPixel(0).toFixed(1)}H${plot.right}`,
      stroke: palette.ink,
      'stroke-width': 1.4,
    }),
    plot.named ? budgetLabels({ budget, plot, looks, prefix, palette, width }) : undefined,
    timeAxis(time, plot.bottom),
  ]);
}

/** What the two sides of the line and the diamond mean, and the unit. */
function sides({ top, named }: BudgetPlot, palette: Palette, unit: string): SceneNode {
  const style = { size: 13, fill: palette.softInk } as const;
  const words = named
    ? `${unit} in each period: added above the line, removed below it;`
    : `${unit}: added above the line, removed below;`;
  const x = textWidth(words, style.size) + 11;
  return group({ 'data-part': 'sides' }, [
    textAt(0, top - 14, words, style),
    netMark(x, top - 18.5, palette),
    textAt(x + 10, top - 14, named ? 'what is left of both' : 'left', style),
  ]);
}

function valueFigures({ left, right, value, top, bottom }: BudgetPlot, palette: Palette): SceneNode {
  const room = Math.max(2, Math.floor((bottom - top) / 34));
  const step = roundStep((value.domain[1] - value.domain[0]) / room);
  const ticks = roundTicks(value.domain, room);
  return group(
    { 'data-part': 'value-axis' },
    ticks.flatMap((tick) => {
      const y = value.toPixel(tick);
      return [
        element('path', {
          d: `M${left} ${y.toFixed(1)}H${right}`,
          stroke: palette.rule,
          'stroke-width': 0.7,
        }),
        textAt(left - 7, y + 4, signed(tick, stepDigits(step)), {
          size: 12,
          fill: palette.softInk,
          anchor: 'end',
        }),
      ];
    }),
  );
}

function signed(value: number, digits: number): string {
  return value > 0 ? `+${numberText(value, digits)}` : numberText(value, digits);
}

/** Spoken in place of the figure; the numbers stand in the table beside it. */
function sentence({ name, budget, startDate }: BudgetCourseOptions): string {
  const totals = budget.terms.map((term) => ({ term: term.term, amount: termTotal(term) }));
  const largest = (side: 1 | -1) =>
    totals.filter(({ amount }) => amount * side > 0).sort((a, b) => (b.amount - a.amount) * side)[0];
  const until = dateLabel(startDate, (budget.periods[budget.periods.length - 1]?.to ?? 1) - 1);
  const words = ([1, -1] as const).flatMap((side) => {
    const found = largest(side);
    if (!found) return [`nobody ${side > 0 ? 'adds' : 'removes'} any`];
    return [`${found.term} ${side > 0 ? 'adds' : 'removes'} most, ${amountText(found.amount, budget.unit)}`];
  });
  return `Who adds and who removes ${name} until ${until}: ${words.join('; ')}.`;
}
