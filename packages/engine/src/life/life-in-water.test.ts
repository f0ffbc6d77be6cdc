import { describe, expect, it } from 'vitest';
import { ADULT, AMPLE, BROODED, passDays, tankOf } from './grazer-test-kit.ts';
import { DEATHLESS, GOOD_WATER, GRAZER } from './life-test-kit.ts';
import { DEATH_CAUSES } from './living-population.ts';

/** Poisons and salt a little as for amphipods, of round numbers. */
const POISONED = {
  nitriteNoEffect: 0.5,
  nitriteMedianLethal: 4,
  nitriteChloride: 20,
  copperNoEffect: 8,
  copperMedianLethal: 30,
  saltHigh: 6,
  saltHighMargin: 5,
};

describe('water', () => {
  it.each([
    ['acid', { pH: 4.5 }, 'wrong pH'],
    ['soft', { hardness: 0.5 }, 'wrong hardness'],
    ['hot', { temperature: 36 }, 'water too cold or warm'],
    ['stale', { oxygen: 0.5 }, 'lack of oxygen'],
    ['foul', { unionisedAmmonia: 2 }, 'ammonia'],
    ['not run in', { nitrite: 8, chloride: 20 }, 'nitrite'],
    ['out of new copper pipes', { copper: 120 }, 'copper'],
    ['salted', { conductivity: 20 }, 'wrong salt'],
  ] as const)('that is %s kills by its quality', (_, change, cause) => {
    const tank = tankOf({ traits: { ...DEATHLESS, ...POISONED } });
    for (let day = 0; day < 30; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass({ ...GOOD_WATER, ...change });
      if (day !== 2) continue;
      const { deaths } = tank.life.day(0);
      const all = deaths.reduce((sum, each) => sum + each, 0);
      expect(deaths[DEATH_CAUSES.indexOf(cause)]! / all).toBeGreaterThan(0.95);
    }
    expect(tank.life.count(0, ADULT)).toBeLessThan(10);
  });

  it.each([
    ['nitrite', { nitrite: 4, chloride: 20 }],
    ['nitrite behind chloride', { nitrite: 8, chloride: 60 }],
    ['copper', { copper: 30, hardness: 50 / 17.85 }],
    ['copper in hard water', { copper: 57.65, hardness: 100 / 17.85 }],
  ] as const)('kills half in four days at the median lethal %s', (_, change) => {
    const tank = tankOf({ founders: 1000, traits: { ...DEATHLESS, ...POISONED, hardnessLow: 1 } });
    for (let day = 0; day < 4; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass({ ...GOOD_WATER, ...change });
    }
    expect(Math.abs(tank.life.count(0, ADULT) / 1000 - 0.5)).toBeLessThan(0.02);
  });

  it('kills half in four days at the median lethal ammonia', () => {
    const tank = tankOf({ founders: 1000, traits: DEATHLESS });
    for (let day = 0; day < 4; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass({ ...GOOD_WATER, unionisedAmmonia: GRAZER.ammoniaMedianLethal });
    }
    // 2 % for the threshold crossed within a day, of which only the mean burden is known.
    expect(Math.abs(tank.life.count(0, ADULT) / 1000 - 0.5)).toBeLessThan(0.02);
  });

  it('too warm to breed in loses the carried eggs within ten days', () => {
    const tank = tankOf({});
    passDays(tank, 40, AMPLE);
    expect(tank.life.count(0, BROODED)).toBeGreaterThan(5);
    for (let day = 0; day < 10; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass({ ...GOOD_WATER, temperature: 31 });
    }
    expect(tank.life.count(0, BROODED)).toBeLessThan(0.5);
  });
});
