import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../plan/plan.ts';
import { discIlluminance, panelIlluminance } from './photometry.ts';
import { lampSegments, oppositeViewFactor, surfaceLight } from './surface-light.ts';

const lamp = (onAt: number, hours: number, photonFlux = 70) => ({
  name: 'lamp',
  power: 30,
  photonFlux,
  onAt,
  hours,
});
const lit = (lamps: Plan['devices']['lamps'], open = 0): Pick<Plan, 'box' | 'devices' | 'water'> => ({
  box: {
    length: 0.9,
    width: 0.45,
    height: 0.5,
    glassThickness: 0.006,
    coverOpenFraction: open,
    coverTransmission: 0.9,
  },
  devices: { lamps },
  water: { level: 0.2 } as Plan['water'],
});

describe('view factor of opposite rectangles', () => {
  it('is 0.1998 for the opposite faces of a cube', () => {
    // Incropera & DeWitt, chart and formula of aligned parallel rectangles, X = Y = 1 (memory)
    expect(oppositeViewFactor(1, 1, 1)).toBeCloseTo(0.1998, 4);
  });
  it('tends to 1 when close and falls with distance', () => {
    expect(oppositeViewFactor(1, 1, 1e-3)).toBeGreaterThan(0.99);
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 2, noNaN: true }), (h) => {
        expect(oppositeViewFactor(0.9, 0.45, h)).toBeGreaterThan(oppositeViewFactor(0.9, 0.45, h * 1.1));
      }),
    );
  });
  it('is that of a small panel far away: area over pi h squared', () => {
    expect(oppositeViewFactor(0.1, 0.1, 5) / (0.01 / (Math.PI * 25))).toBeCloseTo(1, 2);
  });
});

describe('light at the water', () => {
  it('lies below all photons over the base and scales with them', () => {
    const ppfd = surfaceLight(lit([lamp(8, 12)]));
    expect(ppfd).toBeLessThan((70 * 0.9) / (0.9 * 0.45));
    expect(ppfd).toBeGreaterThan(0.3 * ((70 * 0.9) / (0.9 * 0.45)));
    expect(surfaceLight(lit([lamp(8, 12, 140)]))).toBeCloseTo(2 * ppfd, 10);
  });
  it('an open cover passes what glass would keep', () => {
    expect(surfaceLight(lit([lamp(8, 12)], 1))).toBeCloseTo(surfaceLight(lit([lamp(8, 12)])) / 0.9, 10);
  });
});

describe('segments of the day', () => {
  it('cover 0 to 24 h without gaps and carry each lamp for its hours', () => {
    const time = fc.integer({ min: 0, max: 95 }).map((quarter) => quarter / 4);
    fc.assert(
      fc.property(fc.array(fc.tuple(time, time), { maxLength: 4 }), (pairs) => {
        const lamps = pairs.map(([onAt, hours]) => lamp(onAt, hours));
        const segments = lampSegments(lit(lamps));
        expect(segments[0]?.from).toBe(0);
        expect(segments.at(-1)?.to).toBe(24);
        for (const [i, { from }] of segments.slice(1).entries()) expect(from).toBe(segments[i]?.to);
        const energy = segments.reduce((sum, { from, to, lampPower }) => sum + (to - from) * lampPower, 0);
        expect(energy).toBeCloseTo(30 * pairs.reduce((sum, [, hours]) => sum + hours, 0), 8);
      }),
    );
  });
  it('wrap around midnight', () => {
    const segments = lampSegments(lit([lamp(20, 8)]));
    expect(segments.map(({ from, to, lampPower }) => [from, to, lampPower])).toEqual([
      [0, 4, 30],
      [4, 20, 0],
      [20, 24, 30],
    ]);
  });
  it('one dark segment without lamps, one lit for lamps that never rest', () => {
    expect(lampSegments(lit([]))).toEqual([{ from: 0, to: 24, ppfd: 0, lampPower: 0 }]);
    expect(lampSegments(lit([lamp(0, 24)])).map(({ lampPower }) => lampPower)).toEqual([30]);
  });
  it('refuse times that are not of a day', () => {
    expect(() => lampSegments(lit([lamp(24, 1)]))).toThrow(RangeError);
    expect(() => lampSegments(lit([lamp(3, 25)]))).toThrow(RangeError);
  });
});

describe('photometry', () => {
  it('a square panel and a disc of the same small area agree from afar', () => {
    const side = 0.02;
    const radius = side / Math.sqrt(Math.PI);
    expect(panelIlluminance(100, side, side, 1) / discIlluminance(100 / side ** 2, radius, 1)).toBeCloseTo(
      1,
      3,
    );
  });
});
