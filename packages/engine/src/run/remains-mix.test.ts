import { describe, expect, it } from 'vitest';
import type { Plan, Planting, Zone } from '../plan/plan.ts';
import { VARIABLE_INDEX as V, VARIABLE_IDS } from '../variables/variables.ts';
import { createRemainsMix, meanBreakdown, USUAL_BREAKDOWN } from './remains-mix.ts';

const box = { length: 1, width: 0.5 } as Plan['box'];
const pool = { id: 'pool', kind: 'pool', from: 0, to: 1 } as Zone;
const planting = (given: Partial<Planting>): Planting => ({
  id: 'a',
  name: 'a',
  group: 'submerged',
  zone: 'pool',
  cover: 0.5,
  fullCoverBiomass: 10,
  ...given,
});
const planted = (...plants: Planting[]) => ({ box, zones: [pool], plants });
const LOSSES = [
  { process: 'submerged-plants', name: 'loss of submerged plants', stoichiometry: {} },
  { process: 'floating-plants', name: 'loss of floating plants', stoichiometry: {} },
];

describe('kinds of dead water plants', () => {
  it('have the pace of what was planted, by biomass', () => {
    expect(meanBreakdown(planted())).toBe(1);
    expect(meanBreakdown(planted(planting({})))).toBe(1);
    expect(meanBreakdown(planted(planting({}), planting({ breakdown: 0.2, cover: 0.25 })))).toBeCloseTo(
      (1 * 2 + 0.2) / 3,
      12,
    );
    expect(meanBreakdown(planted(planting({ group: 'floating' })))).toBe(USUAL_BREAKDOWN.floating);
  });

  it('need no following where one group was planted', () => {
    expect(createRemainsMix(planted(planting({}), planting({ breakdown: 0.2 })), LOSSES)).toBeUndefined();
  });

  it('are followed where two groups were planted, each running out at its own pace', () => {
    const mix = createRemainsMix(planted(planting({}), planting({ group: 'floating' })), LOSSES)!;
    const values = new Float64Array(VARIABLE_IDS.length);
    const extents = new Float64Array(2);
    extents.set([1, 1]);
    values[V.plantRemains] = 2;
    mix.pass(values, extents);
    expect(values[V.remainsPace]).toBeCloseTo((1 + USUAL_BREAKDOWN.floating) / 2, 12);
    let left = 2;
    for (let day = 0; day < 200; day += 1) {
      left *= 1 - 0.03 * values[V.remainsPace]!;
      values[V.plantRemains] = left;
      // the book opens a new block every ten days, in which nothing more falls
      mix.pass(values, day % 10 === 0 ? new Float64Array(2) : extents.fill(0));
    }
    const alone = (pace: number): number => (1 - 0.03 * pace) ** 200;
    expect(left).toBeCloseTo(alone(1) + alone(USUAL_BREAKDOWN.floating), 2);
    expect(values[V.remainsPace]!).toBeLessThan(1.1 * USUAL_BREAKDOWN.floating);
  });
});
