import { FOODS, type FoodFlow } from '@shoreglass/engine';
import { describe, expect, test } from 'vitest';
import { palette } from '../palette/palette.ts';
import { walkScene } from '../scene/scene.ts';
import { flowAmountText } from './flow-amount.ts';
import { foodLook } from './food-look.ts';
import { foodWebLayout } from './food-web-layout.ts';
import { foodWebScene } from './food-web-scene.ts';

// Invented.
const flow = (eater: string, food: string, weekly: readonly number[]): FoodFlow => ({
  eater,
  food,
  foodName: food,
  weekly,
  mean: weekly.reduce((sum, value) => sum + value, 0) / weekly.length,
});
const flows = [
  flow('scuds', 'detritus', [60, 120]),
  flow('scuds', 'feed', [20, 0]),
  flow('snails', 'detritus', [30, 60]),
  flow('newts', 'population:scuds', [0, 9]),
  flow('scuds', 'population:scuds', [0, 2]),
];
const eaters = ['scuds', 'snails', 'newts'].map((id) => ({ id, name: id }));
const laid = (week?: number) =>
  foodWebLayout({ flows, eaters, width: 900, ...(week === undefined ? {} : { week }) });

describe('the food web', () => {
  test('bands are as wide as what is eaten, on one scale for every week', () => {
    const [first, second] = [laid(0), laid(1)];
    expect(first.perMilligram).toBe(second.perMilligram);
    for (const { bands, perMilligram } of [first, second])
      for (const { thickness, amount } of bands) expect(thickness).toBeCloseTo(amount * perMilligram, 9);
    expect(first.height).toBe(second.height);
  });

  test('what leaves a food arrives at eaters without gaps or overlaps', () => {
    const { foods, bands } = laid(0);
    const detritus = foods.find(({ id }) => id === 'detritus');
    const leaving = bands.filter(({ food }) => food === 'detritus').sort((a, b) => a.from - b.from);
    expect(leaving).toHaveLength(2);
    expect(leaving[0]?.from).toBeCloseTo(detritus?.top ?? Number.NaN, 9);
    expect(leaving[1]?.from).toBeCloseTo((leaving[0]?.from ?? 0) + (leaving[0]?.thickness ?? 0), 9);
    expect(detritus?.amount).toBe(90);
  });

  test('a food not eaten in a week keeps its place without a band; animals eaten by animals are arcs', () => {
    const second = laid(1);
    expect(second.foods.find(({ id }) => id === 'feed')?.amount).toBe(0);
    expect(second.bands.some(({ food }) => food === 'feed')).toBe(false);
    expect(second.prey.map(({ prey, eater }) => `${prey} by ${eater}`)).toEqual([
      'scuds by newts',
      'scuds by scuds',
    ]);
    expect(laid(0).prey).toEqual([]);
  });

  test('names nobody twice, and no name reaches past the drawing', () => {
    const { foods, eaters: right, left, names } = laid();
    expect(new Set([...foods, ...right].map(({ middle }) => middle)).size).toBeGreaterThan(3);
    expect(left).toBeGreaterThan(0);
    expect(names).toBeLessThan(900);
    for (const column of [foods, right])
      for (const [at, node] of column.entries()) {
        const next = column[at + 1];
        if (next) expect(next.middle - node.middle).toBeGreaterThanOrEqual(42);
      }
  });

  test('speaks who eats how much in which week', () => {
    const scene = foodWebScene({
      flows,
      eaters,
      week: 0,
      width: 900,
      unit: 'carbon',
      when: 'in the week from 1 Mar',
      palette: palette('night'),
    });
    expect(String(scene.attributes['aria-label']).replaceAll('\u00a0', ' ')).toBe(
      'Who eats what, in the week from 1 Mar: snails eat 30 mg C, most of it detritus; scuds eat 80 mg C, most of it detritus; newts eat nothing.',
    );
    for (const node of walkScene(scene)) expect(JSON.stringify(node.attributes)).not.toMatch(/NaN|undefined/);
  });

  test('every food has a look of its own, by wash and pattern', () => {
    const looks = FOODS.map((food) => `${foodLook(food).wash} ${foodLook(food).pattern}`);
    expect(new Set(looks).size).toBe(FOODS.length);
  });
});

describe('amounts of food', () => {
  test.each([
    [123.4, 'carbon', '123 mg C'],
    [1.26, 'carbon', '1.3 mg C'],
    [0.001, 'carbon', 'under 0.01 mg C'],
    [2200, 'carbon', '2.2 g C'],
    [100, 'dry', '250 mg dry'],
  ] as const)('%d mg C as %s is %s', (amount, unit, text) => {
    expect(flowAmountText(amount, unit).replaceAll('\u00a0', ' ')).toBe(text);
  });
});
