import { describe, expect, it } from 'vitest';
import { VARIABLE_INDEX as V, VARIABLE_IDS } from '../variables/variables.ts';
import { createWoodMould, highestIndex, mouldCover, SEEN_BY_EYE, type WoodAir } from './wood-mould.ts';

const SAPWOOD = { mouldTime: 1, fungiRate: 0.04, theta: 1.07 };

/** Days until the index is reached, up to a year. */
function daysTo(index: number, air: WoodAir): number {
  const values = new Float64Array(VARIABLE_IDS.length);
  values[V.landWoodCarbon] = 1;
  const mould = createWoodMould(SAPWOOD, 1);
  for (let day = 1; day <= 365; day += 1) {
    mould.pass(values, air);
    if (mould.index >= index) return day;
  }
  return Number.POSITIVE_INFINITY;
}

describe('mould on bare wood', () => {
  it('germinates on sapwood within 7 to 24 days and is seen within 19 to 31 at 23 °C in moist air', () => {
    // 'Mold growth on pine and spruce wood': germination 7 to 24 d, seen by the eye after 19 to 31 d, 75 to 95 % RH, 23 °C
    const air = { temperature: 23, humidity: 95 };
    expect(daysTo(1, air)).toBeGreaterThanOrEqual(7);
    expect(daysTo(1, air)).toBeLessThanOrEqual(24);
    expect(daysTo(SEEN_BY_EYE, air)).toBeGreaterThanOrEqual(19);
    expect(daysTo(SEEN_BY_EYE, air)).toBeLessThanOrEqual(31);
  });

  it('does not come at 75 % humidity', () => {
    expect(daysTo(0.01, { temperature: 23, humidity: 75 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('comes later in cooler and in drier air, and not at all in frost', () => {
    const warm = daysTo(SEEN_BY_EYE, { temperature: 23, humidity: 97 });
    expect(daysTo(SEEN_BY_EYE, { temperature: 15, humidity: 97 })).toBeGreaterThan(warm);
    expect(daysTo(SEEN_BY_EYE, { temperature: 23, humidity: 92 })).toBeGreaterThan(warm);
    expect(daysTo(0.01, { temperature: -2, humidity: 97 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('covers all the wood at most', () => {
    expect(highestIndex({ temperature: 23, humidity: 100 })).toBeCloseTo(6, 12);
    expect(mouldCover(6)).toBe(1);
    expect(mouldCover(2)).toBe(0);
  });

  it('fades when the sugars of the wood are used up', () => {
    const values = new Float64Array(VARIABLE_IDS.length);
    values[V.landWoodCarbon] = 1;
    const mould = createWoodMould(SAPWOOD, 1);
    const air = { temperature: 23, humidity: 97 };
    for (let day = 0; day < 60; day += 1) mould.pass(values, air);
    const bloom = mould.index;
    values[V.landWoodCarbon] = 0.02;
    for (let day = 0; day < 120; day += 1) mould.pass(values, air);
    expect(mould.index).toBeLessThan(0.1 * bloom);
  });
});
