import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialLogProbability, poissonLogProbability } from './discrete-densities.ts';
import { createRandom } from './random.ts';
import { nextBits } from './xoshiro.ts';

const DRAWS = 100_000;

function moments(draw: () => number): { mean: number; variance: number; skew: number; kurtosis: number } {
  const values = Float64Array.from({ length: DRAWS }, draw);
  const mean = values.reduce((sum, x) => sum + x, 0) / DRAWS;
  const central = (power: number) => values.reduce((sum, x) => sum + (x - mean) ** power, 0) / DRAWS;
  const variance = central(2);
  return { mean, variance, skew: central(3) / variance ** 1.5, kurtosis: central(4) / variance ** 2 };
}

/** Chi-square of counts against probabilities, as standard deviations from its own mean; cells below 10 are pooled. */
function chiSquareScore(draw: () => number, probability: (k: number) => number, cells: number): number {
  const counts = new Float64Array(cells + 1);
  for (let i = 0; i < DRAWS; i += 1) counts[Math.min(draw(), cells)]! += 1;
  let sum = 0;
  let freedom = -1;
  let pooledCount = 0;
  let pooledExpected = DRAWS;
  for (let k = 0; k < cells; k += 1) {
    const expected = probability(k) * DRAWS;
    if (expected < 10) {
      pooledCount += counts[k]!;
      continue;
    }
    pooledExpected -= expected;
    sum += (counts[k]! - expected) ** 2 / expected;
    freedom += 1;
  }
  pooledCount += counts[cells]!;
  if (pooledExpected >= 5) {
    sum += (pooledCount - pooledExpected) ** 2 / pooledExpected;
    freedom += 1;
  }
  return (sum - freedom) / Math.sqrt(2 * freedom);
}

describe('the generator', () => {
  it('gives the words of the reference implementation', () => {
    // xoshiro128starstar.c version 1.1, state 1, 2, 3, 4; as quoted in the tests of rand_xoshiro.
    const state = Int32Array.of(1, 2, 3, 4);
    const words = Array.from({ length: 10 }, () => nextBits(state) >>> 0);
    expect(words).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });

  it('repeats itself for the same seed and stream, and for no other', () => {
    const first = (seed: number, stream: string) => createRandom(seed, stream).uniform();
    expect(first(7, 'rain')).toBe(first(7, 'rain'));
    const all = [1, 2, 3, 0.5, -1].flatMap((seed) =>
      ['', 'a', 'b', 'ab', 'ba'].map((name) => first(seed, name)),
    );
    expect(new Set(all).size).toBe(all.length);
  });

  it('splits by name alone, whatever was drawn before', () => {
    const parent = createRandom(1, 'member');
    const before = parent.split('room').uniform();
    parent.normal();
    expect(parent.split('room').uniform()).toBe(before);
    expect(parent.split('demography').uniform()).not.toBe(before);
  });

  it('gives streams of consecutive names that do not resemble each other', () => {
    const streams = Array.from({ length: 400 }, (_, i) => createRandom(1, `member ${i}`));
    const first = streams.map((stream) => stream.uniform());
    const mean = first.reduce((sum, u) => sum + u, 0) / first.length;
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / 400));
    const lag = first.slice(1).reduce((sum, u, i) => sum + (u - 0.5) * (first[i]! - 0.5), 0) / 399;
    expect(Math.abs(lag)).toBeLessThan(4 / 12 / Math.sqrt(399));
  });

  it('is even in 1024 cells and in pairs', () => {
    const random = createRandom(11, 'uniform');
    expect(
      Math.abs(
        chiSquareScore(
          () => Math.floor(random.uniform() * 1024),
          () => 1 / 1024,
          1024,
        ),
      ),
    ).toBeLessThan(4);
    const pair = () => Math.floor(random.uniform() * 32) * 32 + Math.floor(random.uniform() * 32);
    expect(Math.abs(chiSquareScore(pair, () => 1 / 1024, 1024))).toBeLessThan(4);
  });
});

describe('continuous draws have the moments of their distribution', () => {
  // Four standard errors of each sample moment, from the distribution's own higher moments.
  it('normal', () => {
    const random = createRandom(3, 'normal');
    const { mean, variance, skew, kurtosis } = moments(() => random.normal());
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(DRAWS));
    expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / DRAWS));
    expect(Math.abs(skew)).toBeLessThan(4 * Math.sqrt(6 / DRAWS));
    expect(Math.abs(kurtosis - 3)).toBeLessThan(4 * Math.sqrt(24 / DRAWS));
  });

  it('normal, in cells of equal chance and in the tail', () => {
    // Quantiles of the standard normal: 10 % cells, and 0.000 1 beyond 3.719016 (Abramowitz & Stegun table 26.6, memory).
    const edges = [
      -1.2815516, -0.8416212, -0.5244005, -0.2533471, 0, 0.2533471, 0.5244005, 0.8416212, 1.2815516,
    ];
    const random = createRandom(5, 'normal');
    const cell = () => {
      const x = random.normal();
      return edges.filter((edge) => x > edge).length;
    };
    expect(Math.abs(chiSquareScore(cell, () => 0.1, 10))).toBeLessThan(4);
    let beyond = 0;
    for (let i = 0; i < 1_000_000; i += 1) if (random.normal() > 3.719016) beyond += 1;
    expect(Math.abs(beyond - 100)).toBeLessThan(40);
  });

  it.each([0.05, 0.5, 1, 2.5, 40, 1e6])('gamma of shape %d', (shape) => {
    const random = createRandom(4, `gamma ${shape}`);
    const { mean, variance } = moments(() => random.gamma(shape));
    expect(Math.abs(mean - shape)).toBeLessThan(4 * Math.sqrt(shape / DRAWS));
    const varianceError = Math.sqrt((2 + 6 / shape) / DRAWS) * shape;
    expect(Math.abs(variance - shape)).toBeLessThan(4 * varianceError);
  });

  it('exponential', () => {
    const random = createRandom(4, 'exponential');
    const { mean, variance } = moments(() => random.exponential());
    expect(Math.abs(mean - 1)).toBeLessThan(4 / Math.sqrt(DRAWS));
    expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(8 / DRAWS));
  });
});

