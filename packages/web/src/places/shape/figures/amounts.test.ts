import { expect, test } from 'vitest';
import { amountsIn } from './amounts.ts';
import { roundTicks } from './line-chart.tsx';

const NBSP = '\u00a0';

test('figures are read in the units of the trade, to about three figures', () => {
  const { volume, smallVolume, mass, length, flow, temperature, area } = amountsIn('cm');
  expect(volume(0.0484)).toBe(`48.4${NBSP}L`);
  expect(smallVolume(0.000161)).toBe(`161${NBSP}mL`);
  expect(mass(140.1)).toBe(`140${NBSP}kg`);
  expect(length(0.435)).toBe(`43.5${NBSP}cm`);
  expect(length(0.008)).toBe(`8.0${NBSP}mm`);
  expect(flow(5e-5)).toBe(`180${NBSP}L/h`);
  expect(temperature(18)).toBe(`18.0${NBSP}°C`);
  expect(area(0.0585)).toBe(`585${NBSP}cm²`);
});

// 1 US gal = 231 in³, 1 lb = 0.45359237 kg, 1 lbf/ft² = 47.880259 Pa: exact definitions.
test('and in inches, US gallons, pounds and degrees Fahrenheit', () => {
  const { volume, mass, length, temperature, pressure } = amountsIn('in');
  expect(volume(231 * 0.0254 ** 3)).toBe(`1.0${NBSP}gal`);
  expect(mass(45.359237)).toBe(`100${NBSP}lb`);
  expect(length(0.254)).toBe(`10.0${NBSP}in`);
  expect(temperature(20)).toBe(`68.0${NBSP}°F`);
  expect(pressure(4788.0259)).toBe(`100${NBSP}lb/ft²`);
});

test('axes have round marks from nought to past the largest value', () => {
  expect(roundTicks(217).map(({ text }) => text)).toEqual(['0', '100', '200', '300']);
  expect(roundTicks(0.9).at(-1)?.at).toBeCloseTo(1, 9);
});
