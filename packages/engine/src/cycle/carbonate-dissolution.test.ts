import { describe, expect, it } from 'vitest';
import { compose } from '../process/compose.ts';
import { listed, listedDerivation } from '../process/contract.ts';
import { checkProcess, ratesByName, valuesWith } from '../process/process-test-kit.ts';
import { VARIABLE_INDEX } from '../variables/variables.ts';
import { speciate } from '../water/speciate.ts';
import { waterChemistry } from '../water/water-chemistry.ts';
import { carbonateDissolution } from './carbonate-dissolution.ts';
import {
  aragoniteOverCalcite,
  calciteCapacity,
  carbonateHeld,
  carbonateSurface,
} from './carbonate-surface.ts';

/** One litre of distilled water over a carbonate so large that its surface does not change. */
interface Case {
  readonly temperature: number;
  /** [cm2/L] */
  readonly area: number;
  /** Partial pressure of CO2 before the bottle is shut, or all along when `open` [Pa]. */
  readonly pressure: number;
  readonly open: boolean;
  /** [d, mmol/L] */
  readonly calcium: readonly (readonly [number, number])[];
}

// PHREEQC 3.7.3, phreeqc.dat, its own Calcite RATES block (Plummer et al. 1978), tolerance 4 % or 0.003 mmol/L
const CASES: readonly Case[] = [
  {
    temperature: 25,
    area: 10,
    pressure: 0,
    open: false,
    calcium: [
      [0.25, 0.025202],
      [0.5, 0.047541],
      [1, 0.080442],
      [3, 0.11957],
      [10, 0.12299],
    ],
  },
  {
    temperature: 20,
    area: 100,
    pressure: 42.24,
    open: false,
    calcium: [
      [0.25, 0.11434],
      [0.5, 0.12054],
      [2, 0.12081],
    ],
  },
  {
    temperature: 25,
    area: 10,
    pressure: 42.24,
    open: true,
    calcium: [
      [0.25, 0.029608],
      [1, 0.10735],
      [3, 0.2827],
      [7, 0.46783],
      [10, 0.51504],
    ],
  },
];

/** No film, nothing grown on the grains, no phosphate, no scale. */
const CLEAN_AND_STIRRED = {
  roughness: 1,
  filmConductance: 1e9,
  agedRate: 1,
  ageingTime: 100,
  phosphateHalf: 1e6,
  scaleThreshold: 1000,
  scaleRate: 0,
};

const GRAIN = 1e-3;
const DAY = 86400;
const STEP = DAY / 400;

function inorganicCarbonAt(temperature: number, pressure: number, calcium: number): number {
  return speciate({ temperature, composition: { calcium }, carbon: { kind: 'open', pressure } })
    .dissolvedInorganicCarbon;
}

/** Calcium [mmol/L] on each of the days, stepped with the midpoint rule. */
function dissolve({ temperature, area, pressure, open, calcium }: Case): number[] {
  const system = compose([listed(carbonateDissolution)], [listedDerivation(waterChemistry)], {
    'carbonate-dissolution': CLEAN_AND_STIRRED,
    'water-chemistry': { organicChargeDensity: 10 },
  });
  const amount = (area * 1e-4) / carbonateSurface(1, 1, GRAIN);
  const values = valuesWith({
    carbonateSolid: amount,
    carbonatePlaced: amount,
    carbonateGrain: GRAIN,
    waterVolume: 1e-3,
    waterTemperature: temperature,
    airPressure: 101325,
    dissolvedInorganicCarbon: 1e-3 * inorganicCarbonAt(temperature, pressure, 0),
  });
  const rates = new Float64Array(system.reactions.length);
  const dissolved = VARIABLE_INDEX.calcium;
  const carbon = VARIABLE_INDEX.dissolvedInorganicCarbon;
  const rateAt = (extent: number): number => {
    values[dissolved] = extent;
    values[carbon] = open ? 1e-3 * inorganicCarbonAt(temperature, pressure, extent * 1e3) : sealed + extent;
    system.evaluate(values, rates);
    return rates[0]!;
  };
  const sealed = values[carbon]!;
  const results: number[] = [];
  let extent = 0;
  let step = 0;
  for (const [day] of calcium) {
    for (; step < day * 400; step += 1) {
      extent += STEP * rateAt(extent + (STEP / 2) * rateAt(extent));
    }
    results.push(extent * 1e3);
  }
  return results;
}

