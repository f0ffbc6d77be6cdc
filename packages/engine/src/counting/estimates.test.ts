import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../numerics/random.ts';
import type { Count } from './count.ts';
import { diffusionGrowth } from './diffusion-growth.ts';
import { chanceOfEverFalling, chanceOfFalling, fallingRisk } from './falling-below.ts';
import { logLinearTrend } from './log-linear-trend.ts';
import { logisticGrowth } from './logistic-growth.ts';

const series = fc
  .array(fc.record({ gap: fc.integer({ min: 1, max: 40 }), number: fc.integer({ min: 1, max: 500 }) }), {
    minLength: 4,
    maxLength: 30,
  })
  .map((steps) => {
    let day = 0;
    return steps.map(({ gap, number }): Count => {
      day += gap;
      return { day, number };
    });
  });
const scaled = (counts: readonly Count[], times: number): Count[] =>
  counts.map(({ day, number }) => ({ day, number: number * times }));
const slower = (counts: readonly Count[], times: number): Count[] =>
  counts.map(({ day, number }) => ({ day: day * times, number }));

/** A population that walks: ln N grows by `rate` and scatters by `variance` a day. */
function walk(
  stream: string,
  { rate, variance, counts }: Record<'rate' | 'variance' | 'counts', number>,
): Count[] {
  const random = createRandom(7, stream);
  let level = Math.log(50);
  let day = 0;
  return Array.from({ length: counts }, (_, i) => {
    const gap = i === 0 ? 0 : 1 + random.poisson(5);
    level += rate * gap + Math.sqrt(variance * gap) * random.normal();
    day += gap;
    return { day, number: Math.exp(level) };
  });
}

describe('growth from counts', () => {
  it('does not change with the unit of counting, and keeps to that of time', () => {
    fc.assert(
      fc.property(series, fc.double({ min: 0.01, max: 100, noNaN: true }), (counts, times) => {
        const growth = diffusionGrowth(counts)!;
        const more = diffusionGrowth(scaled(counts, times))!;
        const slow = diffusionGrowth(slower(counts, times))!;
        expect(more.rate).toBeCloseTo(growth.rate, 10);
        expect(more.variance!.value).toBeCloseTo(growth.variance!.value, 9);
        expect(slow.rate * times).toBeCloseTo(growth.rate, 10);
        expect(slow.variance!.high * times).toBeCloseTo(growth.variance!.high, 7);
        const [trend, moreTrend] = [logLinearTrend(counts)!, logLinearTrend(scaled(counts, times))!];
        expect(moreTrend.rate.value).toBeCloseTo(trend.rate.value, 10);
        expect(moreTrend.at(20).high / times / trend.at(20).high).toBeCloseTo(1, 8);
      }),
    );
  });
  it('holds the true rate and scatter in 95 of 100 intervals', () => {
    const truth = { rate: 0.02, variance: 0.01, counts: 12 };
    const times = 1000;
    let [rates, scatters] = [0, 0];
    for (let i = 0; i < times; i += 1) {
      const { rateRange, variance } = diffusionGrowth(walk(`walk ${i}`, truth))!;
      if (rateRange![0] <= truth.rate && truth.rate <= rateRange![1]) rates += 1;
      if (variance!.low <= truth.variance && truth.variance <= variance!.high) scatters += 1;
    }
    // Four standard errors of 1000 draws at 0.95.
    expect(Math.abs(rates / times - 0.95)).toBeLessThan(0.028);
    expect(Math.abs(scatters / times - 0.95)).toBeLessThan(0.028);
  });
  // Anscombe FJ (1973) Am. Stat. 27:17-21, first set: slope 0.500 with a standard error of 0.118; t(9) at 0.975 is 2.262.
  it('lays the line of Anscombe through ln N', () => {
    const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
    const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
    const counts = x.map((day, i) => ({ day, number: Math.exp(y[i]!) })).sort((a, b) => a.day - b.day);
    const { rate } = logLinearTrend(counts)!;
    expect(rate.value).toBeCloseTo(0.5, 3);
    expect((rate.high - rate.value) / 2.262).toBeCloseTo(0.118, 3);
  });
  it('follows the counts that are known better', () => {
    const counts = [
      { day: 0, number: 10, error: 1 },
      { day: 10, number: 20, error: 2 },
      { day: 20, number: 40, error: 4 },
      { day: 30, number: 10, error: 200 },
    ];
    expect(logLinearTrend(counts)!.rate.value).toBeCloseTo(Math.LN2 / 10, 3);
  });
  it('leaves out zeros, says less of fewer counts, and refuses what are none', () => {
    const counts = [
      { day: 0, number: 10 },
      { day: 3, number: 0 },
      { day: 10, number: 20 },
    ];
    expect(diffusionGrowth(counts)).toEqual({ stretches: 1, span: 10, rate: Math.log(2) / 10 });
    expect(diffusionGrowth(counts.slice(0, 2))).toBeUndefined();
    expect(logLinearTrend(counts)).toBeUndefined();
    expect(() => diffusionGrowth([...counts, { day: 4, number: 3 }])).toThrow('must rise');
    expect(() => diffusionGrowth([{ day: 0, number: Number.NaN }])).toThrow(RangeError);
    expect(() => diffusionGrowth([{ day: 0, number: -1 }])).toThrow(RangeError);
    expect(() => diffusionGrowth([{ day: 0, number: 1, error: 0 }])).toThrow(RangeError);
  });
});

