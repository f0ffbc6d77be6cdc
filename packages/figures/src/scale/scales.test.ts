import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ribbonScale } from '../ribbon/ribbon-scale.ts';
import { ALDER_YEAR } from '../testdata/alder-year.ts';
import { countScale, linearScale } from './linear-scale.ts';
import { countTicks, roundTicks, stepDigits } from './ticks.ts';
import { valueAxis } from './value-axis.ts';

const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('scales', () => {
  it('come back from the pixel to the value', () => {
    fc.assert(
      fc.property(finite(-100, 100), finite(0.01, 1000), finite(0, 1), (low, extent, share) => {
        const scale = linearScale([low, low + extent], [300, 20]);
        const value = low + extent * share;
        expect(scale.toValue(scale.toPixel(value))).toBeCloseTo(value, 6);
      }),
    );
  });

  it('for counts come back too, keep order and place zero on the floor', () => {
    const scale = countScale([0, 5000], [200, 10]);
    expect(scale.toPixel(0)).toBe(200);
    expect(scale.toPixel(5000)).toBe(10);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4999 }), (count) => {
        expect(scale.toValue(scale.toPixel(count))).toBeCloseTo(count, 4);
        expect(scale.toPixel(count + 1)).toBeLessThan(scale.toPixel(count));
      }),
    );
  });

  it('of the ribbon give every day back and hold pixels outside within the run', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 320, max: 2000 }), (days, width) => {
        const scale = ribbonScale({ days, width });
        for (const day of [0, Math.floor(days / 3), days]) expect(scale.toDay(scale.toX(day))).toBe(day);
        expect(scale.toDay(-50)).toBe(0);
        expect(scale.toDay(width + 50)).toBe(days);
      }),
    );
  });
});

describe('ticks', () => {
  it('are round, inside the domain and evenly apart', () => {
    expect(roundTicks([0, 10], 5)).toEqual([0, 2, 4, 6, 8, 10]);
    expect(roundTicks([2.9, 5.6], 3)).toEqual([3, 4, 5]);
    expect(roundTicks([6.6, 7.6], 5)).toEqual([6.6, 6.8, 7, 7.2, 7.4, 7.6]);
    expect(stepDigits(0.2)).toBe(1);
    expect(countTicks([0, 400])).toEqual([0, 1, 3, 10, 30, 100, 300]);
  });

  it('of a value axis keep their distance, show the near edge of the band and leave out the far one', () => {
    const series = ALDER_YEAR.series.KH;
    if (!series) throw new Error('the invented year has carbonate hardness');
    const axis = valueAxis({ id: 'KH', series, range: [100, 0], tickSpacing: 13 });
    const pixels = axis.ticks.map((tick) => axis.scale.toPixel(tick.value));
    for (let index = 1; index < pixels.length; index++)
      expect((pixels[index - 1] ?? 0) - (pixels[index] ?? 0)).toBeGreaterThanOrEqual(13);
    expect(axis.ticks.filter((tick) => tick.limit).map((tick) => tick.text)).toEqual(['≥ 3']);
    expect(axis.scale.domain[1]).toBeLessThan(10);
  });
});
