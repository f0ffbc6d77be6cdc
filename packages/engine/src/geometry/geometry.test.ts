import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan, Zone } from '../plan/plan.ts';
import { checkGeometry } from './check-geometry.ts';
import { geometryOf } from './geometry.ts';

type Shape = Pick<Plan, 'box' | 'zones' | 'hardscape'>;

const box = (length: number, width: number, height: number): Plan['box'] => ({
  length,
  width,
  height,
  glassThickness: 0.006,
  coverOpenFraction: 0.1,
  coverTransmission: 0.9,
});
const zone = (part: Partial<Zone> & Pick<Zone, 'from' | 'to' | 'groundStart' | 'groundEnd'>): Zone => ({
  id: `zone-${part.from}`,
  name: `zone at ${part.from} m`,
  kind: 'pool',
  layers: [],
  ...part,
});
const gravel = {
  kind: 'substrate',
  material: 'gravel',
  name: 'gravel',
  porosity: 0.4,
  filmSurface: 600,
} as const;
const falseBottom = {
  kind: 'false bottom',
  material: 'egg crate',
  name: 'false bottom',
  filmSurface: 40,
} as const;
const piece = (part: Partial<Plan['hardscape'][0]>): Plan['hardscape'][0] => ({
  id: 'root',
  name: 'root',
  kind: 'wood',
  material: 'spider-wood',
  mass: 1,
  volume: 0.002,
  course: [],
  contents: {},
  ...part,
});

describe('closed forms', () => {
  it('a plain box holds length times width times depth', () => {
    const shape: Shape = {
      box: box(1, 0.5, 0.6),
      zones: [zone({ from: 0, to: 1, groundStart: 0, groundEnd: 0 })],
      hardscape: [],
    };
    const plain = geometryOf(shape);
    expect(plain.volumeAt(0.3)).toBeCloseTo(0.15, 14);
    expect(plain.levelAt(0.15)).toBeCloseTo(0.3, 14);
    expect(plain.openAreaAt(0.3)).toBeCloseTo(0.5, 14);
    expect(plain.meanDepthAt(0.3)).toBeCloseTo(0.3, 14);
    // base 0.5 + front and back 2 x 0.3 + ends 2 x 0.15
    expect(plain.submergedAreaAt(0.3)).toBeCloseTo(1.4, 13);
    expect(plain.airVolumeAt(0.3)).toBeCloseTo(0.15, 14);
    expect(plain.airPaneAreaAt(0.3)).toBeCloseTo(0.9, 13);
    expect(plain.capacity).toBeCloseTo(0.3, 14);
    expect(plain.landAreaAt(0.3)).toBeCloseTo(0, 14);
  });

  it('a wedge holds half of width times z squared over its slope', () => {
    // ground rises from 0 to 0.4 m over 0.8 m: at z, wetted length is 2 z
    const wedge = geometryOf({
      box: box(0.8, 0.5, 0.5),
      zones: [zone({ from: 0, to: 0.8, groundStart: 0, groundEnd: 0.4 })],
      hardscape: [],
    });
    expect(wedge.volumeAt(0.2)).toBeCloseTo(0.5 * 0.5 * 0.4 * 0.2, 14);
    expect(wedge.openAreaAt(0.2)).toBeCloseTo(0.2, 14);
    expect(wedge.meanDepthAt(0.2)).toBeCloseTo(0.1, 14);
    // slope surface 0.5 x sqrt(0.4^2 + 0.2^2), two triangles of 0.04 m2, left pane 0.5 x 0.2
    expect(wedge.submergedAreaAt(0.2)).toBeCloseTo(0.5 * Math.sqrt(0.2) + 0.08 + 0.1, 13);
    expect(wedge.landAreaAt(0.2)).toBeCloseTo(0.2, 14);
  });

  it('a pool beside a bank on a false bottom counts open and pore water', () => {
    const two = geometryOf({
      box: box(1, 0.4, 0.6),
      zones: [
        zone({
          from: 0,
          to: 0.5,
          groundStart: 0.05,
          groundEnd: 0.05,
          layers: [{ ...gravel, thickness: 0.05 }],
        }),
        zone({
          kind: 'bank',
          from: 0.5,
          to: 1,
          groundStart: 0.3,
          groundEnd: 0.3,
          layers: [
            { ...falseBottom, thickness: 0.1, porosity: 0.9 },
            { ...gravel, thickness: 0.05 },
          ],
        }),
      ],
      hardscape: [],
    });
    const plan = 0.2; // each zone 0.5 x 0.4 m2
    expect(two.groundWaterVolumeAt(0.2)).toBeCloseTo(plan * (0.05 * 0.4 + 0.1 * 0.9 + 0.1 * 0.4), 14);
    expect(two.openVolumeAt(0.2)).toBeCloseTo(plan * 0.15, 14);
    expect(two.volumeAt(0.2)).toBeCloseTo(plan * (0.15 + 0.02 + 0.13), 14);
    expect(two.filmSurfaceAt(0.2) - two.submergedAreaAt(0.2)).toBeCloseTo(
      plan * (0.05 * 600 + 0.1 * 40 + 0.1 * 600),
      10,
    );
    // pool floor 0.2, front and back 2 x 0.5 x 0.15, left pane 0.4 x 0.15, face of the bank 0.4 x 0.15
    expect(two.submergedAreaAt(0.2)).toBeCloseTo(0.2 + 0.15 + 0.06 + 0.06, 13);
    expect(two.groundVolume).toBeCloseTo(plan * 0.35, 14);
  });

  it('a stone under water raises the level by its volume over the free area', () => {
    const zones = [zone({ from: 0, to: 1, groundStart: 0, groundEnd: 0 })];
    const without = geometryOf({ box: box(1, 0.5, 0.6), zones, hardscape: [] });
    const stone = piece({ id: 'stone', kind: 'stone', volume: 0.001 });
    const withStone = geometryOf({ box: box(1, 0.5, 0.6), zones, hardscape: [stone] });
    expect(without.volumeAt(0.3) - withStone.volumeAt(0.3)).toBeCloseTo(0.001, 14);
    // a 10 cm cube adds its six faces
    expect(withStone.submergedAreaAt(0.3) - without.submergedAreaAt(0.3)).toBeCloseTo(0.06, 12);
  });

  it('a branch standing out of the water displaces only its wet part', () => {
    const zones = [zone({ from: 0, to: 1, groundStart: 0, groundEnd: 0 })];
    const upright = piece({
      course: [
        [0.5, 0.05, 0.1],
        [0.5, 0.45, 0.1],
      ],
    });
    const half = geometryOf({ box: box(1, 0.5, 0.6), zones, hardscape: [upright] });
    expect(0.5 * 0.25 - half.volumeAt(0.25)).toBeCloseTo(0.001, 14);
    expect(half.openAreaAt(0.25)).toBeCloseTo(0.5 - 0.004, 14);
  });
});

