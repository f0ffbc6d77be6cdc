import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CARBON_CLOSED, CARBON_OPEN, STATE, STEER, TOTAL, TOTAL_COUNT } from './layout.ts';
import { settleAtPH, solvePH } from './solve.ts';
import { TemperatureTable, writeConstants } from './temperature-table.ts';
import { conservativeAlkalinity, Workspace } from './workspace.ts';

/** Totals [mol/kg] over eight orders of magnitude, in any mixture. */
const anyTotals = fc.array(
  fc.oneof(
    fc.constant(0),
    fc.double({ min: -9, max: -1, noNaN: true }).map((x) => 10 ** x),
  ),
  { minLength: TOTAL_COUNT, maxLength: TOTAL_COUNT },
);

function workspace(totals: readonly number[], open: boolean, celsius: number): Workspace {
  const w = new Workspace();
  writeConstants(celsius, w.constants, 0);
  w.totals.set(totals);
  w.carbonRule = open ? CARBON_OPEN : CARBON_CLOSED;
  if (open) w.totals[TOTAL.carbon] = Math.min(0.01, totals[TOTAL.carbon]!);
  w.organicRule = 1;
  return w;
}

describe('solvePH', () => {
  it('finds the one pH at which nothing is missing, whatever the totals', () => {
    fc.assert(
      fc.property(anyTotals, fc.boolean(), fc.double({ min: 0, max: 45, noNaN: true }), (totals, open, t) => {
        const w = workspace(totals, open, t);
        expect(solvePH(w)).toBeGreaterThan(0);
        const pH = w.state[STATE.pH]!;
        const alkalinity = conservativeAlkalinity(w.totals);
        // Settled anew from nothing paired, the alkalinity is missing below the pH and in excess above it.
        const missingAt = (x: number): number => {
          w.state[STATE.pH] = x;
          expect(settleAtPH(w, alkalinity)).toBeGreaterThan(0);
          return w.steer[STEER.residual]!;
        };
        expect(missingAt(pH - 1e-6)).toBeGreaterThan(0);
        expect(missingAt(pH + 1e-6)).toBeLessThan(0);
      }),
      { numRuns: 400 },
    );
  });

  it('does not depend on where it starts', () => {
    fc.assert(
      fc.property(anyTotals, anyTotals, fc.boolean(), (first, second, open) => {
        const cold = workspace(second, open, 22);
        solvePH(cold);
        const warm = workspace(first, open, 22);
        solvePH(warm);
        warm.totals.set(cold.totals);
        solvePH(warm);
        expect(Math.abs(warm.state[STATE.pH]! - cold.state[STATE.pH]!)).toBeLessThan(1e-10);
      }),
      { numRuns: 400 },
    );
  });

  it('recovers from a state that is not a number', () => {
    const w = workspace([1e-3, 0, 1e-3, 0, 1e-3, 0, 0, 0, 0, 0, 0, 2e-3], false, 20);
    solvePH(w);
    const pH = w.state[STATE.pH]!;
    w.state.fill(Number.NaN);
    solvePH(w);
    expect(w.state[STATE.pH]).toBeCloseTo(pH, 9);
  });
});

describe('TemperatureTable', () => {
  it('interpolates every constant to 8e-7 and is exact beyond its grid', () => {
    const table = new TemperatureTable();
    const between = new Float64Array(28);
    const exact = new Float64Array(28);
    fc.assert(
      fc.property(fc.double({ min: -5, max: 60, noNaN: true }), (t) => {
        table.read(t, between);
        writeConstants(t, exact, 0);
        for (const [j, value] of exact.entries()) {
          const scale = Math.abs(value);
          expect(Math.abs(between[j]! - value)).toBeLessThanOrEqual(t >= 0 && t < 45 ? 8e-7 * scale : 0);
        }
      }),
    );
  });
});
