import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Corner, Layer, Zone } from '../plan/plan.ts';
import { checkGeometry } from './check-geometry.ts';
import { cutAt } from './cut-at.ts';
import { geometryOf } from './geometry.ts';
import { groundAt, outlineArea } from './ground-surface.ts';
import { heightField } from './height-field.ts';

const BOX: Box = {
  length: 0.9,
  width: 0.45,
  height: 0.6,
  glassThickness: 0.008,
  coverOpenFraction: 0.1,
  coverTransmission: 0.9,
};
const SAND: Layer = {
  kind: 'substrate',
  material: 'sand',
  name: 'sand',
  thickness: 0,
  porosity: 0.4,
  filmSurface: 1000,
};
const corner = (x: number, y: number, ground: number): Corner => ({ x, y, ground });

function zone(id: string, kind: Zone['kind'], outline: Corner[], more: Partial<Zone> = {}): Zone {
  return { id, name: id, kind, from: 0, to: 0, groundStart: 0, groundEnd: 0, layers: [], outline, ...more };
}
const rectangle = (x0: number, y0: number, x1: number, y1: number, ground: number): Corner[] => [
  corner(x0, y0, ground),
  corner(x1, y0, ground),
  corner(x1, y1, ground),
  corner(x0, y1, ground),
];
const whole = (ground: number, layers: Layer[] = []) =>
  zone('floor', 'pool', rectangle(0, 0, 0.9, 0.45, ground), { layers });
const planOf = (...zones: Zone[]) => ({ box: BOX, zones, hardscape: [] });

