import type { Zone } from '@shoreglass/engine';
import { expect, test } from 'vitest';
import { ALDER_CORNER } from '../testdata/alder-corner.ts';
import { cutPlan, cutZones } from './cut-zones.ts';

const strip = (id: string, from: number, to: number, ground: readonly [number, number]): Zone => ({
  id,
  name: id,
  kind: 'pool',
  from,
  to,
  groundStart: ground[0],
  groundEnd: ground[1],
  layers: [],
});
const island = (y: readonly [number, number]): Zone => ({
  ...strip('island', 0.2, 0.4, [0.3, 0.3]),
  kind: 'island',
  outline: [
    { x: 0.2, y: y[0], ground: 0.3 },
    { x: 0.4, y: y[0], ground: 0.3 },
    { x: 0.3, y: y[1], ground: 0.3 },
  ],
});

test('an island parts the strip it stands on, whose ground goes on at both sides as it would have', () => {
  const cut = cutZones([strip('pool', 0, 1, [0, 0.1]), island([0.1, 0.4])], 0.25);
  expect(cut.map(({ id, from, to }) => [id, from, to])).toEqual([
    ['pool', 0, 0.2],
    ['island', 0.2, 0.4],
    ['pool', 0.4, 1],
  ]);
  expect(cut.map(({ groundStart }) => groundStart)).toEqual([0, 0.3, expect.closeTo(0.04, 12)]);
  expect(cut.map(({ groundEnd }) => groundEnd)).toEqual([expect.closeTo(0.02, 12), 0.3, 0.1]);
});

test('what does not reach the middle is not cut; a plan of strips stays the same object', () => {
  expect(cutZones([strip('pool', 0, 1, [0, 0]), island([0.3, 0.4])], 0.25).map(({ id }) => id)).toEqual([
    'pool',
  ]);
  expect(cutPlan(ALDER_CORNER)).toBe(ALDER_CORNER);
});
