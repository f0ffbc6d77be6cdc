import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { netElement, type Stoichiometry } from '../process/stoichiometry.ts';
import { acidityResponse } from './acidity-response.ts';
import { ammoniaOxidation, ammoniaOxidationStoichiometry } from './ammonia-oxidation.ts';
import { molarYield } from './film-oxidation.ts';
import { nitriteOxidation, nitriteOxidationStoichiometry, nitrousAcidConstant } from './nitrite-oxidation.ts';
import { arrheniusResponse } from './temperature-response.ts';

const DAY = 86400;
const FILM = {
  maximumGrowth: 0.75,
  activationEnergy: 68,
  yield: 0.18,
  oxygenHalf: 0.4,
  inorganicCarbonHalf: 0.1,
  phosphateHalf: 0.01,
  acidSide: 6.4,
  alkalineSide: 9.6,
  arealCapacity: 0.2,
  decayRate: 0.08,
  decayTheta: 1.05,
};
const AMMONIA_FILM = { ...FILM, ammoniaHalf: 0.2, filmTransfer: 1.4 };
const NITRITE_FILM = { ...FILM, nitrogenHalf: 0.15, ammoniaInhibition: 46, nitrousAcidInhibition: 3.4 };
/** Everything plentiful, at the best acidity, 20 °C. */
const PLENTY = {
  ammonium: 1e6,
  unionisedAmmonia: 5e4,
  nitrite: 1e6,
  oxygen: 1e6,
  dissolvedInorganicCarbon: 1e6,
  phosphate: 1e6,
  hydrogenActivity: 1e-8,
  waterVolume: 1,
  waterTemperature: 20,
  submergedArea: 1,
};

/** g O2 used per g N oxidised. */
function oxygenUse(stoichiometry: Stoichiometry): number {
  return (-stoichiometry.oxygen! * 31.998) / 14.007;
}

describe('ammonia oxidation', () => {
  const process = listed(ammoniaOxidation);
  it('keeps the contract', () => checkProcess(process));

  it('uses 3.43 g of oxygen and 7.14 mg of alkalinity as CaCO3 per unit of nitrogen without growth', () => {
    // US EPA 1993, Process Design Manual for Nitrogen Control (recalled; the arithmetic is exact)
    const bare = ammoniaOxidationStoichiometry(0);
    expect(oxygenUse(bare)).toBeCloseTo(3.43, 2);
    expect((-netElement(bare, 'charge') * 50.0435) / 14.007).toBeCloseTo(7.14, 1);
    expect(netElement(bare, 'charge')).toBe(-2);
  });

  it('reaches the areal capacity on a thick film and the specific rate on a thin one', () => {
    const rate = (ammoniaOxidisers: number): number =>
      ratesByName(process, AMMONIA_FILM, { ...PLENTY, ammoniaOxidisers })['oxidation of ammonia']! * DAY;
    expect(rate(1e6) * 14.007).toBeCloseTo(0.2, 4);
    expect(rate(1e-9) / (1e-9 * (0.75 / molarYield(0.18)))).toBeCloseTo(1, 4);
  });

  it('is half saturated at 1.93 mg/L on a thick film of bacteria, at the half saturation of the cells on a thin one', () => {
    // Zhu & Chen 1999, films of aquaculture at 27.2 °C: 1859 mg/m2/d at most, half of it at 1.93 mg/L
    const warm = 27.2;
    const factor = arrheniusResponse(68000, 20)(warm);
    // 0.6 mg N/L half saturates the cells where a twentieth is un-ionised
    const film = { ...AMMONIA_FILM, ammoniaHalf: (1000 * 0.6) / 14.007 / 20, arealCapacity: 1.859 / factor };
    const rate = (ammoniaOxidisers: number, milligrams: number): number =>
      ratesByName(process, film, {
        ...PLENTY,
        waterTemperature: warm,
        ammoniaOxidisers,
        ammonium: milligrams / 14.007,
        unionisedAmmonia: milligrams / 14.007 / 20,
      })['oxidation of ammonia']!;
    expect(rate(1e6, 1.93) / rate(1e6, 1e6)).toBeCloseTo(0.5, 2);
    expect(rate(1e-6, 0.6) / rate(1e-6, 1e6)).toBeCloseTo(0.5, 3);
  });

  it('takes un-ionised ammonia: a tenth of it counts for as little as a tenth of all ammonia', () => {
    const rate = (ammonium: number, unionisedAmmonia: number): number =>
      ratesByName(process, AMMONIA_FILM, { ...PLENTY, ammoniaOxidisers: 1e-6, ammonium, unionisedAmmonia })[
        'oxidation of ammonia'
      ]!;
    // Jung et al. 2022: ammonia, not ammonium, is the substrate of archaea, complete oxidisers and bacteria
    expect(rate(0.01, 2e-5) / rate(0.001, 2e-5)).toBeCloseTo(1, 2);
    expect(rate(0.01, 2e-4) / rate(0.01, 2e-5)).toBeCloseTo(0.5 * 11, 2);
    expect(rate(0.01, 0)).toBe(0);
  });

  it('keeps 0.18 (0.13 to 0.23) of its speed at 1 °C', () => {
    // Hoang et al. 2014: long exposure of a moving bed to 1 °C against 20 °C
    const rate = (waterTemperature: number): number =>
      ratesByName(process, AMMONIA_FILM, { ...PLENTY, ammoniaOxidisers: 1, waterTemperature })[
        'oxidation of ammonia'
      ]!;
    const ratio = rate(1) / rate(20);
    expect(ratio).toBeGreaterThan(0.129);
    expect(ratio).toBeLessThan(0.231);
  });

  it('stops where carbon, phosphate or film surface is missing', () => {
    for (const missing of ['dissolvedInorganicCarbon', 'phosphate', 'submergedArea'] as const) {
      const rates = ratesByName(process, AMMONIA_FILM, { ...PLENTY, ammoniaOxidisers: 1, [missing]: 0 });
      expect(rates['oxidation of ammonia']).toBe(0);
    }
  });
});

