import { describe, expect, it } from 'vitest';
import { KINDS, valuesOf, WOODLOUSE } from './land-test-kit.ts';
import type { LifeHistory } from './life-history.ts';
import { createTank, GOOD_WATER, populationOf } from './life-test-kit.ts';
import type { AirConditions } from './surroundings.ts';

/** An invented gnat of round numbers. */
const GNAT: LifeHistory = {
  ...WOODLOUSE,
  lengthAtBirth: 0.4,
  lengthAtPuberty: 2.8,
  adultLength: 3,
  adultMass: 0.5,
  maturityAge: 18,
  pupaTime: 5,
  wetGround: 0.4,
  youngPerBrood: 100,
  broodInterval: 3,
  broodTime: 5,
  lifespan: 8,
  diet: { fungi: 0.7, litter: 0.3 },
  moults: false,
  leavesByGaps: true,
};
const WET: AirConditions = { temperature: 20, humidity: 95, groundWetness: 0.9 };
const DRY: AirConditions = { ...WET, groundWetness: 0.05 };

function box(stage: 'adult' | 'juvenile', count: number) {
  const kind = { ...KINDS.woodlouse, brood: 'laid', development: 'pupa' } as const;
  const population = populationOf(
    'gnat',
    [{ stage, count }],
    { ...valuesOf('gnat', GNAT), leaving: 0.2 },
    kind,
  );
  const tank = createTank({
    populations: [population],
    demography: 'expected',
    area: 0.2,
    volume: 0.01,
    land: 0.2,
  });
  const counts = () => ({ larvae: tank.life.count(0, 1), flies: tank.life.count(0, 2) });
  return {
    ...tank,
    counts,
    days(days: number, air: AirConditions = WET, openCover = 0) {
      let left = 0;
      for (let day = 0; day < days; day += 1) {
        tank.serve('landFungi', 0.5);
        tank.pass({ ...GOOD_WATER, air, openCover });
        left += tank.life.day(0).leftCarbon;
      }
      return left;
    },
  };
}

describe('insects that pupate', () => {
  it('lay within days, eat nothing when grown, and are gone within two weeks', () => {
    // grown fungus gnats live 7 to 10 days and do not feed (pages of pest-control and gardening services)
    const { days, counts, life } = box('adult', 100);
    days(1);
    expect(life.day(0).eatenCarbon).toBe(0);
    days(3);
    expect(life.count(0, 0)).toBeGreaterThan(1000);
    days(10);
    expect(counts().flies).toBeLessThan(2);
  });

  it('come out as flies some three weeks after the eggs were laid', () => {
    const { days, counts } = box('adult', 100);
    days(16);
    expect(counts().flies).toBeLessThan(2);
    days(12);
    expect(counts().flies).toBeGreaterThan(100);
  });

  it('keep every mol of carbon and nitrogen in what they become and leave behind', () => {
    const tank = box('juvenile', 300);
    for (const element of ['carbon', 'nitrogen', 'phosphorus'] as const) {
      const before = tank.total(element);
      for (let day = 0; day < 40; day += 1) {
        tank.pass({ ...GOOD_WATER, air: WET });
        expect(Math.abs(tank.total(element) - before)).toBeLessThan(1e-12 + 1e-9 * Math.abs(before));
      }
    }
  });

  it('die out where the ground dries, eggs and larvae alike', () => {
    const wet = box('adult', 50);
    const dry = box('adult', 50);
    wet.days(25);
    dry.days(25, DRY);
    expect(dry.counts().larvae + dry.counts().flies).toBeLessThan(
      0.05 * (wet.counts().larvae + wet.counts().flies),
    );
  });

  it('leave as flies only', () => {
    const larvae = box('juvenile', 200);
    expect(larvae.days(1, WET, 0.05)).toBe(0);
    const flies = box('adult', 200);
    expect(flies.days(1, WET, 0.05)).toBeGreaterThan(0);
  });
});
