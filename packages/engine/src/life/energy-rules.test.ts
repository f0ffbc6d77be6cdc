import { describe, expect, it } from 'vitest';
import { energyOfBroods, mostUpkeep, ownUpkeep } from './energy-rules.ts';

describe('mostUpkeep', () => {
  it('is above the oxygen use measured of a springtail, within a factor of five', () => {
    // Stam et al. 1996, Oecologia 107: 283-292: 0.13 µL an hour at 18.5 °C in 0.24 mg wet, 29 % dry:
    // 0.13 x 24 / 23.95 µmol carbon a day of 0.0292 mg carbon, 0.0536 a day.
    const most = mostUpkeep({ dryMass: 0.24 * 0.29, carbonContent: 0.42, temperature: 18.5 });
    expect(most / 0.0536).toBeGreaterThan(1);
    expect(most / 0.0536).toBeLessThan(5);
  });

  it('is near the oxygen use of a water flea: 3.8 µg an hour at 20 °C in 4 mm, 0.0066 mg dry a cubic millimetre', () => {
    // Evers and Kooijman 1989: 3.8 x 24 / 32 µmol carbon a day of 0.177 mg carbon, 0.193 a day.
    const most = mostUpkeep({ dryMass: 0.0066 * 64, carbonContent: 0.42, temperature: 20 });
    expect(Math.abs(most / 0.193 - 1)).toBeLessThan(0.3);
  });

  it('falls with the fourth root of body mass', () => {
    const small = mostUpkeep({ dryMass: 0.1, carbonContent: 0.42, temperature: 20 });
    const large = mostUpkeep({ dryMass: 1000, carbonContent: 0.42, temperature: 20 });
    expect(large / small).toBeCloseTo(1e4 ** -0.249, 10);
  });
});

describe('share to soma of the rules', () => {
  const sizes = { birth: 1, puberty: 2.5, end: 4, rate: 0.1 };
  const body = { dryMass: 0.4, carbonContent: 0.42, temperature: 20 };

  it('lets upkeep follow from growth where growth asks for less', () => {
    expect(ownUpkeep({ ...sizes, rate: 0.02 }, body)).toBe(0);
    expect(ownUpkeep(sizes, body)).toBe(mostUpkeep(body));
  });

  it('gives those that stop growing when grown up an upkeep of their own, never above what growth asks', () => {
    expect(ownUpkeep({ ...sizes, rate: 0.02 }, body, false)).toBeCloseTo(0.075, 12);
    expect(ownUpkeep(sizes, body, false)).toBe(mostUpkeep(body));
  });

  it('pays for upkeep, what is left to grow and the broods of a full-grown female', () => {
    const { kappa } = energyOfBroods(0.15, sizes, { length: 3.8, eggs: 40, interval: 3 });
    const assimilated = ((0.15 * 4) / kappa) * 3.8 ** 2;
    const growth = ((3 * 0.1) / 0.8) * 3.8 ** 2 * 0.2;
    expect(assimilated).toBeCloseTo(0.15 * 3.8 ** 3 + growth + 40 / (0.95 * 3), 10);
  });

  it('pays at least for the growth of young half way to puberty', () => {
    const { kappa } = energyOfBroods(0.15, sizes, { length: 3.8, eggs: 0.1, interval: 3 });
    expect((0.15 * 4) / kappa).toBeCloseTo(0.15 * 1.75 + ((3 * 0.1) / 0.8) * 2.25, 10);
  });
});
