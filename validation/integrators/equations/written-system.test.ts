import { describe, expect, it } from 'vitest';
import reference from '../integrators.json' with { type: 'json' };
import { REFERENCE_SYSTEMS } from '../reference-systems.ts';
import type { Transfer } from '../transfer-system.ts';
import { readSystem } from './written-system.ts';

interface Item {
  readonly id: string;
  readonly equations: readonly string[];
  readonly parameters: Readonly<Record<string, number>>;
  readonly state_names: readonly string[] | null;
  readonly y0: readonly number[];
}

const items = (reference.items as unknown as readonly Item[]).filter(({ id }) => id in REFERENCE_SYSTEMS);

function derivative(transfers: readonly Transfer[], y: Float64Array): Float64Array {
  const result = new Float64Array(y.length);
  for (const { moves, rate } of transfers) {
    for (const [state, amount] of Object.entries(moves)) result[Number(state)]! += amount * rate(y);
  }
  return result;
}

const read = (lines: readonly string[], parameters: Readonly<Record<string, number>> = {}) =>
  readSystem({ lines, parameters });

describe('equations as written', () => {
  it.each(items)('of $id have the derivatives of the reactions written by hand', (item) => {
    const { equations, parameters, state_names: names, y0 } = item;
    const system = readSystem({ lines: equations, parameters, ...(names ? { names } : {}) });
    expect(system.stateCount).toBe(y0.length);
    // Any point with no state at zero, at t = 0.4.
    const y = Float64Array.from([...y0.map((value, i) => value + 0.1 * (i + 1)), 0.4]);
    const byHand = derivative(REFERENCE_SYSTEMS[item.id]!.transfers(parameters), y);
    const asWritten = derivative(system.transfers, y);
    for (let i = 0; i < y0.length; i += 1) {
      expect(Math.abs(asWritten[i]! - byHand[i]!)).toBeLessThanOrEqual(
        1e-13 * (1 + Math.abs(byHand[i]!) * 10),
      );
    }
  });

  it('multiply what stands side by side, powers first, and divide from left to right', () => {
    const { transfers } = read(["x'=2x^2 k/(1+x) k-3(k-x)"], { k: 5 });
    // At x = 2: 2 * 4 * 5 / 3 * 5 - 3 (5 - 2)
    expect(derivative(transfers, Float64Array.of(2))[0]).toBeCloseTo(200 / 3 - 9, 12);
  });

  it('know time, remarks and derivatives of others', () => {
    const system = read(["x'=sin(pi t)  (remark a=b)", "y'=-x'"]);
    expect(system.hasClock).toBe(true);
    const slope = derivative(system.transfers, Float64Array.of(1, 1, 0.5));
    expect([...slope]).toEqual([1, -1, 1]);
  });

  it('are refused where they cannot be read', () => {
    expect(() => read(["x'=y"])).toThrow("'y' is not known");
    expect(() => read(["x'=(x"])).toThrow("')' is missing");
    expect(() => read(["x'=x_{i}"])).toThrow('cannot be read');
    expect(() => read(['x'])).toThrow('no equation');
  });
});
