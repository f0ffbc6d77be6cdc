import { clockTime, type FeedingPlan } from '@shoreglass/engine';
import { expect, test } from 'vitest';
import { feedingEdits, feedingMoves, hourOfClock } from './feeding-edits.ts';

// Invented answers.
const found: FeedingPlan = {
  feed: 'shrimp-pellet',
  feedName: 'sinking shrimp pellet',
  mass: 0.000_214,
  everyDays: 3,
  onLand: false,
  holds: true,
  clean: true,
  advised: true,
  populations: [],
  ammonia: 0.01,
  nitrite: 0.1,
  oxygen: 7,
  trials: 4,
  chosenBy: 'half of the runs drawn',
  heldIn: { held: 18, runs: 24, share: 0.75, low: 0.59, high: 0.87 },
  sentences: [],
};
const pellet = { do: 'feed', feed: 'flake', amount: 0.0001, every: 2 } as const;
const topOff = { do: 'top-off', every: 4 } as const;

test('the feeding of the same place is changed where it stands, a second one goes', () => {
  expect(feedingEdits([topOff, pellet, { ...pellet, place: 'land' }, pellet], found)).toEqual([
    { path: ['routines', 1, 'feed'], value: 'shrimp-pellet' },
    { path: ['routines', 1, 'amount'], value: '0.21 g' },
    { path: ['routines', 1, 'every'], value: '3 d' },
    { path: ['routines', 3], value: undefined },
  ]);
});

test('on land a feeding of its own is added', () => {
  expect(feedingEdits([topOff, pellet], { ...found, onLand: true })).toEqual([
    {
      path: ['routines', 2],
      value: { do: 'feed', feed: 'shrimp-pellet', amount: '0.21 g', every: '3 d', place: 'land' },
    },
  ]);
});

test('where none is needed the feeding goes', () => {
  expect(feedingEdits([pellet, topOff], { ...found, mass: 0 })).toEqual([
    { path: ['routines', 0], value: undefined },
  ]);
});

test('an hour is written as the file has it, and taken out where the answer has none', () => {
  expect(feedingEdits([topOff], { ...found, hour: 21.5 })[0]?.value).toMatchObject({ at: '21:30' });
  expect(feedingEdits([{ ...pellet, at: 9 }], found)).toContainEqual({
    path: ['routines', 0, 'at'],
    value: undefined,
  });
  expect(hourOfClock(clockTime(6.25))).toBe(6.25);
  expect(hourOfClock('')).toBeUndefined();
});

test('a feeding of the file is moved to another place and time', () => {
  expect(feedingMoves(2, { place: 'land', time: '22:00' })).toEqual([
    { path: ['routines', 2, 'place'], value: 'land' },
    { path: ['routines', 2, 'at'], value: '22:00' },
  ]);
  expect(feedingMoves(0, { place: 'water', time: '' })).toEqual([
    { path: ['routines', 0, 'place'], value: undefined },
    { path: ['routines', 0, 'at'], value: undefined },
  ]);
});
