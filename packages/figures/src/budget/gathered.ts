import type { Budget, BudgetTerm } from '@shoreglass/engine';

/** A stretch of the run, `from` included, `to` excluded [days]. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A budget with longer periods and its smallest terms put together; sums stay as they were. */
export interface GatheredBudget {
  readonly unit: string;
  readonly periods: readonly Stretch[];
  /** Largest movers first; what was put together stands last. */
  readonly terms: readonly BudgetTerm[];
}

export interface Gathering {
  /** Shortest period wanted [days]. */
  readonly days: number;
  /** Terms named one by one. */
  readonly most: number;
}

/** Name of the terms too small to be told apart. */
export const REST = 'all others';

/** Periods of at least so many days, and the few terms that move most of what is moved. */
export function gatheredBudget(budget: Budget, { days, most }: Gathering): GatheredBudget {
  const groups = groupsOf(budget.periods, days);
  const terms = budget.terms.map(({ term, amounts }) => ({
    term,
    amounts: groups.map(({ first, last }) => sum(amounts.slice(first, last + 1))),
  }));
  return {
    unit: budget.unit,
    periods: groups.map(({ first, last }) => ({
      from: budget.periods[first]?.from ?? 0,
      to: budget.periods[last]?.to ?? 0,
    })),
    terms: withRest(terms, most),
  };
}

interface Group {
  readonly first: number;
  last: number;
}

/** Neighbouring periods until each group is long enough; a short rest joins the last. */
function groupsOf(periods: readonly Stretch[], days: number): Group[] {
  const groups: Group[] = [];
  for (const [index, { to }] of periods.entries()) {
    const current = groups[groups.length - 1];
    const from = periods[current?.first ?? 0]?.from ?? 0;
    const open = current && to - from <= days;
    const rest = current && (periods[periods.length - 1]?.to ?? 0) - (periods[index]?.from ?? 0) < days / 2;
    if (open || rest) current.last = index;
    else groups.push({ first: index, last: index });
  }
  return groups;
}

function withRest(terms: readonly BudgetTerm[], most: number): BudgetTerm[] {
  const ordered = [...terms].sort((a, b) => moved(b) - moved(a) || (a.term < b.term ? -1 : 1));
  const whole = ordered.reduce((all, term) => all + moved(term), 0);
  const named = ordered.filter((term, rank) => rank < most && moved(term) >= whole * 0.005);
  const others = ordered.slice(named.length);
  if (others.length <= 1) return ordered;
  const periods = others[0]?.amounts.length ?? 0;
  const amounts = Array.from({ length: periods }, (_, period) =>
    sum(others.map((term) => term.amounts[period] ?? 0)),
  );
  return [...named, { term: REST, amounts }];
}

function moved({ amounts }: BudgetTerm): number {
  return sum(amounts.map(Math.abs));
}

/** Sum of a term over one period, or over all of them. */
export function termTotal({ amounts }: BudgetTerm, period?: number): number {
  return period === undefined ? sum(amounts) : (amounts[period] ?? 0);
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
