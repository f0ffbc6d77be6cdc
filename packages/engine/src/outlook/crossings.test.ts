import { describe, expect, test } from 'vitest';
import { commonBands } from './bands.ts';
import { firstAbove, firstEmpty, firstLeaving } from './crossings.ts';

const days = (...values: number[]): Float64Array => Float64Array.from(values);

describe('leaving a band', () => {
  test('counts from the first of three days running', () => {
    expect(firstLeaving(days(5, 2, 2, 5, 2, 2, 2, 5), 3, 'low')).toBe(4);
  });
  test('two days outside are not enough', () => {
    expect(firstLeaving(days(5, 2, 2, 5, 5), 3, 'low')).toBe(-1);
  });
  test('the limit itself is inside', () => {
    expect(firstLeaving(days(3, 3, 3, 3), 3, 'low')).toBe(-1);
    expect(firstLeaving(days(3, 3, 3, 3), 3, 'high')).toBe(-1);
  });
  test('outside from the start is day 0', () => {
    expect(firstLeaving(days(9, 9, 9, 9), 8, 'high')).toBe(0);
  });
  test('a run shorter than three days is outside when its last day is', () => {
    expect(firstLeaving(days(9, 9), 8, 'high')).toBe(0);
  });
});

describe('populations', () => {
  test('a population that was never there does not die out', () => {
    expect(firstEmpty(days(0, 0, 0))).toBe(-1);
  });
  test('one put in later dies out on the day it is gone', () => {
    expect(firstEmpty(days(0, 0, 12, 4, 0, 0))).toBe(4);
  });
  test('a fraction of an animal in the expected run is nobody', () => {
    expect(firstEmpty(days(3, 1, 0.4))).toBe(2);
  });
  test('first young are more than were put in', () => {
    expect(firstAbove(days(5, 5, 7), 5.5)).toBe(2);
    expect(firstAbove(days(5, 5), 5.5)).toBe(-1);
  });
});

describe('a band for everybody', () => {
  test('takes the highest low end and the lowest high end, with their owners', () => {
    const bands = commonBands([
      { series: 'pH', low: 6, high: 9.2, owner: 'amphipod', basis: 'page', source: 'a' },
      { series: 'pH', low: 6.5, owner: 'snail', basis: 'page', source: 'b' },
      { series: 'pH', high: 8.5, owner: 'plant', basis: 'page', source: 'c' },
      { series: 'GH', low: 4, owner: 'amphipod', basis: 'page', source: 'd' },
    ]);
    expect(bands).toEqual([
      {
        series: 'pH',
        low: { value: 6.5, owner: 'snail', source: 'b' },
        high: { value: 8.5, owner: 'plant', source: 'c' },
      },
      { series: 'GH', low: { value: 4, owner: 'amphipod', source: 'd' } },
    ]);
  });
});
