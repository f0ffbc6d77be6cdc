import { describe, expect, it } from 'vitest';
import { createRandom } from '../numerics/random.ts';
import { EXPECTED } from './demography.ts';
import { createTank, DEATHLESS, GOOD_WATER, GRAZER, populationOf, type Tank } from './life-test-kit.ts';
import { DEATH_CAUSES } from './living-population.ts';
import { bothSexesPresent } from './sexes.ts';
import { STAGES, type TraitValues } from './traits.ts';

const BROODED = STAGES.indexOf('brooded');
const AMPLE = 1e4;
const CROWDING = DEATH_CAUSES.indexOf('crowding');

function tankOf(founders: number, seed: number | undefined, changes: Partial<TraitValues> = {}): Tank {
  const traits = { ...GRAZER, ...DEATHLESS, ...changes };
  const kind = { mating: 'two sexes', brood: 'carried' } as const;
  return createTank({
    populations: [populationOf('grazer', [{ stage: 'adult', count: founders }], traits, kind)],
    demography: seed === undefined ? 'expected' : createRandom(seed, 'sexes'),
    area: 0.5,
    volume: 0.03,
  });
}

/** Whether any egg was laid within the days. */
function lays(tank: Tank, days: number): boolean {
  for (let day = 0; day < days; day += 1) {
    tank.serve('attachedAlgae', AMPLE);
    tank.pass(GOOD_WATER);
    if (tank.life.count(0, BROODED) > 0) return true;
  }
  return false;
}

describe('sexes of a small group', () => {
  it('are drawn once: a quarter of groups of three are of one sex and never lay', () => {
    const groups = 200;
    let barren = 0;
    for (let seed = 0; seed < groups; seed += 1) if (!lays(tankOf(3, seed), 90)) barren += 1;
    // 2 (1/2)^3 of three; four standard errors of 200 draws.
    const expected = 1 - bothSexesPresent(3, 0.5);
    expect(expected).toBeCloseTo(0.25, 12);
    expect(Math.abs(barren / groups - expected)).toBeLessThan(
      4 * Math.sqrt((expected * (1 - expected)) / groups),
    );
  });

  it('are never wanting in a large group, and are their chance in the expected run', () => {
    for (let seed = 0; seed < 20; seed += 1) expect(lays(tankOf(60, seed), 90)).toBe(true);
    expect(lays(tankOf(3, undefined), 90)).toBe(true);
    expect(EXPECTED.taken(1, 2, 4)).toBe(0.5);
  });
});

describe('ground that is held', () => {
  const claim = { groundPerAdult: 500, crowdingHazard: 0 };
  const eggsOf = (changes: Partial<TraitValues>, founders = 20): number => {
    const traits = { ...GRAZER, ...DEATHLESS, ...changes };
    const kind = { mating: 'self-fertile', brood: 'laid' } as const;
    const tank = createTank({
      populations: [populationOf('fish', [{ stage: 'adult', count: founders }], traits, kind)],
      demography: 'expected',
      area: 0.5,
      volume: 10,
      waterArea: 0.1,
    });
    let eggs = 0;
    for (let day = 0; day < 25; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass(GOOD_WATER);
      eggs += tank.life.day(0).laid;
    }
    return eggs;
  };

  it('lets only as many breed as it has room for, and larger claims let fewer', () => {
    const free = eggsOf({ groundPerAdult: 0 });
    const held = eggsOf(claim);
    expect(held).toBeLessThan(0.6 * free);
    expect(eggsOf({ ...claim, groundPerAdult: 1000 })).toBeLessThan(0.7 * held);
  });

  it('is shared, not held, by those that claim little', () => {
    expect(eggsOf({ groundPerAdult: 1 })).toBeCloseTo(eggsOf({ groundPerAdult: 0 }), 9);
  });

  it('is fought for in water as on land: the surplus dies', () => {
    const kind = { mating: 'self-fertile', brood: 'laid' } as const;
    const traits = {
      ...GRAZER,
      ...DEATHLESS,
      groundPerAdult: 500,
      crowdingHazard: 0.02,
      crowdingDensity: 1000,
    };
    const tank = createTank({
      populations: [populationOf('fish', [{ stage: 'adult', count: 20 }], traits, kind)],
      demography: 'expected',
      area: 0.5,
      volume: 10,
      waterArea: 0.1,
    });
    let crowded = 0;
    for (let day = 0; day < 60; day += 1) {
      tank.serve('attachedAlgae', AMPLE);
      tank.pass(GOOD_WATER);
      crowded += tank.life.day(0).deaths[CROWDING]!;
    }
    expect(crowded).toBeGreaterThan(5);
  });
});
