import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { netElement } from '../process/stoichiometry.ts';
import { denitrification } from './denitrification.ts';

const DAY = 86400;
const PARAMETERS = {
  arealRate: 110,
  theta: 1.113,
  nitrateHalf: 0.48,
  oxygenInhibition: 4,
  detritusHalf: 1.5,
};
const BED = {
  nitrate: 1e6,
  detritusCarbon: 1e9,
  oxygen: 0,
  wetSubstrate: 1,
  waterVolume: 1,
  waterTemperature: 20,
};
const process = listed(denitrification);

function rate(entries: Partial<Record<keyof typeof BED, number>>): number {
  return ratesByName(process, PARAMETERS, { ...BED, ...entries }).denitrification!;
}

describe('denitrification', () => {
  it('keeps the contract', () => checkProcess(process));

  it('loses 110 mg N/m²/d when nothing is lacking', () => {
    expect(rate({}) * DAY * 14007).toBeCloseTo(110, 3);
  });

  it('gives back 3.57 mg CaCO3 of alkalinity and uses 1.07 mg carbon per mg of nitrogen', () => {
    // US EPA 1993, Process Design Manual for Nitrogen Control (recalled): 3.57; 1.07 by the equation
    const { reactions } = denitrification.prepare(PARAMETERS, { index: () => 0 });
    const { stoichiometry } = reactions[0]!;
    expect((netElement(stoichiometry, 'charge') * 50.04) / 14.007).toBeCloseTo(3.57, 2);
    expect((-stoichiometry.detritusCarbon! * 12.011) / 14.007).toBeCloseTo(1.07, 2);
    // N2 that leaves would need 1.25 O2 per nitrogen to become nitrate again
    expect(netElement(stoichiometry, 'oxygen')).toBeCloseTo(1.25, 12);
    expect(netElement(stoichiometry, 'nitrogen')).toBe(-1);
  });

  it('is five times as fast at 20 as at 5 °C', () => {
    // Barato Lake sediment, Asian J. Water Environ. Pollut. 8(3) (2011): 3.5 to 6.5
    const ratio = rate({}) / rate({ waterTemperature: 5 });
    expect(ratio).toBeGreaterThan(3.5);
    expect(ratio).toBeLessThan(6.5);
  });

  it('rises with nitrate, detritus and substrate and falls with oxygen', () => {
    const some = { nitrate: 0.05, detritusCarbon: 0.5, oxygen: 0.2 };
    expect(rate({ ...some, nitrate: 0.1 })).toBeGreaterThan(rate(some));
    expect(rate({ ...some, detritusCarbon: 1 })).toBeGreaterThan(rate(some));
    expect(rate({ ...some, wetSubstrate: 2 })).toBeGreaterThan(rate(some));
    expect(rate({ ...some, oxygen: 0.3 })).toBeLessThan(rate(some));
  });
});
