import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { litterBreakdown } from './litter-breakdown.ts';

const DAY = 86400;
const process = listed(litterBreakdown);
const PARAMETERS = {
  breakdownRate: 0.01,
  breakdownTheta: 1.06,
  fungalGrowth: 0.25,
  fungalDeath: 0.05,
  fungalYield: 0.25,
  fragments: 1,
  nitrogenHalf: 0.05,
  phosphorusHalf: 0.005,
  oxygenHalf: 0.2,
  acidLoss: 0.55,
  leachingRate: 1.2,
  leachingTheta: 1,
  labileShare: 0.5,
};
/** Ample air and nutrients, neutral. */
const WATER = {
  oxygen: 1e6,
  ammonium: 1e6,
  phosphate: 1e6,
  waterVolume: 1,
  waterTemperature: 20,
  hydrogenActivity: 0,
};
const OAK = { litterCarbon: 1, litterNitrogen: 0.016, litterPhosphorus: 0.0005, litterPace: 1 };
/** Fungi at rest: phi (1 - m/mu) of the leaves, phi = k y / (m (1 - m/mu)(1 + f)), worked by hand: 0.025. */
const AT_REST = (0.01 * 0.25) / (0.05 * 2);

describe('breakdown of leaf litter', () => {
  it('keeps the contract', () => checkProcess(process));

  it('is lost at the breakdown rate once fungi are at rest', () => {
    const change = changesByState(process, PARAMETERS, { ...WATER, ...OAK, litterFungi: AT_REST });
    expect(-change.litterCarbon! * DAY).toBeCloseTo(0.01, 5);
    expect(Math.abs(change.litterFungi! * DAY)).toBeLessThan(1e-7);
  });

  it('waits for the fungi', () => {
    const change = changesByState(process, PARAMETERS, { ...WATER, ...OAK, litterFungi: 0.002 });
    expect(-change.litterCarbon! * DAY).toBeLessThan(0.004);
    expect(change.litterFungi!).toBeGreaterThan(0);
  });

  it('takes nitrogen from the water for poor leaves and none for rich ones', () => {
    const uptake = (litterNitrogen: number) =>
      changesByState(process, PARAMETERS, {
        ...WATER,
        ...OAK,
        litterNitrogen,
        litterPhosphorus: 0.01,
        litterFungi: AT_REST,
      }).ammonium ?? 0;
    expect(uptake(0.016)).toBeLessThan(0);
    expect(uptake(0.04)).toBe(0);
  });

  it('is slowed by acid water to 0.57 of its rate or somewhat less', () => {
    // Dangles & Chauvet 2003: beech at most 0.00100 per day at pH 4.7 to 4.9, at least 0.00175 at pH 6.4 to 7.1
    const rest = (hydrogenActivity: number): number => {
      const acid = 1 - (0.55 * hydrogenActivity) / (hydrogenActivity + 5e-6);
      const change = changesByState(process, PARAMETERS, {
        ...WATER,
        ...OAK,
        hydrogenActivity,
        litterFungi: AT_REST * acid,
      });
      return -change.litterCarbon!;
    };
    const ratio = rest(1.6e-5) / rest(1.8e-7);
    expect(ratio).toBeGreaterThan(0.45);
    expect(ratio).toBeLessThan(0.65);
  });

  it('leaches the soluble part apart, half of it coloured', () => {
    const change = changesByState(process, PARAMETERS, { ...WATER, litterLeachable: 0.1 });
    expect(change.dissolvedOrganicCarbon! * DAY).toBeCloseTo(0.06, 12);
    expect(change.labileOrganicCarbon! * DAY).toBeCloseTo(0.06, 12);
  });

  it('stops where nothing can breathe', () => {
    const rates = ratesByName(process, PARAMETERS, { ...WATER, ...OAK, oxygen: 0, litterFungi: 0.01 });
    expect(rates['fungi grown with ammonium']).toBe(0);
    expect(rates['detritus from litter, carbon']).toBe(0);
  });
});
