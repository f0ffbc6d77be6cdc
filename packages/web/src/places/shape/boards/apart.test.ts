import fc from 'fast-check';
import { expect, test } from 'vitest';
import { APART, type Spot, steppedAside, withinReach } from './apart.ts';

const distance = (a: Spot, b: Spot) => Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y));

test('marks end up apart, and those that were apart stay', () => {
  const coordinate = fc.integer({ min: 0, max: 480 });
  fc.assert(
    fc.property(fc.array(fc.tuple(coordinate, coordinate), { maxLength: 14 }), (places) => {
      const spots = places.map(([x, y], index) => ({ id: `${index}`, x, y }));
      const moved = steppedAside(spots);
      for (const [index, a] of moved.entries())
        for (const b of moved.slice(index + 1)) expect(distance(a, b)).toBeGreaterThan(APART - 1);
      const lonely = spots.every((a, at) =>
        spots.every((b, other) => at === other || distance(a, b) >= APART),
      );
      if (lonely) expect(moved).toEqual(spots);
    }),
  );
});

test('the one that is held does not step aside', () => {
  const spots = [
    { id: 'held', x: 100, y: 100 },
    { id: 'other', x: 104, y: 100 },
  ];
  expect(steppedAside(spots, 'held')[0]).toEqual(spots[0]);
  expect(steppedAside(spots, 'held')[1]?.x).toBeCloseTo(125, 6);
});

test('marks of what lies outside the glass stand at its edge, a lamp above it stays', () => {
  const edges = { left: 30, right: 480, bottom: 300 };
  expect(withinReach({ id: 'branch', x: 560, y: 40 }, edges)).toEqual({ id: 'branch', x: 480, y: 40 });
  expect(withinReach({ id: 'branch', x: 10, y: 400 }, edges)).toEqual({ id: 'branch', x: 30, y: 300 });
  expect(withinReach({ id: 'lamp', x: 200, y: 12 }, edges)).toEqual({ id: 'lamp', x: 200, y: 12 });
});
