import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { LIBRARY_MEDIANS } from './library-medians-test-kit.ts';
import { phosphateSorption } from './phosphate-sorption.ts';
import { fillTank, TAP_WATER } from './tank-test-kit.ts';

const DAY = 86400;
const PARAMETERS = { bedVelocity: 3.4, mixedDepth: 1.5 };
const process = listed(phosphateSorption);
/** mg P/L in mol/m3. */
const MILLIGRAM = 1 / 30.974;
/** A square metre of mud that binds 722 mg P/kg, half of it at 4.1 mg/L, 7.5 kg of it within reach, under 200 L. */
const SITES = (7.5 * 0.722) / 30.974;
const MUD = {
  phosphateSites: SITES,
  phosphateHalf: 4.1 * MILLIGRAM,
  phosphateBedArea: 1,
  waterVolume: 0.2,
};

/** What the mud holds when it rests under water of some phosphate [mol]. */
const atRest = (milligrams: number): number => (SITES * milligrams) / (4.1 + milligrams);

/** Phosphate that goes into the mud of a water [mol/d], below 0 when it comes out. */
function taken(milligrams: number, boundPhosphate: number): number {
  const rates = ratesByName(process, PARAMETERS, {
    ...MUD,
    phosphate: milligrams * MILLIGRAM * 0.2,
    boundPhosphate,
  });
  return DAY * (rates['phosphate bound by the ground']! - rates['phosphate given up by the ground']!);
}

describe('phosphate of mud and soil', () => {
  it('keeps the contract', () => checkProcess(process));

  it('rests where the isotherm says: 142 mg/kg at 1 mg/L on mud that binds 722', () => {
    // mud of the Fushi reservoir: 619 to 826 mg/kg at most, 114 to 171 at 1 mg/L
    const held = (0.142 * 7.5) / 30.974;
    expect(Math.abs(taken(1, held))).toBeLessThan(0.01 * taken(1, 0));
    expect(taken(1, 0.95 * held)).toBeGreaterThan(0);
    expect(taken(1, 1.05 * held)).toBeLessThan(0);
  });

  it('takes from fresh mud what a wetland does: 12.5 m of water a year', () => {
    // Kadlec 2016, median of 37 large wetlands
    expect((taken(0.05, 0) * 365) / (0.05 * MILLIGRAM)).toBeCloseTo(12.5, 0);
  });

  it('binds from water richer than the mud rests in, gives up to poorer, and gives up nothing it does not hold', () => {
    const level = fc.double({ min: 0.001, max: 20, noNaN: true });
    fc.assert(
      fc.property(level, level, (water, mud) => {
        fc.pre(Math.abs(water - mud) > 1e-6);
        expect(Math.sign(taken(water, atRest(mud)))).toBe(Math.sign(water - mud));
      }),
    );
    expect(taken(0, 0)).toBe(0);
    expect(taken(0, atRest(1))).toBeLessThan(0);
  });

  it('sets a charge free as alkalinity for each phosphate bound', () => {
    // a hydroxide leaves the surface for every phosphate that comes: the water loses an anion and no cation
    const change = changesByState(process, PARAMETERS, { ...MUD, phosphate: 0.01 });
    expect(Object.keys(change).sort()).toEqual(['boundPhosphate', 'phosphate']);
    expect(change.boundPhosphate).toBe(-change.phosphate!);
  });
});

describe('a tank of forty litres over mud', () => {
  const over = (mud: boolean, contents = {}) => {
    const tank = fillTank({
      parameters: LIBRARY_MEDIANS,
      water: { ...TAP_WATER, phosphate: 1 * MILLIGRAM },
      contents: { boundPhosphate: mud ? atRest(0.02) : 0, ...contents },
      setting: mud ? { ...MUD, waterVolume: 0.04, phosphateSites: 0.2 * SITES, phosphateBedArea: 0.2 } : {},
    });
    tank.pass(24 * 30);
    return tank;
  };

  it('closes every element', () => expect(over(true).closure()).toBeLessThan(1e-10));

  it('loses most of a dose of 1 mg P/L to it within a month, and none without', () => {
    expect(over(true).holds('phosphate')).toBeLessThan(0.25 * MILLIGRAM);
    expect(over(false).holds('phosphate')).toBeGreaterThan(0.9 * MILLIGRAM);
  });
});
