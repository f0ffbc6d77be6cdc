import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { fallAeration } from './fall-aeration.ts';
import { gasExchange } from './gas-exchange.ts';
import { CARBON_DIOXIDE_SCHMIDT, OXYGEN_SCHMIDT, schmidtNumber } from './schmidt-number.ts';

const process = listed(gasExchange);
const PARAMETERS = { stillVelocity: 1, stirredVelocity: 6 };
const TANK = { waterVolume: 0.04, waterArea: 0.2, waterTemperature: 20 };
const CM_PER_HOUR = 0.01 / 3600;

describe('gas exchange', () => {
  it('keeps the contract', () => checkProcess(process));

  it('has the published Schmidt numbers at 20 °C', () => {
    // Wanninkhof 1992: 600 for CO2 and 530 for O2 in fresh water at 20 °C
    expect(Math.abs(schmidtNumber(CARBON_DIOXIDE_SCHMIDT, 20) - 600)).toBeLessThan(1);
    expect(Math.abs(schmidtNumber(OXYGEN_SCHMIDT, 20) - 530)).toBeLessThan(1);
  });

  it('moves carbon dioxide at k600 where its Schmidt number is 600', () => {
    const rates = ratesByName(process, PARAMETERS, { ...TANK, carbonDioxideSaturation: 0.016 });
    const expected = 0.2 * CM_PER_HOUR * 0.016;
    expect(rates['carbon dioxide from the air']! / expected).toBeCloseTo(1, 2);
  });

  it('reaerates at k A / V times the deficit, and stands still at saturation', () => {
    const deficit = { ...TANK, oxygenSaturation: 0.284, oxygen: 0.142 * 0.04 };
    // (530/600)^(-2/3) = 1.086 on a still surface, (530/600)^(-1/2) = 1.064 on a stirred one
    const still = changesByState(process, PARAMETERS, deficit).oxygen!;
    expect(still / (0.2 * CM_PER_HOUR * 1.086 * 0.142)).toBeCloseTo(1, 2);
    const stirred = changesByState(process, PARAMETERS, { ...deficit, surfaceRenewal: 1 }).oxygen!;
    expect(stirred / (0.2 * 6 * CM_PER_HOUR * 1.064 * 0.142)).toBeCloseTo(1, 2);
    const full = changesByState(process, PARAMETERS, { ...deficit, oxygen: 0.284 * 0.04 });
    expect(Math.abs(full.oxygen ?? 0)).toBeLessThan(1e-20);
  });

  it('adds the water a fall brings to balance', () => {
    const values = { ...TANK, oxygenSaturation: 0.284, oxygen: 0.142 * 0.04 };
    const without = changesByState(process, PARAMETERS, values).oxygen!;
    const withFall = changesByState(process, PARAMETERS, { ...values, fallAeration: 1e-5 }).oxygen!;
    expect(withFall - without).toBeCloseTo(1e-5 * 0.142, 12);
  });
});

describe('aeration by a fall', () => {
  it('follows the weir equation', () => {
    // by hand, H = 0.5 m at 20 °C: r = 1 + 0.38 * 1.8 * 0.5 * 0.945 * 1.92 = 1.62051, 1 - 1/r = 0.38291
    expect(fallAeration({ flow: 1, height: 0.5, temperature: 20 })).toBeCloseTo(0.38291, 4);
  });

  it('does nothing without a fall and never more than all the water', () => {
    expect(fallAeration({ flow: 1, height: 0, temperature: 20 })).toBe(0);
    expect(fallAeration({ flow: 1, height: 2, temperature: 35 })).toBeLessThan(1);
  });
});
