import { expect, test } from 'vitest';
import { bufferPiece, weighable } from './buffer-piece.ts';
import type { BufferOffer } from './buffer-question.ts';

const offer: BufferOffer = {
  material: 'shell',
  name: 'shell',
  perKilogram: {
    id: 'shell-buffer',
    name: 'shell',
    kind: 'carbonate',
    material: 'shell',
    mass: 1,
    volume: 4e-4,
    course: [],
    contents: { carbonateSolid: 9.5 },
    grain: 0.004,
  },
  grains: [0.004],
};

test('a buffer has volume and carbonate in proportion to its mass, and the grain asked for', () => {
  const piece = bufferPiece(offer, 0.05, 0.001);
  expect(piece.volume).toBeCloseTo(2e-5, 15);
  expect(piece.contents.carbonateSolid).toBeCloseTo(0.475, 12);
  expect(piece).toMatchObject({ mass: 0.05, grain: 0.001, material: 'shell' });
});

test('masses go up to what a kitchen balance shows, never down', () => {
  expect(weighable(0.0031)).toBeCloseTo(0.0035, 12);
  expect(weighable(0.0402)).toBeCloseTo(0.041, 12);
  expect(weighable(0.1501)).toBeCloseTo(0.155, 12);
  expect(weighable(1.241)).toBeCloseTo(1.26, 12);
  for (const mass of [0.0005, 0.003, 0.05, 0.155, 1.24]) expect(weighable(mass)).toBeCloseTo(mass, 12);
});
