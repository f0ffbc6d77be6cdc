import type { Integrator } from '@shoreglass/engine';
import { createIntegrator, type IntegratorOptions } from '@shoreglass/engine';

/** A reaction: what one unit of it moves, by state (negative is consumed), and how fast it goes, >= 0. */
export interface Transfer {
  readonly moves: Readonly<Record<number, number>>;
  readonly rate: (y: Float64Array) => number;
}

/** Moves one unit for one unit. */
export const flow = (from: number, to: number, rate: Transfer['rate']): Transfer => ({
  moves: { [from]: -1, [to]: 1 },
  rate,
});
export const source = (into: number, rate: Transfer['rate']): Transfer => ({ moves: { [into]: 1 }, rate });
export const sink = (from: number, rate: Transfer['rate']): Transfer => ({ moves: { [from]: -1 }, rate });

/** The engine's integrator for a list of reactions over `stateCount` states. */
export function integratorOf(
  transfers: readonly Transfer[],
  stateCount: number,
  options: IntegratorOptions,
): Integrator {
  const start = new Int32Array(transfers.length + 1);
  const entries = transfers.map(({ moves }) => Object.entries(moves));
  entries.forEach((row, r) => {
    start[r + 1] = start[r]! + row.length;
  });
  const system = {
    reactions: transfers.map((_, r) => ({ name: `transfer ${r + 1}` })),
    start,
    index: Int32Array.from(entries.flat(), ([state]) => Number(state)),
    coefficient: Float64Array.from(entries.flat(), ([, amount]) => amount),
    derive() {},
    evaluate(values: Float64Array, rates: Float64Array) {
      for (let r = 0; r < transfers.length; r += 1) rates[r] = transfers[r]!.rate(values);
    },
  };
  return createIntegrator(system, stateCount, options);
}
