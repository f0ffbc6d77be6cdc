import { expect, test } from 'vitest';
import { inventedPoint } from './testdata/invented-outlook.ts';
import { weightiest } from './weightiest.ts';

const points = [
  inventedPoint('population:snails', 'first young', { probability: 1 }),
  inventedPoint('nitrate', 'rises above', { probability: 0.3 }),
  inventedPoint('KH', 'falls below', { probability: 0.6 }),
];

test('what needs the keeper in most runs comes before news that is certain, and that before what hardly ever comes', () => {
  expect(weightiest(points, 1).map(({ subject }) => subject)).toEqual(['KH']);
  expect(weightiest(points, 2).map(({ subject }) => subject)).toEqual(['population:snails', 'KH']);
});
