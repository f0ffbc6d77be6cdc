import type { AheadDocument } from '@shoreglass/engine';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type { z } from 'zod';
import { aheadDocumentSchema } from './ahead-document.ts';

type Read = z.output<typeof aheadDocumentSchema>;

const quantiles = { days: [0], expected: [7], q05: [7], q25: [7], q50: [7], q75: [7], q95: [7] };
const least: AheadDocument = {
  enclosure: { id: 'a', name: 'A', startDate: '2026-03-01' },
  run: { days: 1, members: 2, seed: 1, engineVersion: '0.1.0' },
  series: { pH: { name: 'pH', unit: '', ...quantiles } },
  turningPoints: [
    {
      id: 'pH-low',
      subject: 'population:hyalella-azteca',
      kind: 'dies out',
      probability: 0.5,
      window: { early: 1, median: 2, late: 3 },
      band: { unit: 'animals', owner: 'keeper', source: 'own' },
      because: [{ term: 'hunger', share: 1 }],
      sentence: 'They die out.',
    },
  ],
  handsOffHorizon: { q10: 1, q50: 1, q90: 1, unbroken: 1, limitedBy: [] },
  budgets: [
    {
      id: 'alkalinity',
      name: 'alkalinity',
      unit: 'meq',
      about: 'What the water can take up.',
      periods: [{ from: 0, to: 1 }],
      terms: [{ term: 'top-off', amounts: [1] }],
      stock: [10, 11],
    },
  ],
  closure: { nitrogen: 0, phosphorus: 0, carbon: 0, oxygen: 0, calcium: 0, alkalinity: 0, water: 0 },
  notModelled: [],
};

describe('the schema of the outlook document', () => {
  it('has the type of the engine, both ways', () => {
    expectTypeOf<AheadDocument>().toExtend<Read>();
    expectTypeOf<Read>().toExtend<AheadDocument>();
    const there: Read = least;
    const back: AheadDocument = there;
    expect(back).toBe(least);
  });
  it('reads a document and refuses surplus, missing and foreign', () => {
    expect(aheadDocumentSchema.parse(least)).toEqual(least);
    expect(aheadDocumentSchema.safeParse({ ...least, extra: 1 }).success).toBe(false);
    expect(aheadDocumentSchema.safeParse({ ...least, closure: { nitrogen: 0 } }).success).toBe(false);
    const [point] = least.turningPoints;
    const wrong = { ...least, turningPoints: [{ ...point, subject: 'mood' }] };
    expect(aheadDocumentSchema.safeParse(wrong).success).toBe(false);
  });
});