describe('the chance of falling', () => {
  const chance = fc.record({
    rate: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
    variance: fc.double({ min: 1e-4, max: 0.5, noNaN: true }),
    from: fc.double({ min: 1, max: 1000, noNaN: true }),
    below: fc.double({ min: 1, max: 1000, noNaN: true }),
    days: fc.double({ min: 0, max: 3000, noNaN: true }),
  });
  it('rises with days, with the number and to that of ever', () => {
    fc.assert(
      fc.property(chance, ({ rate, variance, from, below, days }) => {
        const now = chanceOfFalling({ rate, variance }, { from, below }, days);
        expect(now).toBeGreaterThanOrEqual(0);
        expect(now).toBeLessThanOrEqual(1);
        expect(chanceOfFalling({ rate, variance }, { from, below }, days * 1.5)).toBeGreaterThanOrEqual(
          now - 1e-12,
        );
        expect(
          chanceOfFalling({ rate, variance }, { from, below: below * 1.5 }, days),
        ).toBeGreaterThanOrEqual(now - 1e-12);
        expect(now).toBeLessThanOrEqual(chanceOfEverFalling({ rate, variance }, { from, below }) + 1e-9);
      }),
    );
  });
  it('is that of walks drawn step by step', () => {
    const random = createRandom(3, 'walks');
    const [rate, variance, days, step] = [-0.005, 0.01, 60, 0.1];
    const walks = 2000;
    let fallen = 0;
    for (let i = 0; i < walks; i += 1) {
      let level = Math.log(2);
      for (let t = 0; t < days && level > 0; t += step)
        level += rate * step + Math.sqrt(variance * step) * random.normal();
      if (level <= 0) fallen += 1;
    }
    const told = chanceOfFalling({ rate, variance }, { from: 2, below: 1 }, days);
    // Steps miss a fall between them: by 0.58 of a step's scatter the boundary lies lower (Broadie et al. 1997, recalled).
    const lower = Math.exp(-0.5826 * Math.sqrt(variance * step));
    const lessOften = chanceOfFalling({ rate, variance }, { from: 2, below: lower }, days);
    expect(lessOften).toBeLessThan(told);
    expect(Math.abs(fallen / walks - lessOften)).toBeLessThan(4 * Math.sqrt(0.25 / walks));
  });
  it('lies within its interval, which narrows with more counts', () => {
    const truth = { rate: 0.002, variance: 0.01, counts: 8 };
    const few = fallingRisk(diffusionGrowth(walk('one', truth))!, { from: 50, below: 20 }, 60)!;
    const many = fallingRisk(
      diffusionGrowth(walk('one', { ...truth, counts: 300 }))!,
      { from: 50, below: 20 },
      60,
    )!;
    for (const { chance: each } of [few, many]) {
      expect(each.value).toBeGreaterThanOrEqual(each.low);
      expect(each.value).toBeLessThanOrEqual(each.high);
    }
    expect(many.chance.high - many.chance.low).toBeLessThan(few.chance.high - few.chance.low);
  });
  it('is certain where numbers are that low already, and told of no scatter', () => {
    expect(chanceOfFalling({ rate: 1, variance: 1 }, { from: 5, below: 5 }, 0)).toBe(1);
    expect(chanceOfFalling({ rate: -0.1, variance: 0 }, { from: 10, below: 5 }, 5)).toBe(0);
    expect(chanceOfFalling({ rate: -0.1, variance: 0 }, { from: 10, below: 5 }, 7)).toBe(1);
    expect(chanceOfFalling({ rate: 0.1, variance: 1e-300 }, { from: 10, below: 5 }, 7)).toBe(0);
    expect(() => chanceOfFalling({ rate: 0, variance: 1 }, { from: 0, below: 5 }, 7)).toThrow(RangeError);
  });
});

describe('a limit from counts', () => {
  const logistic = (K: number, r: number, N0: number) => (day: number) =>
    K / (1 + (K / N0 - 1) * Math.exp(-r * day));
  it('is found again, whatever the unit of counting', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 1e4, noNaN: true }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        (K, r, part) => {
          const of = logistic(K, r, part * K);
          const days = Array.from({ length: 16 }, (_, i) => (i * 12) / r / 15);
          const fit = logisticGrowth(days.map((day) => ({ day: day + 400, number: of(day) })))!;
          expect(fit.limit.value / K).toBeCloseTo(1, 6);
          expect(fit.rate.value / r).toBeCloseTo(1, 6);
          expect(fit.start.value / (part * K)).toBeCloseTo(1, 6);
        },
      ),
      { numRuns: 40 },
    );
  });
  it('holds the true limit in about 95 of 100 intervals', () => {
    const of = logistic(100, 0.1, 5);
    const times = 200;
    let held = 0;
    for (let i = 0; i < times; i += 1) {
      const random = createRandom(i, 'limit');
      const counts = Array.from({ length: 16 }, (_, k) => ({
        day: 6 * k,
        number: Math.max(0, of(6 * k) + 5 * random.normal()),
      }));
      const { limit } = logisticGrowth(counts)!;
      if (limit.low <= 100 && 100 <= limit.high) held += 1;
    }
    // Four standard errors of 200 draws, and two in a hundred for the straight slopes of a bent curve.
    expect(Math.abs(held / times - 0.95)).toBeLessThan(0.082);
  });
  it('is not seen where there is none', () => {
    const counts = Array.from({ length: 12 }, (_, i) => ({ day: 7 * i, number: 5 * Math.exp(0.04 * 7 * i) }));
    expect(logisticGrowth(counts)?.gain ?? -1).toBeLessThan(0);
    expect(logisticGrowth(counts.slice(0, 5))).toBeUndefined();
  });
});
