import { describe, expect, test } from 'vitest';
import type { ReactionSystem } from '../process/compose.ts';
import { bookShape } from '../run/block-book.ts';
import { CARE_TERMS, WATER_TERMS } from '../run/terms.ts';
import { STATE_IDS, VARIABLE_INDEX } from '../variables/variables.ts';
import { addContributions, largestShares } from './because.ts';
import { subjectOf } from './subject.ts';

/** One reaction, nitrification of one mol: ammonium -1, nitrate +1, so alkalinity -2 eq. */
const system: ReactionSystem = {
  reactions: [
    { process: 'ammonia-oxidation', name: 'whole', stoichiometry: { ammonium: -1, nitrate: 1, oxygen: -2 } },
  ],
  start: Int32Array.from([0, 2]),
  index: Int32Array.from([VARIABLE_INDEX.ammonium, VARIABLE_INDEX.nitrate]),
  coefficient: Float64Array.from([-1, 1]),
  evaluate: () => undefined,
  derive: () => undefined,
};

describe('what stands behind a falling hardness', () => {
  const shape = bookShape(1, STATE_IDS.length, 0);
  const rows = new Float64Array(shape.rowLength);
  rows[0] = 0.01; // mol nitrified: 0.02 eq lost
  const topOff = shape.careOffset + CARE_TERMS.indexOf('top-off') * shape.states;
  rows[topOff + VARIABLE_INDEX.calcium] = 0.001; // 0.002 eq brought in
  rows[shape.stateOffset + VARIABLE_INDEX.sodium] = 0.1; // 0.1 eq in 0.05 m3: 2 eq/m3
  rows[shape.volumeOffset] = 0.05;
  rows[shape.waterOffset + WATER_TERMS.indexOf('evaporation')] = -0.005; // concentrates: +0.01
  rows[shape.waterOffset + WATER_TERMS.indexOf('top-off')] = 0.005; // dilutes: -0.01
  const totals = new Map<string, number>();
  const subject = subjectOf('KH');
  if (!subject) throw new Error('KH has a subject');
  addContributions(totals, { rows, shape, system }, subject, 5);

  // The sums are worked out by hand above.
  test('each term in equivalents', () => {
    expect(totals.get('ammonia oxidation')).toBeCloseTo(-0.02, 12);
    expect(totals.get('evaporation')).toBeCloseTo(0.01, 12);
    expect(totals.get('top-off')).toBeCloseTo(0.002 - 0.01, 12);
  });
  test('shares among those that push down', () => {
    expect(largestShares(totals, -1)).toEqual([
      { term: 'ammonia oxidation', share: expect.closeTo(20 / 28, 10) },
      { term: 'top-off', share: expect.closeTo(8 / 28, 10) },
    ]);
  });
});
