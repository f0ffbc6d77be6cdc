import type { BookShape } from '../run/block-book.ts';
import { BLOCK_DAYS } from '../run/block-book.ts';
import { CARE_TERMS } from '../run/terms.ts';
import type { BookedRun } from './because.ts';
import { BUDGET_MEASURES, type Budget, type BudgetMeasure, type BudgetTerm } from './budget.ts';
import { termName } from './term-names.ts';

/** Adds to a term's amount in a period, opening the term when it is new. */
type Adder = (term: string, period: number, amount: number) => void;

function addReactions(add: Adder, run: BookedRun, weights: Float64Array): void {
  const { start, index, coefficient, reactions } = run.system;
  const { rowLength } = run.shape;
  for (const [r, { process }] of reactions.entries()) {
    let perExtent = 0;
    for (let e = start[r]!; e < start[r + 1]!; e += 1) perExtent += weights[index[e]!]! * coefficient[e]!;
    if (perExtent === 0) continue;
    const term = termName(process);
    for (let at = r, period = 0; at < run.rows.length; at += rowLength, period += 1)
      add(term, period, perExtent * run.rows[at]!);
  }
}

function measure(rows: Float64Array, at: number, weights: Float64Array): number {
  let amount = 0;
  for (let i = 0; i < weights.length; i += 1) amount += weights[i]! * rows[at + i]!;
  return amount;
}

function addCare(add: Adder, { rows, shape }: BookedRun, weights: Float64Array): void {
  for (const [k, term] of CARE_TERMS.entries()) {
    const offset = shape.careOffset + k * shape.states;
    for (let row = 0, period = 0; row < rows.length; row += shape.rowLength, period += 1) {
      const amount = measure(rows, row + offset, weights);
      if (amount !== 0) add(term, period, amount);
    }
  }
}

const moved = ({ amounts }: BudgetTerm): number => amounts.reduce((sum, amount) => sum + Math.abs(amount), 0);

function termsOf(run: BookedRun, weights: Float64Array, periods: number): BudgetTerm[] {
  const found = new Map<string, number[]>();
  const add: Adder = (term, period, amount) => {
    const amounts = found.get(term) ?? new Array<number>(periods).fill(0);
    amounts[period] = amounts[period]! + amount;
    found.set(term, amounts);
  };
  addReactions(add, run, weights);
  addCare(add, run, weights);
  return [...found]
    .map(([term, amounts]) => ({ term, amounts }))
    .filter((term) => moved(term) > 0)
    .sort((a, b) => moved(b) - moved(a) || (a.term < b.term ? -1 : 1));
}

function stockOf(rows: Float64Array, shape: BookShape, start: Float64Array, weights: Float64Array): number[] {
  const stock = [measure(start, 0, weights)];
  for (let row = 0; row < rows.length; row += shape.rowLength)
    stock.push(measure(rows, row + shape.stateOffset, weights));
  return stock;
}

/** The days that the blocks of a run's book stand for; the last may be short. `derived`. */
export function bookPeriods(days: number): { from: number; to: number }[] {
  return Array.from({ length: Math.ceil(days / BLOCK_DAYS) }, (_, block) => ({
    from: block * BLOCK_DAYS,
    to: Math.min(days, (block + 1) * BLOCK_DAYS),
  }));
}

/**
 * The budget of one measure from a run's book [the measure's unit]: terms and stock such that in every period the
 * terms add up to the change of the stock.
 * @param run the run's book
 * @param start states when the run began [mol], in the order of the variables
 * @param days length of the run
 * @source derived: extents times stoichiometry, and what care changed
 */
export function budgetOf(
  run: BookedRun & { readonly start: Float64Array; readonly days: number },
  of: BudgetMeasure,
): Budget {
  const { weights, ...head } = of;
  const periods = bookPeriods(run.days);
  return {
    ...head,
    periods,
    terms: termsOf(run, weights, periods.length),
    stock: stockOf(run.rows, run.shape, run.start, weights),
  };
}

/** All budgets of a run, by the measures of `BUDGET_MEASURES`. `derived`. */
export function budgetsOf(
  run: BookedRun & { readonly start: Float64Array; readonly days: number },
): Budget[] {
  return BUDGET_MEASURES.map((each) => budgetOf(run, each));
}
