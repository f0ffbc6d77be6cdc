import { describe, expect, test } from 'vitest';
import type { Event } from './event.ts';
import { handsOffHorizon } from './horizon.ts';

const event = (subject: Event['subject'], days: number[], ends = true): Event => ({
  id: subject,
  subject,
  kind: 'falls below',
  owner: 'snail',
  source: 'test',
  band: { low: 1 },
  ends,
  days: Int32Array.from(days),
});

describe('hands-off horizon', () => {
  const horizon = handsOffHorizon(
    [
      event('KH', [50, -1, 80, -1, 100]),
      event('pH', [60, 70, 20, -1, -1]),
      event('GH', [1, 1, 1, 1, 1], false),
    ],
    5,
    300,
  );
  // By hand: first ends are 50, 70, 20, none, 100.
  test('is the first end of each member, the whole run where there is none', () => {
    expect(horizon.q50).toBe(70);
    expect(horizon.q10).toBeCloseTo(20 + 0.4 * 30, 12);
    expect(horizon.q90).toBeCloseTo(100 + 0.6 * 200, 12);
    expect(horizon.unbroken).toBeCloseTo(0.2, 12);
  });
  test('names what ends it, most frequent first; what does not end it is left out', () => {
    expect(horizon.limitedBy.map(({ subject, share }) => [subject, share])).toEqual([
      ['KH', 0.4],
      ['pH', 0.4],
    ]);
  });
});
