import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../numerics/random.ts';
import { energeticsOf, lengthOf, midDayLength, somaShare, structureOf } from './energetics.ts';
import { closureOver, freeLiving, passDays, tankOf, timesTwice } from './grazer-test-kit.ts';
import { feedingSquare, lengthBefore, scaledTime } from './growth-curve.ts';
import { DEATHLESS, GRAZER } from './life-test-kit.ts';

/** Shell lengths of the pond snail Physella gyrina at 20 °C by week [mm]: DeWitt 1954, via its Add-my-Pet file. */
const GYRINA = [
  [3, 3.71],
  [4, 6.54],
  [5, 8.75],
  [6, 10.17],
  [8, 12.04],
  [10, 12.25],
  [12, 12.55],
  [16, 12.63],
  [20, 12.79],
] as const;

/** Lengths of a newborn with ample food by day, on the code of the day [mm]. */
function grown(traits: typeof GRAZER, days: number): number[] {
  const energetics = energeticsOf(traits);
  const lengths = [traits.lengthAtBirth];
  let length = traits.lengthAtBirth;
  for (let day = 0; day < days; day += 1) {
    const middle = midDayLength(energetics, length, 1, 1);
    const carbon = energetics.assimilation * feedingSquare(energetics, middle);
    const forGrowth = somaShare(energetics, middle) * carbon - energetics.upkeep * middle ** 3;
    const structure = (energetics.growthYield * forGrowth) / (1 + energetics.store);
    length = lengthOf(energetics, structureOf(energetics, length) + structure);
    lengths.push(length);
  }
  return lengths;
}

describe('young that start slowly', () => {
  const slow = { ...GRAZER, lengthAtBirth: 0.75, lengthAtEnd: 12.9, growthRate: 0.0633 };

  it('meet the growth of pond snails from week to week, which a curve without it cannot', () => {
    const withStart = grown({ ...slow, lengthAccelerated: 5.81 }, 150);
    const without = grown(slow, 150);
    for (const [week, length] of GYRINA) {
      expect(Math.abs(withStart[7 * week]! / length - 1)).toBeLessThan(0.04);
    }
    expect(without[21]! / GYRINA[0][1]).toBeGreaterThan(2);
  });

  it.each([
    [0, 0.9],
    [0.05, 0.3],
  ])('grow in proportion to their length, then along the old curve (upkeep %s)', (upkeep, shareToSoma) => {
    const traits = { ...slow, upkeep, shareToSoma, lengthAccelerated: 5.81 };
    const lengths = grown(traits, 80);
    const pace = traits.growthRate * (12.9 / 5.81 - 1);
    expect(lengths[10]! / (0.75 * Math.exp(10 * pace))).toBeCloseTo(1, 2);
    const tail = lengths[60]!;
    expect(lengths[80]! / (12.9 - (12.9 - tail) * Math.exp(-20 * traits.growthRate))).toBeCloseTo(1, 3);
  });

  it('eat as the grown do per surface once they are as long', () => {
    const energetics = { accelerated: 4 };
    expect(feedingSquare(energetics, 4)).toBe(16);
    expect(feedingSquare(energetics, 6)).toBe(36);
    expect(feedingSquare(energetics, 2)).toBe(2);
    expect(feedingSquare({ accelerated: 0 }, 2)).toBe(4);
  });

  it('reach a length in the time from which that length is found again', () => {
    const lengths = fc.record({
      end: fc.double({ min: 5, max: 20, noNaN: true }),
      part: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
      from: fc.double({ min: 0.02, max: 0.95, noNaN: true }),
      to: fc.double({ min: 0.02, max: 0.95, noNaN: true }),
    });
    fc.assert(
      fc.property(lengths, ({ end, part, from, to }) => {
        const curve = { end, accelerated: part * end };
        const [short, long] = from < to ? [from * end, to * end] : [to * end, from * end];
        expect(lengthBefore(curve, long, scaledTime(curve, short, long)) / short).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('a population of slow starters', () => {
  const traits = { lengthAccelerated: 4 };

  it.each(['expected', 'drawn'] as const)('closes carbon, nitrogen and phosphorus (%s)', (mode) => {
    const demography = mode === 'expected' ? mode : createRandom(3, 'slow');
    const tank = tankOf({ founders: 200, demography, traits });
    expect(closureOver(tank, 150)).toBeLessThanOrEqual(1e-12);
    expect(freeLiving(tank)).toBeGreaterThan(0);
  });

  it('dies out without food', () => {
    const tank = tankOf({ traits: { ...DEATHLESS, ...traits, preferenceForDetritus: 0 } });
    passDays(tank, 120, 0);
    expect(freeLiving(tank)).toBe(0);
  });

  it('doubles when area, water, food and founders double', () => {
    expect(timesTwice(traits)).toBeCloseTo(2, 6);
  });
});
