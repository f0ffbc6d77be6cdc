import { describe, expect, test } from 'vitest';
import { dailyLimits, limitOn, limitsOf } from './bands.ts';
import { firstAbove, firstEmpty, firstLeaving } from './crossings.ts';

const days = (...values: number[]): Float64Array => Float64Array.from(values);

const always = (limit: number): Float64Array => new Float64Array(8).fill(limit);

describe('leaving a band', () => {
  test('counts from the first of three days running', () => {
    expect(firstLeaving(days(5, 2, 2, 5, 2, 2, 2, 5), always(3), 'low')).toBe(4);
  });
  test('two days outside are not enough', () => {
    expect(firstLeaving(days(5, 2, 2, 5, 5), always(3), 'low')).toBe(-1);
  });
  test('the limit itself is inside', () => {
    expect(firstLeaving(days(3, 3, 3, 3), always(3), 'low')).toBe(-1);
    expect(firstLeaving(days(3, 3, 3, 3), always(3), 'high')).toBe(-1);
  });
  test('outside from the start is day 0', () => {
    expect(firstLeaving(days(9, 9, 9, 9), always(8), 'high')).toBe(0);
  });
  test('a run shorter than three days is outside when its last day is', () => {
    expect(firstLeaving(days(9, 9), always(8), 'high')).toBe(0);
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

describe('limits of those who live there', () => {
  const [low, high] = limitsOf([
    { series: 'pH', low: 6, high: 9.2, owner: 'amphipod', basis: 'page', source: 'a' },
    { series: 'pH', low: 6.5, fromDay: 42, owner: 'snail', basis: 'page', source: 'b' },
  ]);
  if (!low || !high) throw new Error('both sides have a limit');
  test('the narrowest of those present counts', () => {
    expect(limitOn(low, 41)?.owner).toBe('amphipod');
    expect(limitOn(low, 42)?.owner).toBe('snail');
    expect(limitOn(high, 300)?.value).toBe(9.2);
  });
  test('a limit is no limit before its owner arrives', () => {
    const [late] = limitsOf([
      { series: 'GH', low: 5, fromDay: 2, owner: 'snail', basis: 'page', source: 'b' },
    ]);
    if (!late) throw new Error('one limit');
    expect([...dailyLimits(late, 4)]).toEqual([Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, 5, 5]);
    expect(firstLeaving(days(1, 1, 1, 1, 1), dailyLimits(late, 5), 'low')).toBe(2);
  });
});
