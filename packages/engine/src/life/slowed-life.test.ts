import { describe, expect, it } from 'vitest';
import { ADULT, AMPLE, tankOf } from './grazer-test-kit.ts';
import { DEATHLESS, GOOD_WATER } from './life-test-kit.ts';
import { DEATH_CAUSES } from './living-population.ts';
import { slowingTraits } from './slowing-rules.ts';
import { SLOWING_CAUSES } from './sublethal.ts';
import type { TraitId } from './traits.ts';
import type { WaterConditions } from './water-stress.ts';

/** Slowed a little as amphipods are; nothing of it kills. */
const SLOWED: Partial<Record<TraitId, number>> = {
  ...DEATHLESS,
  oxygenNeeded: 0,
  hardnessLow: 0,
  nitriteChloride: 20,
  oxygenSlowing: 3,
  ammoniaSlowing: 20,
  nitriteSlowing: 1,
  nitrateSlowing: 30,
  copperSlowing: 10,
};

/** Young born, eggs laid, mass and what was lost by cause over days of ample food in a water. */
function lived(change: Partial<WaterConditions>, days = 60) {
  const tank = tankOf({ traits: SLOWED });
  const slowed = new Float64Array(SLOWING_CAUSES.length);
  let [laid, ample] = [0, 0];
  for (let day = 0; day < days; day += 1) {
    tank.serve('attachedAlgae', AMPLE);
    tank.pass({ ...GOOD_WATER, ...change });
    const today = tank.life.day(0);
    laid += today.laid;
    ample += today.ampleCarbon;
    today.slowed.forEach((each, k) => {
      slowed[k] = slowed[k]! + each;
    });
  }
  return { laid, body: tank.life.carbon(0), lost: Array.from(slowed, (each) => each / ample) };
}

describe('animals in water that slows them', () => {
  const good = lived({});

  it('lose nothing in good water', () => {
    expect(good.lost).toEqual(SLOWING_CAUSES.map(() => 0));
  });

  it.each([
    ['lack of oxygen', { oxygen: 3 }],
    ['ammonia', { totalAmmonia: 20, pH: 7, unionisedAmmonia: 0 }],
    ['nitrite', { nitrite: 1, chloride: 20 }],
    ['nitrate', { nitrate: 30 }],
    ['copper', { copper: 10, hardness: 50 / 17.85 }],
  ] as const)('lay fewer eggs and weigh less by %s, and the cause is booked', (cause, change) => {
    const slowed = lived(change);
    expect(slowed.laid).toBeLessThan(0.9 * good.laid);
    expect(slowed.body).toBeLessThan(good.body);
    const at = SLOWING_CAUSES.indexOf(cause);
    expect(slowed.lost[at]).toBeGreaterThan(0.05);
    slowed.lost.forEach((each, k) => {
      if (k !== at) expect(each).toBe(0);
    });
  });

  it('lay fewer eggs alone where a poison harms these sooner, and no element is lost', () => {
    const tank = tankOf({ traits: { ...SLOWED, eggSensitivity: 4 } });
    tank.serve('attachedAlgae', AMPLE);
    const before = tank.total('carbon');
    let [laid, slowed] = [0, 0];
    for (let day = 0; day < 60; day += 1) {
      tank.pass({ ...GOOD_WATER, nitrate: 12 });
      laid += tank.life.day(0).laid;
      slowed += tank.life.day(0).slowed[SLOWING_CAUSES.indexOf('nitrate')]!;
    }
    expect(laid).toBeLessThan(0.75 * good.laid);
    expect(slowed).toBeGreaterThan(0);
    expect(Math.abs(tank.total('carbon') / before - 1)).toBeLessThan(1e-12);
  });

  it('lay hardly any eggs and waste away where the water takes all appetite', () => {
    const choked = lived({ oxygen: 0.4 });
    expect(choked.laid).toBeLessThan(0.2 * good.laid);
    expect(choked.body).toBeLessThan(lived({ oxygen: 0.4 }, 20).body);
    // All of every day but the first, which is lived on what the water was before.
    expect(choked.lost[SLOWING_CAUSES.indexOf('lack of oxygen')]).toBeGreaterThan(0.9);
  });

  it('keeps carbon, nitrogen and phosphorus closed', () => {
    const tank = tankOf({ traits: SLOWED });
    tank.serve('attachedAlgae', AMPLE);
    const elements = ['carbon', 'nitrogen', 'phosphorus'] as const;
    const before = elements.map((element) => tank.total(element));
    for (let day = 0; day < 60; day += 1)
      tank.pass({ ...GOOD_WATER, oxygen: day % 20 < 10 ? 2 : 8, nitrate: day });
    elements.forEach((element, k) => {
      expect(Math.abs(tank.total(element) / before[k]! - 1)).toBeLessThan(1e-12);
    });
  });
});

