import fc from 'fast-check';
import { expect, it } from 'vitest';
import { palette } from '../palette/palette.ts';
import { sceneToSvg } from '../scene/scene-to-svg.ts';
import { effectScene } from './effect-course.ts';

const course = fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 0, maxLength: 12 });

it('is drawable for any effect and size', () => {
  fc.assert(
    fc.property(course, fc.integer({ min: 140, max: 900 }), (middle, width) => {
      const scene = effectScene({
        name: 'pH',
        unit: '',
        digits: 2,
        low: middle.map((value) => value - 1),
        middle,
        high: middle.map((value) => value + 1),
        startDate: '2026-03-01',
        day: 3,
        width,
        height: 150,
        palette: palette('day'),
      });
      expect(sceneToSvg(scene)).not.toMatch(/NaN|Infinity|undefined/);
    }),
  );
});

it('says what is left of the effect at the end', () => {
  const scene = effectScene({
    name: 'carbonate hardness',
    unit: '°dKH',
    digits: 1,
    low: [0, -2],
    middle: [0, -1.24],
    high: [0, -0.5],
    startDate: '2026-03-01',
    width: 300,
    height: 150,
    palette: palette('day'),
  });
  expect(scene.attributes['aria-label']).toBe(
    'carbonate hardness, with less without, until 2 Mar: −1.2 °dKH at the end.',
  );
});
