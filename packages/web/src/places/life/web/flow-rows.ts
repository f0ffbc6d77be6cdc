import type { LifeDocument } from '@shoreglass/engine';
import { eatenIn } from '@shoreglass/figures';

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
  readonly rows: readonly FlowRow[];
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
    return { id, name, amount, rows: own.map((row) => ({ ...row, share: row.amount / amount })) };
  });
}

function foodName({ food, foodName: name }: LifeDocument['flows'][number], eater: string): string {
  return food === `population:${eater}` ? 'their own kind' : name;
}
