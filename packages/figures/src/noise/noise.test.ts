import { expect, it } from 'vitest';
import { noiseFrom, wobbleFrom } from './noise.ts';

it('repeats for the same seed and differs for another', () => {
  const [first, again, other] = [noiseFrom('bank'), noiseFrom('bank'), noiseFrom('pool')];
  const draws = Array.from({ length: 20 }, () => first());
  expect(Array.from({ length: 20 }, () => again())).toEqual(draws);
  expect(Array.from({ length: 20 }, () => other())).not.toEqual(draws);
});

it('spreads evenly over the unit interval', () => {
  const noise = noiseFrom('even');
  const draws = Array.from({ length: 20_000 }, () => noise());
  // Mean 1/2 and variance 1/12 of a uniform variable; the bounds are five standard errors.
  const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length;
  const variance = draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / draws.length;
  expect(Math.abs(mean - 1 / 2)).toBeLessThan(5 * Math.sqrt(1 / 12 / draws.length));
  expect(Math.abs(variance - 1 / 12)).toBeLessThan(5 * Math.sqrt(1 / 180 / draws.length));
});

it('wobbles smoothly within one to either side', () => {
  const wobble = wobbleFrom('ground');
  for (let position = -5; position < 40; position += 0.01) {
    expect(Math.abs(wobble(position))).toBeLessThanOrEqual(1);
    // The steepest slope of the easing is 3/2 over a step of at most 2.
    expect(Math.abs(wobble(position + 0.01) - wobble(position))).toBeLessThanOrEqual(0.0301);
  }
});
