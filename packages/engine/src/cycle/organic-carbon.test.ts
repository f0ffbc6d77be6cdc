import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { organicCarbonBreakdown } from './organic-carbon-breakdown.ts';
import { woodLeaching } from './wood-leaching.ts';

const DAY = 86400;
const leaching = listed(woodLeaching);
const breakdown = listed(organicCarbonBreakdown);
const BREAKDOWN = { rate: 0.01, labileRate: 0.2, theta: 1.07, oxygenHalf: 0.2 };
const AIRED = { oxygen: 0.25, waterVolume: 1, waterTemperature: 20 };

describe('leaching of wood', () => {
  it('keeps the contract', () => checkProcess(leaching));

  it('is first order and doubles in 10.2 degrees at a factor of 1.07', () => {
    // Q10 = 1.07^10 = 1.967
    const at = (waterTemperature: number): number =>
      ratesByName(
        leaching,
        { quickRate: 0.1, slowRate: 0.01, labileShare: 0, theta: 1.07 },
        { woodLeachable: 2, waterTemperature },
      )['quick leaching']!;
    expect(at(20)).toBeCloseTo(0.2 / DAY, 15);
    expect(at(30) / at(20)).toBeCloseTo(1.967, 3);
  });
});

describe('breakdown of coloured organic carbon', () => {
  it('keeps the contract', () => checkProcess(breakdown));

  it('uses 2.67 g of oxygen per g of carbon', () => {
    // 32/12, as in Boyd, 'Oxygen demand of aquaculture feed'
    const change = changesByState(breakdown, BREAKDOWN, { ...AIRED, dissolvedOrganicCarbon: 1 });
    const grams = (change.oxygen! * 31.998) / (change.dissolvedOrganicCarbon! * 12.011);
    expect(Math.abs(grams - 2.67)).toBeLessThan(0.01);
  });

  it('runs at half speed at the half saturation of oxygen', () => {
    const rate = (oxygen: number): number =>
      ratesByName(breakdown, BREAKDOWN, { ...AIRED, oxygen, dissolvedOrganicCarbon: 1 })[
        'oxidation of coloured organic carbon'
      ]!;
    expect(rate(0.2 / 31.998) * DAY).toBeCloseTo(0.005, 10);
  });
});