const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const layerArbitrary = fc.record({
  kind: fc.constant('substrate' as const),
  material: fc.constant('gravel'),
  name: fc.constant('gravel'),
  thickness: metres(0.01, 0.2),
  porosity: metres(0.2, 0.95),
  filmSurface: metres(0, 2000),
});
const zoneArbitrary = fc.record({
  share: metres(0.1, 1),
  groundStart: metres(0, 0.45),
  groundEnd: metres(0, 0.45),
  layers: fc.array(layerArbitrary, { minLength: 1, maxLength: 3 }),
});
const shapeArbitrary = fc
  .record({
    parts: fc.array(zoneArbitrary, { minLength: 1, maxLength: 4 }),
    length: metres(0.4, 2),
    width: metres(0.3, 1),
  })
  .map(({ parts, length, width }): Shape => {
    const total = parts.reduce((sum, { share }) => sum + share, 0);
    let x = 0;
    const zones = parts.map(({ share, ...ground }, i) => {
      const from = x;
      x = i === parts.length - 1 ? length : x + (length * share) / total;
      return zone({ from, to: x, ...ground });
    });
    return { box: box(length, width, 0.5), zones, hardscape: [piece({ volume: 1e-4 })] };
  });

describe('any section', () => {
  it('holds more the higher the water stands', () => {
    fc.assert(
      fc.property(shapeArbitrary, metres(0.001, 0.5), metres(0.0001, 0.1), (shape, level, rise) => {
        const geometry = geometryOf(shape);
        expect(geometry.volumeAt(level + rise)).toBeGreaterThan(geometry.volumeAt(level));
      }),
    );
  });

  it('gives back the level from the volume', () => {
    fc.assert(
      fc.property(shapeArbitrary, metres(0.001, 0.5), (shape, level) => {
        const geometry = geometryOf(shape);
        expect(Math.abs(geometry.levelAt(geometry.volumeAt(level)) - level)).toBeLessThan(1e-10);
      }),
    );
  });

  it('holds twice as much when twice as wide', () => {
    fc.assert(
      fc.property(shapeArbitrary, metres(0.01, 0.5), (shape, level) => {
        const bare = { ...shape, hardscape: [] };
        const wide = { ...bare, box: { ...shape.box, width: 2 * shape.box.width } };
        expect(geometryOf(wide).volumeAt(level)).toBeCloseTo(2 * geometryOf(bare).volumeAt(level), 12);
        expect(geometryOf(wide).openAreaAt(level)).toBeCloseTo(2 * geometryOf(bare).openAreaAt(level), 12);
      }),
    );
  });

  it('grows by its surface: dV/dz equals open area plus pore area, by central difference', () => {
    fc.assert(
      fc.property(shapeArbitrary, metres(0.01, 0.49), (shape, level) => {
        const geometry = geometryOf({ ...shape, hardscape: [] });
        const h = 1e-6;
        const rate = (geometry.openVolumeAt(level + h) - geometry.openVolumeAt(level - h)) / (2 * h);
        const low = geometry.openAreaAt(level - h);
        const high = geometry.openAreaAt(level + h);
        expect(rate).toBeGreaterThan(low - 1e-6);
        expect(rate).toBeLessThan(high + 1e-6);
      }),
    );
  });

  it('equals a fine sum over columns of the section', () => {
    // Independent evaluation: 20000 columns across the length, each holding what its own build-up holds.
    fc.assert(
      fc.property(shapeArbitrary, metres(0.05, 0.45), (shape, level) => {
        let total = 0;
        const n = 20_000;
        const step = shape.box.length / n;
        for (let i = 0; i < n; i++) {
          const x = (i + 0.5) * step;
          const here = shape.zones.find(({ from, to }) => x >= from && x <= to) as Zone;
          const ground =
            here.groundStart +
            ((here.groundEnd - here.groundStart) * (x - here.from)) / (here.to - here.from);
          let wet = Math.max(0, level - ground);
          let bottom = 0;
          for (const [k, layer] of here.layers.entries()) {
            const top = k === here.layers.length - 1 ? ground : Math.min(ground, bottom + layer.thickness);
            wet += layer.porosity * Math.max(0, Math.min(level, top) - Math.min(level, bottom));
            bottom = Math.max(bottom, top);
          }
          total += wet * step * shape.box.width;
        }
        expect(geometryOf({ ...shape, hardscape: [] }).volumeAt(level)).toBeCloseTo(total, 4);
      }),
      { numRuns: 25 },
    );
  });
});

