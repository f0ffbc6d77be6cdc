import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plateCoefficients, plateDeflection, plateStress } from './evenly-loaded-plate.ts';
import { FOAM_WATER, FOAM_YIELD, foamMass, foamVolume, moisteningWater } from './expanding-foam.ts';
import {
  breakageFactor,
  designStrengthEuropean,
  durationFactor,
  durationFactorEuropean,
  lastingStrength,
  SURFACE_STRENGTH,
} from './glass-strength.ts';
import { floorPressure, netUplift, paneMass, submergedWeight } from './loads.ts';
import { monotoneCubic } from './monotone-cubic.ts';
import {
  GLASS_MODULUS,
  leastThickness,
  type PaneUnderWater,
  paneDeflection,
  paneLoad,
  paneStress,
  waterPush,
} from './pane-under-water.ts';
import {
  beadLength,
  CURING_RATE,
  curingTime,
  curingTimeByDiffusion,
  jointBite,
  seamLoad,
} from './sealant.ts';
import { heldWater, moistDensity } from './wet-media.ts';

const pane = (part: Partial<PaneUnderWater> = {}): PaneUnderWater => ({
  length: 0.8,
  height: 0.4,
  waterDepth: 0.4,
  topEdge: 'free',
  density: 998.2,
  ...part,
});

/**
 * Navier's double series for a plate simply supported all round under water of depth d: an independent solution.
 * Returns alpha = deflection E t^3/(p0 H^4) at its largest on a grid, Poisson's ratio 0.22.
 */
function navierDeflection(lengthRatio: number, depthRatio: number): number {
  const terms = 39;
  const loads = Array.from({ length: terms }, (_, i) => {
    const n = i + 1;
    // (2/H) times the integral of (1 - y/d) sin(n pi y/H) over 0..d, H = 1
    const k = n * Math.PI;
    return 2 * (1 / k - Math.sin(k * depthRatio) / (k * k * depthRatio));
  });
  let largest = 0;
  for (let y = 0.2; y <= 0.7; y += 0.02) {
    let w = 0;
    for (let m = 1; m <= terms; m += 2) {
      for (let n = 1; n <= terms; n++) {
        const load = (4 / (m * Math.PI)) * (loads[n - 1] as number);
        const stiffness = Math.PI ** 4 * ((m / lengthRatio) ** 2 + n ** 2) ** 2;
        w += (load / stiffness) * Math.sin((m * Math.PI) / 2) * Math.sin(n * Math.PI * y);
      }
    }
    largest = Math.max(largest, w);
  }
  return largest * 12 * (1 - 0.22 ** 2);
}

describe('panes under water', () => {
  it('a braced pane bends as the double series says', () => {
    for (const [lengthRatio, depthRatio] of [
      [1, 1],
      [1.5, 1],
      [2, 0.5],
      [3, 0.75],
      [0.5, 1],
    ] as const) {
      const load = paneLoad(
        pane({ topEdge: 'braced', length: 0.4 * lengthRatio, waterDepth: 0.4 * depthRatio }),
      );
      expect(load.deflectionCoefficient / navierDeflection(lengthRatio, depthRatio)).toBeCloseTo(1, 2);
    }
  });
  it('between its entries the table follows the double series too', () => {
    for (const [lengthRatio, depthRatio] of [
      [1.2, 1],
      [1.75, 0.6],
      [2.3, 0.85],
      [0.8, 0.4],
    ] as const) {
      const load = paneLoad(
        pane({ topEdge: 'braced', length: 0.4 * lengthRatio, waterDepth: 0.4 * depthRatio }),
      );
      expect(
        Math.abs(load.deflectionCoefficient / navierDeflection(lengthRatio, depthRatio) - 1),
      ).toBeLessThan(0.02);
    }
  });
  it('more water, longer panes and a free edge bear more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 1.4, noNaN: true }),
        fc.double({ min: 0.1, max: 0.39, noNaN: true }),
        (length, waterDepth) => {
          const here = pane({ length, waterDepth });
          const stress = paneStress(here, 0.008);
          expect(paneStress({ ...here, waterDepth: waterDepth + 0.01 }, 0.008)).toBeGreaterThan(stress);
          expect(paneStress({ ...here, length: length * 1.05 }, 0.008)).toBeGreaterThan(stress);
          expect(paneDeflection({ ...here, topEdge: 'braced' }, 0.008, GLASS_MODULUS)).toBeLessThanOrEqual(
            paneDeflection(here, 0.008, GLASS_MODULUS) * 1.01,
          );
        },
      ),
    );
  });
  it('the least thickness just reaches the allowed stress', () => {
    expect(paneStress(pane(), leastThickness(pane(), 4e6))).toBeCloseTo(4e6, 3);
  });
  it('refuse shapes beyond the table', () => {
    expect(() => paneLoad(pane({ length: 2 }))).toThrow(RangeError);
    expect(() => paneLoad(pane({ waterDepth: 0.41 }))).toThrow(RangeError);
    expect(() => plateCoefficients(0.9)).toThrow(RangeError);
  });
  it('the seams together carry the whole push', () => {
    const { bottom, top } = seamLoad(1000, 0.3);
    expect(bottom + top).toBeCloseTo(0.5 * 1000 * 0.3, 10);
    expect(waterPush(1.2, 0.3, 998.2)).toEqual({
      force: expect.closeTo(528.6, 0),
      height: expect.closeTo(0.1, 12),
    });
  });
});

