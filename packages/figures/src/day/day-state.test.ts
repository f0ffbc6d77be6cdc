import type { AheadDocument, QuantileSeries } from '@shoreglass/engine';
import { expect, it } from 'vitest';
import { ALDER_YEAR } from '../testdata/alder-year.ts';
import { dayStateOf, estimateOf, valueOn } from './day-state.ts';

const ramp: QuantileSeries = {
  name: 'ramp',
  unit: '',
  days: [0, 10, 20],
  expected: [0, 10, 40],
  q05: [-2, 8, 36],
  q25: [-1, 9, 38],
  q50: [0, 10, 40],
  q75: [1, 11, 42],
  q95: [2, 12, 44],
  band: { low: 3, high: 30, lowOwner: 'snails', highOwner: 'keeper' },
};

it('reads a series straight between recorded days and holds its ends', () => {
  expect(valueOn(ramp, 'q50', 5)).toBe(5);
  expect(valueOn(ramp, 'q75', 15)).toBe(26.5);
  expect(valueOn(ramp, 'q50', -4)).toBe(0);
  expect(valueOn(ramp, 'q50', 99)).toBe(40);
});

it('says on which side of its band a median stands, and whose band it is', () => {
  expect(estimateOf(ramp, 1)?.beyond).toEqual({ side: 'below', limit: 3, owner: 'snails' });
  expect(estimateOf(ramp, 10)?.beyond).toBeUndefined();
  expect(estimateOf(ramp, 20)?.beyond).toEqual({ side: 'above', limit: 30, owner: 'keeper' });
  expect(estimateOf(undefined, 3)).toBeUndefined();
  expect(estimateOf({ ...ramp, q50: [Number.NaN] }, 3)).toBeUndefined();
});

it('takes whole populations, not their stages, and leaves out what the document lacks', () => {
  const sparse: AheadDocument = {
    ...ALDER_YEAR,
    series: { 'population:a': ramp, 'population:a:juvenile': ramp, waterLevel: ramp },
  };
  const state = dayStateOf(sparse, 10);
  expect(Object.keys(state.populations)).toEqual(['a']);
  expect(state.waterLevel?.median).toBe(10);
  expect(state.litter).toBeUndefined();
});

it('tells animals that are still to come from those that died out', () => {
  const course = (q50: number[], q95: number[]): QuantileSeries => ({
    ...ramp,
    days: [0, 27, 28, 60, 90],
    expected: q50,
    q05: q50,
    q25: q50,
    q50,
    q75: q50,
    q95,
  });
  const year = {
    ...ALDER_YEAR,
    series: {
      'population:later': course([0, 0, 10, 12, 0], [0, 0, 10, 14, 2]),
      'population:guests': course([0, 0, 0, 0, 0], [4, 8, 9, 30, 60]),
    },
  } as unknown as AheadDocument;
  const on = (day: number) => dayStateOf(year, day).populations;
  expect(on(3).later?.coming).toBe(28);
  expect(on(60).later?.coming).toBeUndefined();
  expect(on(90).later, 'died out').toMatchObject({ median: 0 });
  expect(on(90).later?.coming).toBeUndefined();
  expect(on(60).guests?.coming).toBe('in some runs');
});
