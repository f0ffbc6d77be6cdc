import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { palette } from '../palette/palette.ts';
import { walkScene } from '../scene/scene.ts';
import { sceneToSvg } from '../scene/scene-to-svg.ts';
import { ALDER_CORNER } from '../testdata/alder-corner.ts';
import { stripField } from '../testdata/fields.ts';
import { blocksOf } from './blocks.ts';
import { clipped } from './clip.ts';
import { projectionOf } from './projection.ts';
import type { SolidOptions } from './solid-options.ts';
import { solidScene, viewWords } from './solid-scene.ts';

const options = (turn: number, tilt: number): SolidOptions => ({
  plan: ALDER_CORNER,
  field: stripField(ALDER_CORNER),
  size: { width: 400, height: 320 },
  palette: palette('day'),
  turn,
  tilt,
});

describe('the projection', () => {
  it('from straight above is the plan, from level in front the section', () => {
    const above = projectionOf(options(0, 90));
    const [x0, y0] = above.at(0, 0, 0);
    const [x1, y1] = above.at(0.9, 0.45, 0.6);
    expect((x1 - x0) / above.pixelsPerMetre).toBeCloseTo(0.9, 9);
    expect((y0 - y1) / above.pixelsPerMetre).toBeCloseTo(0.45, 9);
    const level = projectionOf(options(0, 0));
    const [, low] = level.at(0.2, 0.1, 0);
    const [, high] = level.at(0.2, 0.4, 0.6);
    expect((low - high) / level.pixelsPerMetre).toBeCloseTo(0.6, 9);
  });
  it('keeps the whole box inside the drawing at every turn', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 5, max: 85 }), (turn, tilt) => {
        const { at } = projectionOf(options(turn, tilt));
        for (const x of [0, 0.9])
          for (const y of [0, 0.45])
            for (const z of [0, 0.6]) {
              const [px, py] = at(x, y, z);
              expect(px).toBeGreaterThanOrEqual(0);
              expect(px).toBeLessThanOrEqual(400);
              expect(py).toBeGreaterThanOrEqual(0);
              expect(py).toBeLessThanOrEqual(320);
            }
      }),
    );
  });
});

describe('blocks', () => {
  it('carry a slope on to the panes and keep the step between two zones', () => {
    const blocks = blocksOf(stripField(ALDER_CORNER, 90, 45));
    const last = blocks.columns - 1;
    expect(blocks.cornerOf(last, 0, 1, 0)).toBeCloseTo(0.38, 2);
    expect(blocks.cornerOf(0, 0, 0, 0)).toBeCloseTo(0.022, 3);
  });
});

describe('clipping at the level', () => {
  it('parts a slope where it passes the water, and loses nothing', () => {
    const slope = [
      [0, 0, 0],
      [1, 0, 1],
      [1, 1, 1],
      [0, 1, 0],
    ] as const;
    const area = (spots: readonly (readonly [number, number, number])[]) =>
      Math.abs(
        spots.reduce((sum, [x, y], index) => {
          const [nx, ny] = spots[(index + 1) % spots.length] as readonly [number, number, number];
          return sum + x * ny - nx * y;
        }, 0) / 2,
      );
    const [below, above] = [clipped(slope, 0.3, 'below'), clipped(slope, 0.3, 'above')];
    expect(area(below)).toBeCloseTo(0.3, 12);
    expect(area(above)).toBeCloseTo(0.7, 12);
    expect(clipped(slope, 2, 'above')).toEqual([]);
  });
});

describe('the body', () => {
  it('is drawable from everywhere', () => {
    for (const turn of [0, 45, 90, 180, 233, 315]) {
      const svg = sceneToSvg(solidScene(options(turn, 30)));
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
  });
  it('shows the front layers from the front and not from the back', () => {
    const count = (turn: number) =>
      [...walkScene(solidScene(options(turn, 30)))].filter(
        ({ attributes }) => attributes['data-part'] === 'sides',
      ).length;
    expect(count(20)).toBe(1);
    expect(sceneToSvg(solidScene(options(10, 30)))).toContain('>front<');
    expect(sceneToSvg(solidScene(options(190, 30)))).toContain('>back<');
  });
  it('says from where one looks', () => {
    expect(viewWords(0, 30)).toBe('from the front, 30° from above');
    expect(viewWords(310, 20)).toBe('from the front left, 20° from above');
    expect(viewWords(-90, 20)).toBe('from the left, 20° from above');
  });
});

describe('slabs over caves', () => {
  it('are drawn over the ground of the cave, on both sides of the level, and from every side', () => {
    const [pool, ...rest] = ALDER_CORNER.zones;
    if (!pool) throw new Error('the plan has no pool');
    const { level } = ALDER_CORNER.water;
    const roof = { bottom: level - 0.02, top: level + 0.02, density: 2750 };
    const plan = { ...ALDER_CORNER, zones: [{ ...pool, roof }, ...rest] };
    for (const turn of [20, 110, 200, 290]) {
      const found = sceneToSvg(solidScene({ ...options(turn, 30), plan })).split(`data-slab="${pool.id}"`);
      expect(found.length, `turned by ${turn}`).toBeGreaterThan(3);
    }
    expect(sceneToSvg(solidScene(options(20, 30)))).not.toContain('data-slab');
  });
});