describe('counts follow their distribution', () => {
  it.each([0.01, 0.7, 3, 9.99, 10, 37, 400])('Poisson of mean %d', (mean) => {
    const random = createRandom(8, `poisson ${mean}`);
    const probability = (k: number) => Math.exp(poissonLogProbability(k, mean));
    expect(Math.abs(chiSquareScore(() => random.poisson(mean), probability, 600))).toBeLessThan(4);
  });

  it.each([
    [1, 0.3],
    [7, 0.5],
    [30, 0.9],
    [1000, 0.002],
    [60, 0.25],
    [400, 0.4],
    [900, 0.95],
  ])('binomial of %d trials of chance %d', (trials, chance) => {
    const random = createRandom(9, `binomial ${trials} ${chance}`);
    const probability = (k: number) => Math.exp(binomialLogProbability(k, trials, chance));
    expect(
      Math.abs(chiSquareScore(() => random.binomial(trials, chance), probability, trials + 1)),
    ).toBeLessThan(4);
  });

  it('huge counts have the right mean and variance', () => {
    const random = createRandom(10, 'huge');
    const poisson = moments(() => (random.poisson(1e12) - 1e12) / 1e6);
    const binomial = moments(() => (random.binomial(4e12, 0.5) - 2e12) / 1e6);
    for (const { mean, variance } of [poisson, binomial]) {
      expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(DRAWS));
      expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / DRAWS));
    }
  });

  it('stays within the trials at any chance', () => {
    const random = createRandom(2, 'bounds');
    fc.assert(
      fc.property(fc.nat(1e6), fc.double({ min: 0, max: 1, noNaN: true }), (trials, chance) => {
        const drawn = random.binomial(trials, chance);
        expect(drawn >= 0 && drawn <= trials && Number.isInteger(drawn)).toBe(true);
      }),
    );
  });

  it('knows the certain and refuses the senseless', () => {
    const random = createRandom(2, 'edges');
    expect([
      random.binomial(0, 0.4),
      random.binomial(9, 0),
      random.binomial(9, 1),
      random.poisson(0),
    ]).toEqual([0, 0, 9, 0]);
    expect(random.gamma(0)).toBe(0);
    expect(random.poisson(1e-300)).toBe(0);
    expect(random.binomial(5, 1e-300)).toBe(0);
    expect(() => random.binomial(2.5, 0.1)).toThrow(RangeError);
    expect(() => random.binomial(-1, 0.1)).toThrow(RangeError);
    expect(() => random.binomial(2, 1.1)).toThrow(RangeError);
    expect(() => random.poisson(-1)).toThrow(RangeError);
    expect(() => random.gamma(Number.NaN)).toThrow(RangeError);
    expect(() => createRandom(Number.NaN, '')).toThrow(RangeError);
  });
});

describe('probabilities of counts', () => {
  it('match direct products', () => {
    // Poisson 3 at 2 = e^-3 9/2; binomial 5 of 10 at 1/2 = 252/1024; 20!: Poisson 20 at 20 = e^-20 20^20 / 20!.
    expect(poissonLogProbability(20, 20)).toBeCloseTo(
      20 * Math.log(20) - 20 - Math.log(2432902008176640000),
      12,
    );
    expect(poissonLogProbability(2, 3)).toBeCloseTo(Math.log(4.5) - 3, 14);
    expect(binomialLogProbability(5, 10, 0.5)).toBeCloseTo(Math.log(252 / 1024), 14);
  });

  it('sum to one', () => {
    for (const p of [0.001, 0.3, 0.99]) {
      const sum = Array.from({ length: 201 }, (_, k) => Math.exp(binomialLogProbability(k, 200, p)));
      expect(sum.reduce((a, b) => a + b)).toBeCloseTo(1, 12);
    }
    const sum = Array.from({ length: 400 }, (_, k) => Math.exp(poissonLogProbability(k, 120)));
    expect(sum.reduce((a, b) => a + b)).toBeCloseTo(1, 12);
  });
});
