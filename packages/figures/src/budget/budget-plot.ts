import { linearScale, type Scale } from '../scale/linear-scale.ts';
import { type GatheredBudget, termTotal } from './gathered.ts';

/** Narrower than this the names stand below the figure, by letter. */
const ROOM_FOR_NAMES = 640;
const NAMES = 206;
const TOP = 30;
const BOTTOM = 44;

export interface BudgetPlot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Names stand at the right of the bars. */
  readonly named: boolean;
  toX(day: number): number;
  readonly value: Scale;
}

/** Where the bars of a budget lie in the figure; for what is laid over it. */
export function budgetPlot({
  budget,
  width,
  height,
}: {
  readonly budget: GatheredBudget;
  readonly width: number;
  readonly height: number;
}): BudgetPlot {
  const named = width >= ROOM_FOR_NAMES;
  const [left, right] = [46, Math.max(120, width - (named ? NAMES : 4))];
  const [top, bottom] = [TOP, Math.max(TOP + 80, height - BOTTOM)];
  const from = budget.periods[0]?.from ?? 0;
  const to = Math.max(from + 1, budget.periods[budget.periods.length - 1]?.to ?? 1);
  const time = linearScale([from, to], [left, right]);
  return { left, right, top, bottom, named, toX: time.toPixel, value: valueScale(budget, top, bottom) };
}

function valueScale({ periods, terms }: GatheredBudget, top: number, bottom: number): Scale {
  const sums = periods.map((_, period) => {
    const amounts = terms.map((term) => termTotal(term, period));
    const sum = (kept: (amount: number) => boolean) =>
      amounts.filter(kept).reduce((all, each) => all + each, 0);
    return [sum((amount) => amount < 0), sum((amount) => amount > 0)];
  });
  const low = Math.min(0, ...sums.map(([removed]) => removed ?? 0));
  const high = Math.max(0, ...sums.map(([, added]) => added ?? 0));
  const air = (high - low || 1) * 0.05;
  return linearScale([low === 0 ? -air : low - air, high + air], [bottom, top]);
}
