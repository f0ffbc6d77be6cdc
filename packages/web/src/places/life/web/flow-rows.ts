import type { LifeDocument } from '@shoreglass/engine';
import { eatenIn, TRACE_EATEN } from '@shoreglass/figures';

export interface FlowRow {
  readonly food: string;
  readonly foodName: string;
  /** [mg C] */
  readonly amount: number;
  /** Of all that this eater eats [0..1]. */
  readonly share: number;
}

export interface EaterRows {
  readonly id: string;
  readonly name: string;
  readonly amount: number;
  /** Foods worth a line, the largest first. */
  readonly rows: readonly FlowRow[];
  /** Names of foods of which only a trace is eaten then. */
  readonly traces: readonly string[];
}

/** Every population with what it eats, the largest first; those who eat nothing then have no rows. */
export function eaterRows(
  { populations, flows }: Pick<LifeDocument, 'populations' | 'flows'>,
  week: number | undefined,
): EaterRows[] {
  return populations.map(({ id, name }) => {
    const own = flows
      .filter(({ eater }) => eater === id)
      .map((flow) => ({ food: flow.food, foodName: foodName(flow, id), amount: eatenIn(flow, week) }))
      .filter(({ amount }) => amount > 0)
      .sort((a, b) => b.amount - a.amount);
    const amount = own.reduce((sum, row) => sum + row.amount, 0);
    const rows = own
      .filter((row) => row.amount >= TRACE_EATEN)
      .map((row) => ({ ...row, share: row.amount / amount }));
    const traces = own.filter((row) => row.amount < TRACE_EATEN).map((row) => row.foodName);
    return { id, name, amount, rows, traces };
  });
}

function foodName({ food, foodName: name }: LifeDocument['flows'][number], eater: string): string {
  return food === `population:${eater}` ? 'their own kind' : name;
}