describe('even plates (Roark, table 11.4, case 1a)', () => {
  it('give the printed coefficients at the printed ratios', () => {
    expect(plateCoefficients(1.4)).toEqual({
      stress: expect.closeTo(0.453, 10),
      deflection: expect.closeTo(0.077, 10),
    });
    expect(plateCoefficients(9)).toEqual({ stress: 0.75, deflection: 0.1421 });
  });
  it('a 10 mm base held at its rim only, 1 by 0.5 m under 0.35 m of water: 5.2 MPa, 0.34 mm', () => {
    const plate = { pressure: 998.2 * 9.80665 * 0.35, shortSide: 0.5, thickness: 0.01 };
    expect(plateStress(plate, 0.6102) / 1e6).toBeCloseTo(5.23, 2);
    expect(plateDeflection(plate, 0.111, GLASS_MODULUS) * 1000).toBeCloseTo(0.34, 2);
  });
});

describe('strength of glass', () => {
  it('European factors as printed: 30 s 0.89, a week 0.48, 50 years 0.29', () => {
    for (const [seconds, factor] of [
      [30, 0.89],
      [604800, 0.48],
      [1.5768e9, 0.29],
    ] as const) {
      expect(Math.abs(durationFactorEuropean(seconds) - factor)).toBeLessThan(0.006);
    }
    const factors = { characteristic: 45e6, edge: 1, duration: 0.29, surface: 1, material: 1.8 };
    expect(designStrengthEuropean(factors) / 1e6).toBeCloseTo(7.25, 6);
  });
  it('NCSEA: 0.315 for ten years, 0.550 for twelve hours, 0.681 at 1 in 1000', () => {
    expect(durationFactor(10 * 365.25 * 86400)).toBeCloseTo(0.315, 3);
    expect(durationFactor(12 * 3600)).toBeCloseTo(0.55, 3);
    expect(breakageFactor(0.001, 0.22) / 0.681114447).toBeCloseTo(1, 3);
    expect(breakageFactor(0.008, 0.22)).toBe(1);
    expect(lastingStrength(SURFACE_STRENGTH, 10 * 365.25 * 86400, 0.001) / 5e6).toBeCloseTo(1, 2);
  });
});

describe('loads, joints and media', () => {
  it('a pane of 6 mm, 1.2 by 0.5 m, weighs 9 kg', () => expect(paneMass(0.6, 0.006)).toBeCloseTo(9, 12));
  it('243 kg on 0.6 m2 press with 4 kPa', () =>
    expect(floorPressure(242.6, 0.6) / 1000).toBeCloseTo(3.965, 3));
  it('cork floats, and a stone weighs less by the water it displaces', () => {
    expect(netUplift(0.002, 200, 998.2)).toBeCloseTo(15.66, 2);
    expect(submergedWeight(2.6, 2600, 1000)).toBeCloseTo(9.80665 * (2.6 - 1), 10);
  });
  it('silicone: 6 mm take two days by rate and four by diffusion', () => {
    expect(curingTime(0.006, CURING_RATE) / 3600).toBeCloseTo(48, 10);
    expect(curingTimeByDiffusion(0.006, 0.003, 86400) / 3600).toBeCloseTo(96, 10);
    expect(beadLength(295e-6, 36e-6)).toBeCloseTo(8.19, 2);
    expect(jointBite(0.6, 1000, 138e3) * 1000).toBeCloseTo(2.174, 3);
  });
  it('structural glazing, Kubal p. 5.51: 8 ft, 60 lbf/ft2, 20 lbf/in2 need an inch of bite (2.54 cm)', () => {
    expect(jointBite(8 * 0.3048, 60 * 47.88, 20 * 6894.8) / 0.0254).toBeCloseTo(1, 2);
  });
  it('foam: a 750 mL can makes 26 L of 0.7 kg and wants 40 mL of water', () => {
    expect(foamMass(foamVolume(0.75e-3, FOAM_YIELD))).toBeCloseTo(0.709, 3);
    expect(moisteningWater(3, FOAM_WATER * 0.75e-3)).toBeCloseTo(120e-6, 10);
  });
  it('moist media carry their water', () => {
    expect(moistDensity(1550, 0.4, 998.2)).toBeCloseTo(1949.3, 1);
    expect(heldWater(0.6, 9)).toBeCloseTo(5.4, 12);
  });
});

describe('monotone cubic', () => {
  const series = fc
    .array(
      fc.tuple(fc.double({ min: 0.1, max: 2, noNaN: true }), fc.double({ min: 0.01, max: 3, noNaN: true })),
      {
        minLength: 3,
        maxLength: 8,
      },
    )
    .map((steps) => {
      let [x, y] = [0, 0];
      return steps.map(([dx, dy]) => {
        x += dx;
        y += dy;
        return [x, y] as const;
      });
    });
  it('passes through its points and rises where they rise', () => {
    fc.assert(
      fc.property(series, fc.double({ min: 0, max: 0.98, noNaN: true }), (points, place) => {
        const xs = points.map(([x]) => x);
        const ys = points.map(([, y]) => y);
        for (const [x, y] of points) expect(monotoneCubic(xs, ys, x)).toBeCloseTo(y, 9);
        const [first, last] = [xs[0] as number, xs.at(-1) as number];
        const x = first + place * (last - first);
        const step = 0.01 * (last - first);
        expect(monotoneCubic(xs, ys, x + step)).toBeGreaterThan(monotoneCubic(xs, ys, x) - 1e-12);
      }),
    );
  });
});
