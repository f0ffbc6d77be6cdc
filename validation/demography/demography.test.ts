import { describe, expect, it } from 'vitest';
import { arrheniusFactor } from '../../packages/engine/src/life/arrhenius.ts';
import { developBroods } from '../../packages/engine/src/life/breeding.ts';
import { addBrood } from '../../packages/engine/src/life/brood-train.ts';
import { EXPECTED } from '../../packages/engine/src/life/demography.ts';
import { satiation } from '../../packages/engine/src/life/foraging.ts';
import { GRAZER } from '../../packages/engine/src/life/life-test-kit.ts';
import {
  clearDay,
  createLivingPopulation,
  type LivingPopulation,
} from '../../packages/engine/src/life/living-population.ts';
import type { TraitValues } from '../../packages/engine/src/life/traits.ts';

const WALLEYE: readonly (readonly [number, number])[] = [
  [24.4, 7.41],
  [19.5, 11.85],
  [83.0, 13.91],
  [58.6, 16.38],
  [312.6, 17.28],
  [195.4, 19.34],
  [161.2, 22.8],
  [332.2, 22.39],
  [298.0, 25.35],
  [356.6, 24.44],
  [468.9, 25.27],
  [776.7, 24.28],
  [268.7, 29.3],
  [586.2, 30.12],
  [664.3, 31.28],
  [2085.8, 38.19],
  [2246.9, 32.59],
  [2691.5, 37.12],
  [2798.9, 33.99],
  [3492.5, 31.03],
];

/** Eggs that lie `days` and are lost at `loss` a day. */
function nest(days: number, loss: number): LivingPopulation {
  const traits: TraitValues = { ...GRAZER, broodTime: days, broodLoss: loss };
  return createLivingPopulation({ id: 'eggs', traits: { mating: 'self-fertile', brood: 'laid' } }, traits);
}

function passDay(population: LivingPopulation): number {
  clearDay(population.day);
  developBroods(population, { temperature: 20, rate: 1, outside: 0, adultsLost: 0 }, EXPECTED);
  return population.day.born;
}

describe('demography on the population code', () => {
  it('functional response of walleye: the published least squares', () => {
    const squares = WALLEYE.reduce(
      (sum, [density, eaten]) => sum + (34.04626637 * satiation(density, 105.7334926) - eaten) ** 2,
      0,
    );
    expect(squares).toBeCloseTo(282.9834361, 5);
  });

  it('no other half saturation or largest intake fits better', () => {
    const squares = (most: number, half: number): number =>
      WALLEYE.reduce((sum, [density, eaten]) => sum + (most * satiation(density, half) - eaten) ** 2, 0);
    const best = squares(34.04626637, 105.7334926);
    for (const [most, half] of [
      [33.5, 105.7],
      [34.6, 105.7],
      [34.05, 100],
      [34.05, 112],
    ] as const)
      expect(squares(most, half)).toBeGreaterThan(best);
  });

  it('rates by temperature follow Arrhenius', () => {
    const rates = [15, 25, 30].map((temperature) => 0.05 * arrheniusFactor(temperature, 20, 0.65));
    for (const [i, expected] of [0.03199382985, 0.07697863635, 0.1168392223].entries())
      expect(rates[i]! / expected).toBeCloseTo(1, 7);
  });

  it('a stage of fixed length lets exp(-mortality x duration) through', () => {
    const population = nest(10, 0.03);
    addBrood(population.broods, 1000, 0);
    let born = 0;
    for (let day = 0; day < 15; day += 1) born += passDay(population);
    expect(Math.abs(born / 1000 / 0.7408182207 - 1)).toBeLessThan(0.02);
  });

  it('births after a delay settle at the growth rate of the delay equation', () => {
    const population = nest(20, 0.04);
    let adults = 1;
    let before = 0;
    const course: number[] = [];
    for (let day = 0; day < 260; day += 1) {
      const born = passDay(population);
      population.train.size = 0;
      addBrood(population.broods, 1.2 * adults, 0);
      adults = adults * Math.exp(-0.06) + born;
      if (day === 160) before = adults;
      course.push(adults);
    }
    const rate = Math.log(course[259]! / before) / 99;
    // Twenty days of eggs share ten places, so neighbours are merged and released a day early or late; early ones count more.
    expect(Math.abs(rate / 0.07081473682 - 1)).toBeLessThan(0.04);
  });
});
