import { type AheadDocument, type Budget, type BudgetId, convert } from '@shoreglass/engine';
import { type GatheredBudget, type TermLook, termLooks, termTotal } from '@shoreglass/figures';

export interface LedgerRow {
  readonly term: string;
  readonly look: TermLook;
  /** In the budget's unit, over the period; positive adds. */
  readonly amount: number;
  /** The same spread over the water, in the unit keepers read. */
  readonly inWater: number;
  /** Of the largest row [0..1]. */
  readonly share: number;
}

/** Both sides of a budget over one period, or over the whole run. */
export interface LedgerSheet {
  readonly adds: readonly LedgerRow[];
  readonly removes: readonly LedgerRow[];
  readonly net: { readonly amount: number; readonly inWater: number };
  /** In the water before and after [the budget's unit]. */
  readonly before: number;
  readonly after: number;
  readonly waterUnit: string;
  /** Mean volume that amounts are spread over [L]. */
  readonly volume: number;
}

interface LedgerRequest {
  readonly document: AheadDocument;
  readonly budget: Budget;
  readonly gathered: GatheredBudget;
  readonly period: number | undefined;
}

/** Amount per litre of water in the unit of the matching reading. */
const IN_WATER: Record<BudgetId, { readonly unit: string; readonly of: (perLitre: number) => number }> = {
  alkalinity: { unit: '°dKH', of: (value) => convert(value, 'meq/L', '°dKH') },
  hardness: { unit: '°dGH', of: (value) => convert(value, 'mmol/L', '°dGH') },
  nitrogen: { unit: 'mg N/L', of: (value) => value },
  ammonia: { unit: 'mg N/L', of: (value) => value },
  phosphorus: { unit: 'mg P/L', of: (value) => value },
  oxygen: { unit: 'mg/L', of: (value) => value },
};

export function ledgerOf({ document, budget, gathered, period }: LedgerRequest): LedgerSheet {
  const whole = { from: 0, to: budget.periods[budget.periods.length - 1]?.to ?? 0 };
  const stretch = (period === undefined ? undefined : gathered.periods[period]) ?? whole;
  const volume = meanVolume(document, stretch);
  const { unit, of } = IN_WATER[budget.id];
  const looks = termLooks(gathered.terms);
  const amounts = gathered.terms.map((term) => termTotal(term, period));
  const largest = Math.max(...amounts.map(Math.abs), Number.MIN_VALUE);
  const rows = gathered.terms.map(
    ({ term }, index): LedgerRow => ({
      term,
      look: looks[index] as TermLook,
      amount: amounts[index] ?? 0,
      inWater: of((amounts[index] ?? 0) / volume),
      share: Math.abs(amounts[index] ?? 0) / largest,
    }),
  );
  const net = amounts.reduce((sum, amount) => sum + amount, 0);
  const bySize = (a: LedgerRow, b: LedgerRow) => Math.abs(b.amount) - Math.abs(a.amount);
  return {
    adds: rows.filter(({ amount }) => amount > 0).sort(bySize),
    removes: rows.filter(({ amount }) => amount < 0).sort(bySize),
    net: { amount: net, inWater: of(net / volume) },
    before: stockAt(budget, stretch.from),
    after: stockAt(budget, stretch.to),
    waterUnit: unit,
    volume,
  };
}

/** What is in the water when a day begins. */
function stockAt({ periods, stock }: Budget, day: number): number {
  return stock[periods.filter(({ to }) => to <= day).length] ?? 0;
}

function meanVolume({ series }: AheadDocument, { from, to }: { from: number; to: number }): number {
  const volumes = series.waterVolume?.expected.slice(from, to) ?? [];
  const sum = volumes.reduce((all, volume) => all + volume, 0);
  return volumes.length > 0 && sum > 0 ? sum / volumes.length : 1;
}