describe('what cannot stand', () => {
  const sound = {
    box: box(1, 0.5, 0.6),
    zones: [
      zone({ from: 0, to: 1, groundStart: 0.05, groundEnd: 0.05, layers: [{ ...gravel, thickness: 0.05 }] }),
    ],
    hardscape: [],
    water: { level: 0.2 } as Plan['water'],
  };
  const first = sound.zones[0] as Zone;
  const places = (change: Partial<typeof sound>) =>
    checkGeometry({ ...sound, ...change }).map(({ place }) => place);

  it('nothing in a sound plan', () => expect(places({})).toEqual([]));
  it('a zone outside the box', () =>
    expect(places({ zones: [{ ...first, to: 1.2 }] })).toEqual(['zones.zone-0.to']));
  it('overlapping zones', () =>
    expect(places({ zones: [first, { ...first, id: 'second', from: 0.8 }] })).toEqual(['zones.second.from']));
  it('a gap', () => expect(places({ zones: [{ ...first, to: 0.8 }] })).toEqual(['zones.zone-0.to']));
  it('ground above the glass', () =>
    expect(places({ zones: [{ ...first, groundEnd: 0.7 }] })).toEqual(['zones.zone-0.groundEnd']));
  it('water above the rim', () =>
    expect(places({ water: { ...sound.water, level: 0.61 } })).toEqual(['water.level']));
  it('water below the pool floor', () =>
    expect(places({ water: { ...sound.water, level: 0.04 } })).toEqual(['water.level']));
  it('layers thicker than the ground', () =>
    expect(
      places({
        zones: [
          {
            ...first,
            layers: [
              { ...gravel, thickness: 0.1 },
              { ...gravel, thickness: 0.01 },
            ],
          },
        ],
      }),
    ).toEqual(['zones.zone-0.layers']));
  it('more stone than room', () => {
    const rock = piece({ id: 'rock', kind: 'stone', volume: 0.3 });
    expect(places({ hardscape: [rock] as never })).toEqual(['hardscape.rock']);
    expect(() => geometryOf({ ...sound, hardscape: [rock] })).toThrow(RangeError);
  });
  it('pieces that together fill the water', () => {
    const course = [
      [0.5, 0.1, 0.1],
      [0.5, 0.2, 0.1],
    ] as const;
    const half = [piece({ id: 'left', volume: 0.05, course }), piece({ id: 'right', volume: 0.048, course })];
    expect(places({ hardscape: half as never })).toEqual(['hardscape.left']);
  });
  it('no level for less than no water', () =>
    expect(() => geometryOf(sound).levelAt(-1e-9)).toThrow(RangeError));
});
