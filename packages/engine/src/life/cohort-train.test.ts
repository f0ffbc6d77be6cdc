import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addBrood, BROOD_LIMIT, broodCarbon, eggCount, emptyBroods } from './brood-train.ts';
import { addCohort, COHORT_LIMIT, emptyTrain, trainCarbon } from './cohort-train.ts';
import { energeticsOf, structureOf } from './energetics.ts';
import { GRAZER } from './life-test-kit.ts';

const grazer = energeticsOf(GRAZER);

const cohorts = fc.array(
  fc.record({
    count: fc.integer({ min: 1, max: 500 }),
    length: fc.double({ min: 1, max: 7, noNaN: true }),
    age: fc.double({ min: 0, max: 200, noNaN: true }),
  }),
  { minLength: 1, maxLength: 120 },
);

describe('cohort train', () => {
  it('stays within its limit, in order of age, and loses neither animals nor carbon by merging', () => {
    fc.assert(
      fc.property(cohorts, (added) => {
        const train = emptyTrain();
        let count = 0;
        let carbon = 0;
        for (const { count: some, length, age } of added) {
          const isAdult = length >= GRAZER.lengthAtPuberty;
          addCohort(train, grazer, { count: some, length, age, isAdult });
          count += some;
          carbon += some * structureOf(grazer, length);
        }
        expect(train.size).toBeLessThanOrEqual(COHORT_LIMIT);
        expect(train.count.slice(0, train.size).reduce((a, b) => a + b)).toBe(count);
        expect(trainCarbon(train, grazer) / carbon).toBeCloseTo(1, 12);
        for (let i = 1; i < train.size; i += 1) {
          expect(train.age[i]!).toBeLessThanOrEqual(train.age[i - 1]!);
        }
      }),
    );
  });

  it('never merges young with adults', () => {
    const train = emptyTrain();
    for (let i = 0; i < 100; i += 1) {
      addCohort(train, grazer, { count: 1, length: 2, age: i, isAdult: false });
      addCohort(train, grazer, { count: 1, length: 5, age: 100 + i, isAdult: true });
    }
    for (let i = 0; i < train.size; i += 1) expect(train.length[i]).toBeCloseTo(train.adult[i] ? 5 : 2, 12);
  });
});

describe('brood train', () => {
  it('keeps eggs and their carbon when broods are merged', () => {
    const broods = emptyBroods();
    for (let i = 0; i < 40; i += 1) addBrood(broods, 10 + i, 0.9 - i / 50);
    expect(broods.size).toBe(BROOD_LIMIT);
    expect(eggCount(broods)).toBe(40 * 10 + (39 * 40) / 2);
    const single = emptyBroods();
    addBrood(single, 1, 0);
    expect(broodCarbon(single, grazer)).toBe(grazer.eggCarbon);
  });
});
