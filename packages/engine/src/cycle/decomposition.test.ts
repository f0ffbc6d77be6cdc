import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { animalRelease } from './animal-release.ts';
import { feedBreakdown } from './feed-breakdown.ts';
import { mineralisation } from './mineralisation.ts';

const DAY = 86400;
const AIRED = { oxygen: 0.26, waterVolume: 1, waterTemperature: 20 };

describe('mineralisation', () => {
  const process = listed(mineralisation);
  const parameters = {
    carbonRate: 0.1,
    nitrogenRate: 0.1,
    phosphorusRate: 0.1,
    theta: 1.075,
    oxygenHalf: 0.2,
    shareWithoutOxygen: 0.4,
  };
  const detritus = { detritusCarbon: 1, detritusNitrogen: 0.15, detritusPhosphorus: 0.01 };

  it('keeps the contract', () => checkProcess(process));

  it('halves in 6.9 days at 0.1 per day', () => {
    // ln 2 / 0.1 = 6.93 d; oxygen at 8.3 mg/L takes 2.4 % off
    const rate = ratesByName(process, parameters, { ...AIRED, ...detritus })['oxidation of detritus carbon']!;
    expect(Math.LN2 / (rate * DAY)).toBeGreaterThan(6.93);
    expect(Math.LN2 / (rate * DAY)).toBeLessThan(7.15);
  });

  it('uses 2.67 g of oxygen per g of carbon and none for nitrogen, which stays reduced', () => {
    const change = changesByState(process, parameters, { ...AIRED, ...detritus });
    const grams = (change.oxygen! * 31.998) / (change.detritusCarbon! * 12.011);
    expect(Math.abs(grams - 2.67)).toBeLessThan(0.01);
    expect(change.ammonium).toBeCloseTo(-change.detritusNitrogen!, 18);
  });

  it('slows without oxygen: carbon waits, nutrients go on at the share', () => {
    const aired = ratesByName(process, parameters, { ...AIRED, oxygen: 1e9, ...detritus });
    const stale = ratesByName(process, parameters, { ...AIRED, oxygen: 0, ...detritus });
    expect(stale['oxidation of detritus carbon']).toBe(0);
    expect(stale['ammonium from detritus']! / aired['ammonium from detritus']!).toBeCloseTo(0.4, 6);
  });
});

describe('breakdown of feed', () => {
  const process = listed(feedBreakdown);
  it('keeps the contract', () => checkProcess(process));

  it('parts into what is used at once and detritus', () => {
    const change = changesByState(
      process,
      { rate: 0.3, oxidisedShare: 0.6, theta: 1.088, oxygenHalf: 0.2 },
      { ...AIRED, oxygen: 1e9, feedPace: 1, feedCarbon: 1, feedNitrogen: 0.1, feedPhosphorus: 0.01 },
    );
    expect(change.feedCarbon! * DAY).toBeCloseTo(-0.3, 6);
    expect(change.detritusCarbon! * DAY).toBeCloseTo(0.12, 6);
    expect(change.ammonium! * DAY).toBeCloseTo(0.018, 6);
    expect(change.oxygen).toBeCloseTo(-change.dissolvedInorganicCarbon!, 18);
  });
});

describe('release by animals', () => {
  const process = listed(animalRelease);
  it('keeps the contract', () => checkProcess(process));

  it('lets 98 % of a daily sum out within a day at a quarter day', () => {
    // 1 - e^-4 = 0.9817
    const rate = ratesByName(
      process,
      { timeConstant: 6, oxygenHalf: 0.2 },
      { ...AIRED, excretedNitrogen: 1 },
    )['excretion of ammonium']!;
    expect(1 - Math.exp(-rate * DAY)).toBeCloseTo(0.9817, 4);
  });

  it('respires one oxygen per carbon', () => {
    const change = changesByState(
      process,
      { timeConstant: 6, oxygenHalf: 0.2 },
      { ...AIRED, excretedCarbon: 1 },
    );
    expect(change.oxygen).toBe(-change.dissolvedInorganicCarbon!);
  });
});
