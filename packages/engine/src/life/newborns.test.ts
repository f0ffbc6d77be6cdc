import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lifeOnRation } from '../community/steady-population.ts';
import { createRandom } from '../numerics/random.ts';
import { addCohort, COHORT_LIMIT, emptyTrain, trainCarbon } from './cohort-train.ts';
import { drawn, EXPECTED } from './demography.ts';
import { energeticsOf, structureOf } from './energetics.ts';
import { CARRIED, closureOver, freeLiving, passDays, tankOf, timesTwice } from './grazer-test-kit.ts';
import { DEATHLESS, GRAZER } from './life-test-kit.ts';
import { createLivingPopulation } from './living-population.ts';
import { addNewborns } from './newborns.ts';

const SPREAD = 0.1;
const grazers = (variation: number) =>
  createLivingPopulation({ id: 'grazer', traits: CARRIED }, { ...GRAZER, variation });

describe('the young of a day', () => {
  it('are one cohort where all eat alike', () => {
    const population = grazers(0);
    addNewborns(population, 30, EXPECTED);
    const { train } = population;
    expect([train.size, train.count[0], train.share[0]]).toEqual([1, 30, 1]);
  });

  it('eat with the mean, the spread and the fourth moment of a normal (3 s^4)', () => {
    const population = grazers(SPREAD);
    addNewborns(population, 30, EXPECTED);
    const { train } = population;
    const moment = (power: number): number => {
      let sum = 0;
      for (let i = 0; i < train.size; i += 1) sum += (train.count[i]! / 30) * (train.share[i]! - 1) ** power;
      return sum;
    };
    expect(moment(0)).toBeCloseTo(1, 12);
    expect(moment(1)).toBeCloseTo(0, 12);
    expect(moment(2)).toBeCloseTo(SPREAD ** 2, 12);
    expect(moment(4)).toBeCloseTo(3 * SPREAD ** 4, 12);
  });

  it('are whole animals in a member, none lost', () => {
    const demography = drawn(createRandom(4, 'newborns'));
    for (let count = 1; count < 40; count += 1) {
      const population = grazers(SPREAD);
      addNewborns(population, count, demography);
      const { train } = population;
      const counts = [...train.count.slice(0, train.size)];
      expect(counts.every((some) => Number.isInteger(some) && some > 0)).toBe(true);
      expect(counts.reduce((a, b) => a + b)).toBe(count);
    }
  });
});

describe('a train of unlike animals', () => {
  it('merges only those that eat the same share, stays in order of age and loses nothing', () => {
    const grazer = energeticsOf(GRAZER);
    const cohorts = fc.array(
      fc.record({
        count: fc.integer({ min: 1, max: 500 }),
        length: fc.double({ min: 1, max: 7, noNaN: true }),
        age: fc.double({ min: 0, max: 200, noNaN: true }),
        share: fc.constantFrom(0.9, 1, 1.1),
      }),
      { minLength: 1, maxLength: 120 },
    );
    fc.assert(
      fc.property(cohorts, (added) => {
        const train = emptyTrain();
        const counts: Record<string, number> = {};
        let carbon = 0;
        for (const cohort of added) {
          addCohort(train, grazer, { ...cohort, isAdult: cohort.length >= GRAZER.lengthAtPuberty });
          counts[cohort.share] = (counts[cohort.share] ?? 0) + cohort.count;
          carbon += cohort.count * structureOf(grazer, cohort.length);
        }
        const kept: Record<string, number> = {};
        for (let i = 0; i < train.size; i += 1) {
          kept[train.share[i]!] = (kept[train.share[i]!] ?? 0) + train.count[i]!;
          if (i > 0) expect(train.age[i]!).toBeLessThanOrEqual(train.age[i - 1]!);
        }
        expect(train.size).toBeLessThanOrEqual(COHORT_LIMIT);
        expect(kept).toEqual(counts);
        expect(trainCarbon(train, grazer) / carbon).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('crowded young', () => {
  it('that find just too little to grow up wait for ever where all are alike, and some get ahead where they are not', () => {
    // At 0.4 of ample food grazers stop at 0.4 x 7 = 2.8 mm, short of the 3 mm at which they breed.
    const on = (variation: number) =>
      lifeOnRation({ id: 'grazer', traits: CARRIED, values: { ...GRAZER, variation } }, 20, 0.4);
    expect(on(0).young).toBe(0);
    expect(on(0).adultDays).toBe(0);
    const unlike = on(SPREAD);
    expect(unlike.young).toBeGreaterThan(0);
    expect(unlike.adultDays / (unlike.adultDays + unlike.youngDays)).toBeLessThan(1 / 6);
  });
});

describe('a population of unlike animals', () => {
  const traits = { variation: SPREAD };

  it.each(['expected', 'drawn'] as const)('closes carbon, nitrogen and phosphorus (%s)', (mode) => {
    const demography = mode === 'expected' ? mode : createRandom(3, 'unlike');
    const tank = tankOf({ founders: 200, demography, traits });
    expect(closureOver(tank, 200)).toBeLessThanOrEqual(1e-12);
    expect(freeLiving(tank)).toBeGreaterThan(0);
  });

  it('dies out without food', () => {
    const tank = tankOf({ traits: { ...DEATHLESS, ...traits, preferenceForDetritus: 0 } });
    passDays(tank, 40, 10);
    passDays(tank, 150, 0);
    expect(freeLiving(tank)).toBe(0);
  });

  it('doubles when area, water, food and founders double', () => {
    expect(timesTwice(traits)).toBeCloseTo(2, 6);
  });
});
