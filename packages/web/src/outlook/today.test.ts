import { expect, test } from 'vitest';
import { dayOfRun } from './today.ts';

test('today counts by dates, whatever the hour and the change of clocks', () => {
  expect(dayOfRun('2026-03-01', 300, new Date(2026, 2, 1, 23, 59))).toBe(0);
  expect(dayOfRun('2026-03-01', 300, new Date(2026, 2, 30, 0, 1))).toBe(29);
  expect(dayOfRun('2026-03-01', 300, new Date(2026, 10, 25, 12, 0))).toBe(269);
});

test('outside the run there is no today', () => {
  expect(dayOfRun('2026-03-01', 300, new Date(2026, 1, 28, 12, 0))).toBeUndefined();
  expect(dayOfRun('2026-03-01', 300, new Date(2026, 11, 26, 12, 0))).toBeUndefined();
});