describe('poisons by stage', () => {
  const traits = { ...DEATHLESS, copperNoEffect: 8, copperMedianLethal: 30, copperYoung: 2, hardnessLow: 1 };
  /** Part of 1000 of a stage alive after four days [1]. */
  function left(stage: 'adult' | 'juvenile', copper: number, more: Partial<Record<TraitId, number>> = {}) {
    const tank = tankOf({ founders: 1000, stage, traits: { ...traits, ...more } });
    const deaths = new Float64Array(DEATH_CAUSES.length);
    for (let day = 0; day < 4; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass({ ...GOOD_WATER, copper, hardness: 50 / 17.85 });
      tank.life.day(0).deaths.forEach((each, k) => {
        deaths[k] = deaths[k]! + each;
      });
    }
    expect(
      deaths[DEATH_CAUSES.indexOf('copper')]! / deaths.reduce((sum, each) => sum + each, 0),
    ).toBeGreaterThan(0.95);
    return (tank.life.count(0, ADULT) + tank.life.count(0, ADULT - 1)) / 1000;
  }
  it('kills half of the grown at what was tested on them, and half of the young at half of it', () => {
    expect(Math.abs(left('adult', 30) - 0.5)).toBeLessThan(0.03);
    expect(Math.abs(left('juvenile', 15) - 0.5)).toBeLessThan(0.03);
  });
  it('kills half of the young at what was tested on them, and half of the grown at twice that', () => {
    expect(Math.abs(left('juvenile', 30, { testedYoung: 1 }) - 0.5)).toBeLessThan(0.03);
    expect(Math.abs(left('adult', 60, { testedYoung: 1 }) - 0.5)).toBeLessThan(0.03);
  });
});

describe('a pool that dries out', () => {
  it.each([
    ['half of those that live in it in the time named', true, 0.5],
    ['nobody while water stands', false, 1],
  ] as const)('kills %s', (_, isGone, left) => {
    const tank = tankOf({ founders: 1000, traits: { ...DEATHLESS, timeDry: 3 } });
    for (let day = 0; day < 3; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass({ ...GOOD_WATER, isGone });
    }
    expect(tank.life.count(0, ADULT) / 1000).toBeCloseTo(left, 2);
    if (isGone) expect(tank.life.day(0).deaths[DEATH_CAUSES.indexOf('left dry')]).toBeGreaterThan(100);
  });
  it.each([
    ['harms nobody and slows nobody once it is gone, however foul it was', true, 1],
    ['kills as long as it stands', false, 0],
  ] as const)('%s', (_, isGone, left) => {
    const tank = tankOf({ founders: 1000, traits: { ...DEATHLESS, timeDry: 1e3, oxygenNeeded: 3 } });
    for (let day = 0; day < 10; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass({ ...GOOD_WATER, oxygen: 0, isGone });
    }
    expect(tank.life.count(0, ADULT) / 1000).toBeCloseTo(left, 1);
    const slowed = tank.life.day(0).slowed.reduce((sum, each) => sum + each, 0);
    if (isGone) expect(slowed).toBe(0);
  });
});

describe('slowingTraits', () => {
  const lethal = { oxygen: undefined, nitrite: 7, copper: 25 };
  it('puts nitrite and copper a ratio below what kills', () => {
    const { nitriteSlowing, copperSlowing } = slowingTraits('crustaceans', lethal);
    expect(nitriteSlowing?.median).toBeCloseTo(2, 12);
    expect(copperSlowing?.median).toBeCloseTo(10, 12);
  });
  it('goes by the kind, and for those that survive on less oxygen by that', () => {
    expect(slowingTraits('fish', lethal).oxygenSlowing?.median).toBe(3);
    expect(slowingTraits('fish', { ...lethal, oxygen: 0.5 }).oxygenSlowing?.median).toBe(0.75);
    expect(slowingTraits('fish', { ...lethal, oxygen: 4 }).oxygenSlowing?.median).toBe(3);
  });
  it('draws stay within the ranges of the traits', () => {
    for (const kind of [undefined, 'plankton', 'snails', 'worms', 'reptiles'] as const)
      for (const prior of Object.values(slowingTraits(kind, lethal))) {
        expect(prior.min).toBeLessThanOrEqual(prior.median);
        expect(prior.max).toBeGreaterThanOrEqual(prior.median);
      }
  });
});
