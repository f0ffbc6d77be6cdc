import { describe, expect, it } from 'vitest';
import { energyUsed, loadCurrent, longestTripTime } from './current.ts';
import { fumeConcentration, MOLAR_VOLUME, neededAirChanges } from './fumes.ts';
import { liftingMultipliers, recommendedLift } from './lifting.ts';

describe('precautions', () => {
  it('UL 943: 6 mA within 5.6 s, 20 mA within 1 s, 264 mA within 25 ms', () => {
    expect(longestTripTime(0.006)).toBeCloseTo(5.594, 2);
    expect(longestTripTime(0.02)).toBeCloseTo(1, 10);
    expect(longestTripTime(0.264)).toBeCloseTo(0.025, 3);
  });
  it('100 W at 230 V draw 0.43 A and use 1 kWh in ten hours', () => {
    expect(loadCurrent(100, 230, 1)).toBeCloseTo(0.4348, 4);
    expect(energyUsed(100, 36000) / 3.6e6).toBeCloseTo(1, 12);
  });
  it('NIOSH 94-110 multiplier tables at 60 cm, 30 cm, 40 cm and 90 degrees', () => {
    const lift = { reach: 0.6, startHeight: 0.3, travel: 0.4, twist: Math.PI / 2, frequency: 1, grip: 1 };
    const { reach, height, travel, twist } = liftingMultipliers(lift);
    for (const [ours, printed] of [
      [reach, 0.42],
      [height, 0.87],
      [travel, 0.93],
      [twist, 0.71],
    ] as const) {
      expect(Math.abs(ours - printed)).toBeLessThan(0.006);
    }
  });
  it('the best posture allows 23 kg and no more', () => {
    const best = { reach: 0.2, startHeight: 0.75, travel: 0.2, twist: 0, frequency: 1, grip: 1 };
    expect(recommendedLift(best)).toBeCloseTo(23, 12);
  });
  it('NIOSH: 0.005 ppm of MDI are 0.05 mg/m3', () => {
    expect(fumeConcentration(0.005e-6, 0.25025, MOLAR_VOLUME) * 1e6).toBeCloseTo(0.05, 2);
  });
  it('a release of the limit times the room in an hour needs one change an hour', () => {
    expect(neededAirChanges((25e-6 * 30) / 3600, 25e-6, 30) * 3600).toBeCloseTo(1, 12);
  });
});