describe('the height field', () => {
  it('gives a level pool its closed form at any level', () => {
    const geometry = geometryOf(planOf(whole(0.0437)));
    for (const level of [0.1, 0.1613, 0.5]) {
      expect(geometry.openVolumeAt(level)).toBeCloseTo(0.405 * (level - 0.0437), 12);
      expect(geometry.openAreaAt(level)).toBeCloseTo(0.405, 12);
      expect(geometry.levelAt(geometry.volumeAt(level))).toBeCloseTo(level, 12);
    }
    expect(geometry.submergedAreaAt(0.2)).toBeCloseTo(0.405 + 2.7 * (0.2 - 0.0437), 6);
  });
  it('agrees with the section in closed form where a zone is as wide as the box', () => {
    const strip: Zone = { ...whole(0), from: 0, to: 0.9, groundStart: 0.03, groundEnd: 0.35, layers: [SAND] };
    const { outline: _, ...straight } = strip;
    const drawn = {
      ...strip,
      outline: [corner(0, 0, 0.03), corner(0.9, 0, 0.35), corner(0.9, 0.45, 0.35), corner(0, 0.45, 0.03)],
    };
    const exact = geometryOf(planOf(straight));
    const field = geometryOf(planOf(drawn));
    for (const level of [0.08, 0.16, 0.3, 0.5]) {
      expect(field.volumeAt(level) / exact.volumeAt(level)).toBeCloseTo(1, 4);
      expect(field.openAreaAt(level) / exact.openAreaAt(level)).toBeCloseTo(1, 3);
      expect(field.submergedAreaAt(level) / exact.submergedAreaAt(level)).toBeCloseTo(1, 3);
      expect(field.waterPaneAreaAt(level) / exact.waterPaneAreaAt(level)).toBeCloseTo(1, 3);
      expect(field.filmSurfaceAt(level) / exact.filmSurfaceAt(level)).toBeCloseTo(1, 3);
    }
  });
  it('gives a wedge across the diagonal half a box less a third of a prism', () => {
    // ground rises from 0 on the front left to 0.3 in the other two corners of a triangle
    const triangle = zone('bank', 'bank', [corner(0, 0, 0), corner(0.9, 0, 0.3), corner(0, 0.45, 0.3)]);
    const geometry = geometryOf(planOf(whole(0), triangle));
    // tetrahedron mean height 0.2 over half the base
    const solid = 0.5 * 0.405 * 0.2;
    expect(geometry.groundVolume / solid).toBeCloseTo(1, 3);
    expect(geometry.openVolumeAt(0.4) / (0.405 * 0.4 - solid)).toBeCloseTo(1, 4);
  });
  it('gives a pyramid of four slopes a third of its prism, with errors that fall with the square of the spacing', () => {
    const [cx, cy, top] = [0.45, 0.22, 0.21];
    const rim = rectangle(0.25, 0.05, 0.65, 0.4, 0);
    const slopes = rim.map((one, i) =>
      zone(`slope-${i}`, 'island', [one, rim[(i + 1) % 4]!, corner(cx, cy, top)]),
    );
    const solid = (0.4 * 0.35 * top) / 3;
    const errorAt = (rows: number) =>
      Math.abs(geometryOf(planOf(whole(0), ...slopes), rows).groundVolume / solid - 1);
    expect(errorAt(64)).toBeLessThan(2e-3);
    expect(errorAt(256)).toBeLessThan(errorAt(32) / 16);
    const area = [0.05, 0.1, 0.15].map((z) => geometryOf(planOf(whole(0), ...slopes)).landAreaAt(z));
    for (const [i, z] of [0.05, 0.1, 0.15].entries())
      expect(area[i]! / (0.4 * 0.35 * (1 - z / top) ** 2)).toBeCloseTo(1, 2);
  });
  it('gives a round pool its area, wall and volume', () => {
    const n = 48;
    const r = 0.18;
    const round = Array.from({ length: n }, (_, i) =>
      corner(0.45 + r * Math.cos((2 * Math.PI * i) / n), 0.225 + r * Math.sin((2 * Math.PI * i) / n), 0.05),
    );
    const geometry = geometryOf(planOf(whole(0.3), zone('pond', 'island', round)));
    const area = 0.5 * n * r * r * Math.sin((2 * Math.PI) / n);
    const edge = 2 * n * r * Math.sin(Math.PI / n);
    expect(geometry.openAreaAt(0.2) / area).toBeCloseTo(1, 3);
    expect(geometry.openVolumeAt(0.2) / (area * 0.15)).toBeCloseTo(1, 3);
    expect(geometry.submergedAreaAt(0.2) / (area + edge * 0.15)).toBeCloseTo(1, 3);
  });
  it('keeps water under and above the slab over a cave', () => {
    const cave = zone('cave', 'cave', rectangle(0.2, 0.1, 0.5, 0.3, 0.05), {
      roof: { bottom: 0.15, top: 0.2, density: 2750 },
    });
    const geometry = geometryOf(planOf(whole(0.05), cave));
    expect(geometry.openVolumeAt(0.15)).toBeCloseTo(0.405 * 0.1, 5);
    expect(geometry.openAreaAt(0.18)).toBeCloseTo(0.405 - 0.06, 5);
    expect(geometry.openVolumeAt(0.3)).toBeCloseTo(0.405 * 0.25 - 0.06 * 0.05, 5);
  });
  it('spreads ground from corners straight along edges and exactly for planes', () => {
    const outline = [corner(0, 0, 0), corner(0.4, 0, 0.1), corner(0.4, 0.3, 0.3), corner(0, 0.3, 0.05)];
    expect(groundAt(outline, 0.2, 0)).toBeCloseTo(0.05, 12);
    expect(groundAt(outline, 0.4, 0.15)).toBeCloseTo(0.2, 12);
    expect(groundAt(outline, 0.4, 0.3)).toBe(0.3);
    const plane = outline.map(({ x, y }) => corner(x, y, 0.1 + 0.2 * x - 0.3 * y));
    expect(groundAt(plane, 0.13, 0.21)).toBeCloseTo(0.1 + 0.026 - 0.063, 12);
    const ringed = [
      corner(0, 0, 0),
      corner(0.4, 0, 0),
      corner(0.4, 0.4, 0),
      corner(0.2, 0.1, 0),
      corner(0, 0.4, 0),
    ];
    expect(groundAt(ringed, 0.05, 0.2)).toBeCloseTo(0, 12);
  });
});