describe('nitrite oxidation', () => {
  const process = listed(nitriteOxidation);
  it('keeps the contract', () => checkProcess(process));

  it('uses 1.14 g of oxygen per g of nitrogen without growth and no alkalinity', () => {
    const bare = nitriteOxidationStoichiometry(0);
    expect(oxygenUse(bare)).toBeCloseTo(1.14, 2);
    expect(netElement(bare, 'charge')).toBe(0);
  });

  it('is halved by 46 µmol/L of free ammonia', () => {
    // Park & Bae 2009
    const rate = (unionisedAmmonia: number): number =>
      ratesByName(process, NITRITE_FILM, { ...PLENTY, nitrite: 1, nitriteOxidisers: 1, unionisedAmmonia })[
        'oxidation of nitrite'
      ]!;
    expect(rate(0.046) / rate(0)).toBeCloseTo(0.5, 10);
  });

  it('knows nitrous acid as an acid of pK 3.3', () => {
    // handbook value 3.25 to 3.40 at 25 °C
    expect(-Math.log10(nitrousAcidConstant(25))).toBeGreaterThan(3.25);
    expect(-Math.log10(nitrousAcidConstant(25))).toBeLessThan(3.4);
  });
});

describe('nitrification as a whole', () => {
  it('uses 4.57 g of oxygen per g of nitrogen without growth and about 4.3 with it', () => {
    // 4.57 by stoichiometry, 4.25 to 4.33 with growth (EPA 1993, Ebeling et al. 2006, recalled)
    expect(
      oxygenUse(ammoniaOxidationStoichiometry(0)) + oxygenUse(nitriteOxidationStoichiometry(0)),
    ).toBeCloseTo(4.57, 2);
    const first = ammoniaOxidationStoichiometry(0.18);
    const second = nitriteOxidationStoichiometry(0.06);
    const secondPerFirst = first.nitrite! / -second.nitrite!;
    const oxygen = -first.oxygen! - second.oxygen! * secondPerFirst;
    const grams = (oxygen * 31.998) / (-first.ammonium! * 14.007);
    expect(grams).toBeGreaterThan(4.2);
    expect(grams).toBeLessThan(4.35);
  });

  it('takes 7.05 to 7.14 mg of alkalinity as CaCO3 per mg of nitrogen with growth', () => {
    // Ebeling et al. 2006 (recalled): 7.05
    const first = ammoniaOxidationStoichiometry(0.18);
    const alkalinity = (netElement(first, 'charge') * 50.0435) / (first.ammonium! * 14.007);
    expect(alkalinity).toBeGreaterThan(7.0);
    expect(alkalinity).toBeLessThan(7.15);
  });
});

describe('response to acidity', () => {
  it('is 1 half way between its two pK and about half at each of them', () => {
    const response = acidityResponse(6.4, 9.6);
    expect(response(1e-8)).toBeCloseTo(1, 12);
    expect(response(10 ** -6.4)).toBeCloseTo(0.52, 1);
    expect(response(10 ** -9.6)).toBeCloseTo(0.52, 1);
    expect(response(0)).toBe(0);
  });
});
