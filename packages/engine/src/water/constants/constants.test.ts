import { describe, expect, it } from 'vitest';
import { ammoniumAcidity } from './ammonia.ts';
import {
  logCarbonDioxideSolubility,
  logFirstDissociation,
  logIonProductOfWater,
  logSecondDissociation,
} from './carbonate.ts';
import { logIonPairs } from './ion-pairs.ts';
import { logAragoniteSolubility, logCalciteSolubility, logGypsumSolubility } from './minerals.ts';
import { logPhosphate } from './phosphate.ts';

const at = (celsius: number): number => celsius + 273.15;

describe('carbonate constants', () => {
  // Plummer & Busenberg 1982: log KH -1.468, log K1 -6.352, log K2 -10.329, calcite -8.480, aragonite -8.336 at 25 degC.
  it.each([
    ['KH', logCarbonDioxideSolubility, -1.468],
    ['K1', logFirstDissociation, -6.352],
    ['K2', logSecondDissociation, -10.329],
    ['calcite', logCalciteSolubility, -8.48],
    ['aragonite', logAragoniteSolubility, -8.336],
    // Harned & Owen: pKw 13.995 to 14.000; Langmuir & Melchior 1985: gypsum -4.58.
    ['Kw', logIonProductOfWater, -13.998],
    ['gypsum', logGypsumSolubility, -4.58],
  ])('%s at 25 degC', (_name, log, expected) => {
    expect(Math.abs(log(at(25)) - expected)).toBeLessThan(0.003);
  });

  // Weiss 1974, fresh water, an independent fit of the same solubility: ln K0 = -58.0931 + 9050.69/T + 22.2940 ln(T/100).
  it.each([5, 15, 25, 30])('agrees with Weiss 1974 on CO2 within 0.5 %% at %d degC', (celsius) => {
    const T = at(celsius);
    const weiss = (-58.0931 + 9050.69 / T + 22.294 * Math.log(T / 100)) / Math.LN10;
    expect(Math.abs(logCarbonDioxideSolubility(T) - weiss)).toBeLessThan(0.0022);
  });

  it('lowers the solubility of CO2 and of calcite and raises the ion product of water as it warms', () => {
    for (let celsius = 1; celsius < 50; celsius++) {
      expect(logCarbonDioxideSolubility(at(celsius))).toBeLessThan(
        logCarbonDioxideSolubility(at(celsius - 1)),
      );
      expect(logCalciteSolubility(at(celsius))).toBeLessThan(logCalciteSolubility(at(celsius - 1)));
      expect(logIonProductOfWater(at(celsius))).toBeGreaterThan(logIonProductOfWater(at(celsius - 1)));
    }
  });
});

describe('ion pairs', () => {
  // Plummer & Busenberg 1982, 25 degC: CaHCO3+ 1.106, CaCO3 3.224; Ball & Nordstrom 1991: MgHCO3+ 1.07, MgCO3 2.98,
  // CaSO4 2.30, MgSO4 2.37, NaSO4- 0.70, KSO4- 0.85, HSO4- 1.988.
  it.each([
    ['calciumBicarbonate', 1.106],
    ['calciumCarbonate', 3.224],
    ['magnesiumBicarbonate', 1.07],
    ['magnesiumCarbonate', 2.98],
    ['calciumSulfate', 2.3],
    ['magnesiumSulfate', 2.37],
    ['sodiumSulfate', 0.7],
    ['potassiumSulfate', 0.85],
    ['hydrogenSulfate', 1.988],
  ] as const)('%s', (key, expected) => {
    expect(Math.abs(logIonPairs(at(25))[key] - expected)).toBeLessThan(0.006);
  });
});

describe('phosphate and ammonia', () => {
  // pKa of phosphoric acid at 25 degC 2.15 to 2.17, 7.20 to 7.21, 12.35 (NIST; CRC Handbook).
  it('has the pKa of phosphoric acid', () => {
    const { hydrogen, dihydrogen, trihydrogen } = logPhosphate(at(25));
    expect(Math.abs(hydrogen - 12.35)).toBeLessThan(0.01);
    expect(Math.abs(dihydrogen - hydrogen - 7.207)).toBeLessThan(0.01);
    expect(Math.abs(trihydrogen - dihydrogen - 2.16)).toBeLessThan(0.02);
  });
  // Emerson et al. 1975, table: pKa 9.40 at 20 degC, 9.25 at 25 degC.
  it('has the pKa of ammonium', () => {
    expect(ammoniumAcidity(at(20))).toBeCloseTo(9.4, 2);
    expect(ammoniumAcidity(at(25))).toBeCloseTo(9.25, 2);
  });
});