describe('any ground drawn in plan', () => {
  const height = fc.double({ min: 0.02, max: 0.4, noNaN: true });
  const point = fc.record({
    x: fc.double({ min: 0.05, max: 0.85, noNaN: true }),
    y: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
  });
  const triangle = fc
    .tuple(point, point, point, height, height, height)
    .map(([a, b, c, p, q, r]) => [corner(a.x, a.y, p), corner(b.x, b.y, q), corner(c.x, c.y, r)])
    .filter((outline) => outlineArea(outline) > 2e-3);
  it('fills steadily, empties to the level it was filled to, and divides the base without rest', () => {
    fc.assert(
      fc.property(fc.array(triangle, { minLength: 1, maxLength: 4 }), height, (outlines, floor) => {
        const islands = outlines.map((outline, i) =>
          zone(`isle-${i}`, 'island', outline, { layers: [SAND] }),
        );
        const plan = planOf(whole(floor, [SAND]), ...islands);
        const geometry = geometryOf(plan);
        let before = -1;
        for (let z = 0.01; z < 0.6; z += 0.03) {
          const volume = geometry.volumeAt(z);
          expect(volume).toBeGreaterThan(before);
          expect(geometry.levelAt(volume)).toBeCloseTo(z, 8);
          expect(geometry.openAreaAt(z) + geometry.landAreaAt(z)).toBeCloseTo(0.405, 9);
          before = volume;
        }
        const patches = heightField(plan).patches.reduce((sum, { area }) => sum + area, 0);
        expect(patches).toBeCloseTo(0.405, 9);
        const reversed = geometryOf(planOf(whole(floor, [SAND]), ...islands.slice(0, 1)));
        const turned = islands.slice(0, 1).map((one) => ({ ...one, outline: [...one.outline!].reverse() }));
        expect(geometryOf(planOf(whole(floor, [SAND]), ...turned)).volumeAt(0.3)).toBeCloseTo(
          reversed.volumeAt(0.3),
          9,
        );
      }),
      { numRuns: 30 },
    );
  });
});

describe('what cannot be drawn is named with place and mend', () => {
  const problems = (...zones: Zone[]) =>
    checkGeometry({ ...planOf(...zones), water: { level: 0.2 } as never }).map(
      ({ place, message, severity }) => [place, message, severity],
    );
  it('an outline that crosses itself', () => {
    const bow = [corner(0.2, 0.1, 0.1), corner(0.6, 0.3, 0.1), corner(0.6, 0.1, 0.1), corner(0.2, 0.3, 0.1)];
    expect(problems(whole(0), zone('bow', 'island', bow))).toEqual([
      [
        'zones.bow.outline',
        'the outline of bow crosses itself 40 cm from the left, 20 cm from the front',
        undefined,
      ],
    ]);
  });
  it('a corner outside the glass', () => {
    const [place, message] = problems(
      whole(0),
      zone('out', 'bank', [corner(0.5, 0, 0.3), corner(1.1, 0, 0.3), corner(0.5, 0.4, 0.3)]),
    )[0]!;
    expect(place).toBe('zones.out.outline.1');
    expect(message).toContain('lies outside the glass, 90 cm by 45 cm');
  });
  it('zones over one another, unless they are islands and the like', () => {
    const bank = zone('bank', 'bank', rectangle(0.5, 0.05, 0.9, 0.45, 0.3));
    const margin = zone('margin', 'margin', rectangle(0.4, 0.05, 0.6, 0.45, 0.15));
    expect(problems(whole(0.05), bank)).toEqual([]);
    expect(problems(whole(0.05), margin, bank)).toEqual([
      ['zones.bank.outline', 'bank lies over margin on 400 cm²; bank counts there', 'warning'],
    ]);
    expect(problems(whole(0.05), margin, { ...bank, kind: 'island' })).toEqual([]);
  });
  it('bare base', () => {
    const left = zone('left', 'pool', rectangle(0, 0, 0.5, 0.45, 0.05));
    expect(problems(left)).toEqual([
      ['zones', 'no zone covers 1800 cm² of the base; it counts as bare glass', 'warning'],
    ]);
  });
  it('water above the lowest opening', () => {
    const plan = { ...planOf(whole(0.05)), water: { level: 0.2 } as never };
    const vents = [{ name: 'the slot', pane: 'front', height: 0.18, length: 0.3, opening: 0.02 }] as const;
    const [problem] = checkGeometry({ ...plan, box: { ...BOX, vents } });
    expect(problem?.message).toBe('the water at 20 cm would run over the lower edge of the slot at 18 cm');
    const [second] = checkGeometry({ ...plan, box: { ...BOX, overflow: { height: 0.15, bore: 0.02 } } });
    expect(second?.mend).toBe('Set the level below 15 cm.');
  });
});

describe('a cut along the length', () => {
  it('meets zones from left to right, an island in between', () => {
    const island = zone('island', 'island', rectangle(0.3, 0.1, 0.5, 0.3, 0.25));
    const plan = planOf(whole(0.05), island);
    expect(cutAt(plan).map(({ id, from, to, groundStart }) => [id, from, to, groundStart])).toEqual([
      ['floor', 0, 0.3, 0.05],
      ['island', 0.3, 0.5, 0.25],
      ['floor', 0.5, 0.9, 0.05],
    ]);
    expect(cutAt(plan, 0.4).map(({ id }) => id)).toEqual(['floor']);
  });
});
