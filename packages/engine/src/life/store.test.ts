import { describe, expect, it } from 'vitest';
import { addCohort } from './cohort-train.ts';
import { EXPECTED } from './demography.ts';
import { bodyRate, structureOf } from './energetics.ts';
import { setWanted } from './feeding.ts';
import { FOOD_COUNT, nothingEaten } from './foods.ts';
import { GOOD_WATER, GRAZER } from './life-test-kit.ts';
import { liveDay } from './live-day.ts';
import { clearDay, createLivingPopulation, populationCarbon } from './living-population.ts';
import { conditionOf, extraIntake } from './store.ts';
import type { TraitId } from './traits.ts';

const KIND = { mating: 'self-fertile', brood: 'carried' } as const;

interface Reared {
  readonly length: number;
  readonly alive: number;
  readonly condition: number;
}

/** Newborns fed algae without end on one day in `every`, nothing from day `until` on; checks that carbon closes. */
function reared(
  changes: Partial<Record<TraitId, number>>,
  { days, every = 1, until = days }: { days: number; every?: number; until?: number },
): Reared {
  const traits = { ...GRAZER, ...changes };
  const population = createLivingPopulation({ id: 'grazer', traits: KIND }, traits);
  const { energetics, train } = population;
  const store = energetics.store * structureOf(energetics, energetics.birth);
  addCohort(train, energetics, { count: 100, length: energetics.birth, age: 0, isAdult: false, store });
  const meal = nothingEaten();
  const amounts = new Float64Array(FOOD_COUNT);
  amounts[0] = 1e9;
  for (let day = 0; day < days; day += 1) {
    setWanted(population, { amounts, area: 1 }, bodyRate(traits, 20));
    const carbon = day % every === 0 && day < until ? population.wanted[0]! : 0;
    meal.carbon[0] = carbon;
    meal.nitrogen[0] = carbon * 0.15;
    meal.phosphorus[0] = carbon * 0.01;
    clearDay(population.day);
    const before = populationCarbon(population);
    liveDay(population, meal, { water: GOOD_WATER, volume: 1e6 }, EXPECTED);
    const { assimilatedCarbon, respiredCarbon, deadCarbon } = population.day;
    const change = populationCarbon(population) - before;
    expect(Math.abs(assimilatedCarbon - respiredCarbon - deadCarbon - change)).toBeLessThan(1e-12 * before);
  }
  let alive = 0;
  for (let i = 0; i < train.size; i += 1) alive += train.count[i]!;
  return { length: train.peak[0]!, alive, condition: conditionOf(population, 0) };
}

describe('the store', () => {
  it('leaves growth with food every day as it is without one', () => {
    const without = reared({ store: 0 }, { days: 80 });
    const withStore = reared({ store: 0.3 }, { days: 80 });
    expect(withStore.length / without.length).toBeCloseTo(1, 6);
    expect(withStore.condition).toBeCloseTo(1, 6);
  });

  it('lets animals grow on a meal every other day, the better the larger it is', () => {
    const [none, some, much] = [0, 0.3, 1].map(
      (store) => reared({ store }, { days: 80, every: 2 }).length,
    ) as [number, number, number];
    const daily = reared({ store: 0.3 }, { days: 80 }).length;
    expect(some).toBeGreaterThan(none + 0.03);
    expect(much).toBeGreaterThan(some);
    expect(much).toBeLessThanOrEqual(daily * (1 + 1e-9));
  });

  it('holds more after a meal that follows hunger, where told, and no more in the always fed', () => {
    const seldom = { days: 80, every: 3 };
    expect(reared({ gorge: 0.4 }, seldom).length).toBeGreaterThan(reared({}, seldom).length + 0.05);
    expect(reared({ gorge: 0.4 }, { days: 80 }).length).toBeCloseTo(reared({}, { days: 80 }).length, 12);
  });

  it('is used up before the body', () => {
    const fed = reared({}, { days: 20 });
    const short = reared({}, { days: 22, until: 20 });
    const long = reared({}, { days: 30, until: 20 });
    expect(short.length).toBeGreaterThanOrEqual(fed.length);
    expect(short.condition).toBeLessThan(0.98);
    expect(short.condition).toBeGreaterThan(1 / 1.3);
    expect(long.condition).toBeLessThan(1 / 1.3);
  });

  it('is filled at meals that sate, hardly where food is scarce', () => {
    const diet = { filters: false };
    const hungry = { appetite: 0, greed: 2, diet, fullness: 0.2, slowing: { kept: 1 } } as Parameters<
      typeof extraIntake
    >[0];
    expect(extraIntake(hungry, 1)).toBe(2);
    expect(extraIntake(hungry, 0.5)).toBeLessThan(0.01);
  });

  it('does not matter to filterers on scarce food, who filter more, up to what they can pass on', () => {
    const used = (fullness: number) =>
      ({
        appetite: 0,
        greed: 0,
        diet: { filters: true },
        fullness,
        slowing: { kept: 1 },
      }) as Parameters<typeof extraIntake>[0];
    expect(extraIntake(used(1), 0.25)).toBe(0);
    expect(extraIntake(used(0.5), 0.25)).toBe(1.5);
    expect(extraIntake(used(0.5), 0.8)).toBeCloseTo(0.25, 12);
    expect(extraIntake(used(0), 0)).toBe(0);
  });
});