describe('dissolution of carbonate', () => {
  it('keeps the contract', () => checkProcess(listed(carbonateDissolution)));

  it.each(CASES)('follows the reference at $temperature °C, $area cm²/L', (reference) => {
    const computed = dissolve(reference);
    for (const [i, [, expected]] of reference.calcium.entries()) {
      expect(Math.abs(computed[i]! - expected)).toBeLessThan(Math.max(0.003, 0.04 * expected));
    }
  });

  it('has the surface of smooth spheres', () => {
    // 6 / (2.71 g/cm3 * 1 mm) = 0.00221 m2/g; 1 mol of CaCO3 is 100.09 g
    expect(carbonateSurface(1, 1, 1e-3) / 100.087).toBeCloseTo(0.00221, 5);
  });

  it('loses surface as the two thirds power of the mass', () => {
    expect(carbonateSurface(0.125, 1, 1e-3) / carbonateSurface(1, 1, 1e-3)).toBeCloseTo(0.25, 12);
    expect(carbonateSurface(0, 1, 1e-3)).toBe(0);
  });

  it('holds as much calcite as published for water open to air, and twice as much for eightfold carbon dioxide', () => {
    // calcite at 10^-3.5 atm: Ca 0.494 mmol/L (water reference set, PHREEQC 3.7.3); CO2 = 10^-1.468 x 10^-3.5 mol/L
    const gas = 1000 * 10 ** (-1.468 - 3.5);
    const held = carbonateHeld(calciteCapacity(25), gas);
    // activities taken as concentrations understate it by a tenth
    expect(Math.abs(held / 0.494 - 1)).toBeLessThan(0.12);
    expect(carbonateHeld(calciteCapacity(25), 8 * gas) / held).toBeGreaterThan(1.9);
  });

  it('has aragonite less saturated than calcite by the published constants', () => {
    // log K at 25 degC -8.4798 and -8.3361 (Plummer & Busenberg 1982)
    expect(Math.log10(aragoniteOverCalcite(25))).toBeCloseTo(-8.4798 + 8.3361, 3);
  });

  it('is slowed by still water, age and phosphate, never hastened', () => {
    const rate = (change: Readonly<Record<string, number>>, entries: Readonly<Record<string, number>> = {}) =>
      ratesByName(
        listed(carbonateDissolution),
        { ...CLEAN_AND_STIRRED, ...change },
        {
          carbonateSolid: 1,
          carbonatePlaced: 1,
          carbonateGrain: GRAIN,
          carbonDioxide: 0.014,
          hydrogenActivity: 1e-7,
          waterVolume: 1,
          waterTemperature: 25,
          ...entries,
        },
      )['dissolution of carbonate']!;
    const clean = rate({});
    expect(rate({ filmConductance: 1.6 })).toBeLessThan(0.8 * clean);
    expect(rate({ agedRate: 0.4 }, { carbonateAge: 1e6 })).toBeCloseTo(0.4 * clean, 12);
    expect(rate({ phosphateHalf: 0.5 }, { phosphate: 1 })).toBeLessThan(clean);
  });

  it('makes scale only above the threshold', () => {
    const scale = (calciteSaturation: number) =>
      ratesByName(
        listed(carbonateDissolution),
        { ...CLEAN_AND_STIRRED, scaleThreshold: 5, scaleRate: 0.1 },
        {
          calcium: 1,
          dissolvedInorganicCarbon: 1,
          submergedArea: 1,
          waterVolume: 1,
          waterTemperature: 25,
          calciteSaturation,
        },
      ).scale!;
    expect(scale(4.9)).toBe(0);
    expect(scale(10)).toBeGreaterThan(0);
    expect(scale(20)).toBeGreaterThan(scale(10));
  });
});
