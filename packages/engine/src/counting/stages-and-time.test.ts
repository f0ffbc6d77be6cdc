import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepOf } from '../community/projection-matrix.ts';
import { delayedCourse } from '../numerics/delay-equation.ts';
import { degreeDays } from './degree-days.ts';
import { delayedGrowthOf, delayedNumbers, overshootOf, restOf } from './delayed-growth.ts';
import { growingStages, stageMatrixFromCounts } from './stage-matrix-from-counts.ts';

describe('moves between stages', () => {
  it('are found again from a population that keeps to them', () => {
    const part = fc.double({ min: 0.05, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(
        part,
        part,
        part,
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (alive, ripe, live, young) => {
          const truth = [
            [alive * (1 - ripe), young],
            [alive * ripe, live],
          ];
          let now = [40, 3];
          const course = [now];
          for (let i = 0; i < 8; i += 1) {
            now = stepOf(truth, now);
            course.push(now);
          }
          const counts = [0, 1].map((stage) => course.map((each) => each[stage]!));
          const { matrix, sumOfSquares } = stageMatrixFromCounts({ counts, ...growingStages(2) });
          const scale = Math.max(...counts.flat());
          expect(sumOfSquares).toBeLessThan(1e-9 * scale * scale);
          matrix.flat().forEach((element, i) => {
            expect(element).toBeCloseTo(truth.flat()[i]!, 3);
          });
        },
      ),
    );
  });
  it('keep to what can be: nothing below 0, no more than all of a stage', () => {
    const numbers = fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(numbers, numbers, numbers, (a, b, c) => {
        const { free, parts } = growingStages(3);
        const { matrix } = stageMatrixFromCounts({ counts: [a, b, c], free, parts });
        expect(Math.min(...matrix.flat())).toBeGreaterThanOrEqual(0);
        for (const group of parts)
          expect(group.reduce((sum, { to, from }) => sum + matrix[to]![from]!, 0)).toBeLessThanOrEqual(
            1 + 1e-6,
          );
      }),
    );
  });
  it('refuses lists that do not fit', () => {
    const stages = growingStages(2);
    expect(() => stageMatrixFromCounts({ counts: [[1, 2], [1]], ...stages })).toThrow('as many');
    expect(() =>
      stageMatrixFromCounts({
        counts: [
          [1, -2],
          [1, 2],
        ],
        ...stages,
      }),
    ).toThrow('0 or more');
    expect(() => stageMatrixFromCounts({ counts: [[1, 2]], ...stages })).toThrow('no stage');
  });
});

describe('degree-days', () => {
  it('are those of the sine summed minute by minute', () => {
    const temperature = fc.double({ min: -5, max: 35, noNaN: true });
    fc.assert(
      fc.property(
        temperature,
        fc.double({ min: 0, max: 20, noNaN: true }),
        temperature,
        (low, range, threshold) => {
          let sum = 0;
          for (let i = 0; i < 1440; i += 1) {
            const now = low + range / 2 + (range / 2) * Math.sin((2 * Math.PI * (i + 0.5)) / 1440);
            sum += Math.max(0, now - threshold) / 1440;
          }
          expect(degreeDays({ coldest: low, warmest: low + range, threshold })).toBeCloseTo(sum, 3);
        },
      ),
    );
  });
  it('refuses a coldest above the warmest', () => {
    expect(() => degreeDays({ coldest: 20, warmest: 10, threshold: 5 })).toThrow(RangeError);
    expect(() => degreeDays({ coldest: 2, warmest: Number.NaN, threshold: 5 })).toThrow(RangeError);
  });
});

describe('a delay', () => {
  // x' = -a x(t - 1) from 1: 1 - a t, then 1 - a t + a^2 (t - 1)^2/2, by integration.
  it('is carried as integration by hand carries it', () => {
    const equation = { rate: (_: number, before: number) => -0.7 * before, delay: 1, history: 1, steps: 50 };
    const [half, two] = delayedCourse(equation, [0.55, 1.83]);
    expect(half).toBeCloseTo(1 - 0.7 * 0.55, 12);
    expect(two).toBeCloseTo(1 - 0.7 * 1.83 + (0.49 * 0.83 * 0.83) / 2, 12);
  });
  it('loses its error with the fourth power of the steps', () => {
    const rate = (now: number, before: number): number => 2 * before * Math.exp(-before) - 0.4 * now;
    const at = (steps: number): number => delayedCourse({ rate, delay: 3, history: 0.2, steps }, [20])[0]!;
    const exact = at(2000);
    expect(Math.abs(at(40) - exact) / Math.abs(at(80) - exact)).toBeGreaterThan(12);
  });
  it('refuses times that do not rise and delays of nothing', () => {
    const rate = (): number => 0;
    expect(() => delayedCourse({ rate, delay: 0, history: 1, steps: 10 }, [1])).toThrow(RangeError);
    expect(() => delayedCourse({ rate, delay: 1, history: 1, steps: 10 }, [2, 1])).toThrow('rise');
  });
  it('lets few animals grow at the rate asked for, and rests at the limit', () => {
    const known = { rate: 0.03, limit: 80, loss: 0.01, maturity: 40 };
    const growth = delayedGrowthOf(known);
    expect(restOf(growth)).toBeCloseTo(80, 10);
    const [early, later] = delayedNumbers(growth, 1e-12, [400, 500]);
    expect(Math.log(later! / early!) / 100).toBeCloseTo(0.03, 5);
    expect(() => delayedGrowthOf({ ...known, rate: 0 })).toThrow(RangeError);
  });
  it('overshoots more, and at last swings on, the later young breed', () => {
    const [soon, later, late] = [2, 40, 200].map((maturity) =>
      overshootOf({ rate: 0.05, limit: 100, loss: 0.03, maturity }),
    );
    expect(soon!.most).toBeLessThan(105);
    expect(later!.most).toBeGreaterThan(soon!.most);
    expect(late!.most).toBeGreaterThan(later!.most);
    expect([soon!.swings, late!.swings]).toEqual([false, true]);
  });
});
