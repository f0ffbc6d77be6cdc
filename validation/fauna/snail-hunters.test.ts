import { lifePopulationOf } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import {
  createTank,
  GOOD_WATER,
  type Tank,
  type TankSetup,
} from '../../packages/engine/src/life/life-test-kit.ts';
import { createRandom } from '../../packages/engine/src/numerics/random.ts';
import type { Founders } from '../../packages/engine/src/plan/plan.ts';

// Common practice, no source: an assassin snail eats about one small snail in one to three days; a handful clears a small
// tank of small snails in some months, neither in days nor never; for want of snails it lives on other protein, and starves
// within months where there is none.

const [HUNTERS, SNAILS] = [0, 1];
const [JUVENILE, ADULT] = [1, 2];
const MILLIGRAMS_PER_MOLE = 12_011;

function animals(id: string, founders: readonly Founders[]) {
  return { ...lifePopulationOf(library.organism(id), 'pool'), founders };
}

/** Sixty litres with 0.6 m2 of ground: four assassin snails, and as many ramshorns as asked for, a quarter of them grown. */
function box(snails: number, demography: TankSetup['demography'] = 'expected'): Tank {
  return createTank({
    populations: [
      animals('anentome-helena', [{ stage: 'adult', count: 4 }]),
      animals('planorbella-duryi', [
        { stage: 'adult', count: snails / 4 },
        { stage: 'juvenile', count: (3 * snails) / 4 },
      ]),
    ],
    demography,
    area: 0.6,
    volume: 0.06,
  });
}

interface Keeping {
  readonly temperature?: number;
  /** Feed that lies there each day [mol C]. */
  readonly feed?: number;
}

function keep(tank: Tank, days: number, { temperature = 25, feed = 0 }: Keeping = {}): void {
  for (let day = 0; day < days; day += 1) {
    tank.serve('detritusCarbon', 0.05);
    tank.serve('attachedAlgae', 0.03);
    tank.serve('feedCarbon', feed);
    tank.pass({ ...GOOD_WATER, temperature });
  }
}

const snailsIn = ({ life }: Tank): number => life.count(SNAILS, JUVENILE) + life.count(SNAILS, ADULT);

/** Carbon of a ramshorn of 6 mm [mg]. */
function smallSnail(): number {
  const { priors } = lifePopulationOf(library.organism('planorbella-duryi'), 'pool').traits;
  return priors.dryMassPerCube.median * 6 ** 3 * priors.carbonContent.median;
}

describe('assassin snails among ramshorns', () => {
  it.each([20, 25])('eat about one small snail in one to three days at %s °C', (temperature) => {
    const tank = box(300);
    let eaten = 0;
    for (let day = 0; day < 28; day += 1) {
      keep(tank, 1, { temperature });
      eaten += tank.life.caught(HUNTERS, SNAILS) / tank.life.count(HUNTERS, ADULT);
    }
    const daysForOne = (28 * smallSnail()) / (eaten * MILLIGRAMS_PER_MOLE);
    expect(daysForOne).toBeGreaterThan(1);
    expect(daysForOne).toBeLessThan(3);
  });

  it('clear sixty litres of them in some months, and not within a month', () => {
    const tank = box(300);
    keep(tank, 30);
    expect(snailsIn(tank)).toBeGreaterThan(100);
    keep(tank, 150);
    expect(snailsIn(tank)).toBeLessThan(1);
  });

  it('starve within months where nothing is left, not within weeks, and live on where they are fed', () => {
    const empty = box(0);
    const bare = (tank: Tank, days: number, feed: number) => {
      for (let day = 0; day < days; day += 1) {
        tank.serve('feedCarbon', feed);
        tank.pass({ ...GOOD_WATER, temperature: 25 });
      }
    };
    bare(empty, 21, 0);
    expect(empty.life.count(HUNTERS, ADULT)).toBeGreaterThan(3.5);
    bare(empty, 160, 0);
    expect(empty.life.count(HUNTERS, ADULT)).toBeLessThan(0.1);
    const fed = box(0);
    bare(fed, 181, 0.01);
    expect(fed.life.count(HUNTERS, ADULT)).toBeGreaterThan(2.5);
  });

  it('are whole animals in a member, and carbon, nitrogen and phosphorus close from first bite to starvation', () => {
    const tank = box(120, createRandom(3, 'hunters'));
    for (let day = 0; day < 250; day += 1) {
      tank.serve('detritusCarbon', day < 120 ? 0.05 : 0);
      const before = (['carbon', 'nitrogen', 'phosphorus'] as const).map(tank.total);
      tank.pass({ ...GOOD_WATER, temperature: 25 });
      for (const [e, held] of before.entries()) {
        const after = tank.total((['carbon', 'nitrogen', 'phosphorus'] as const)[e]!);
        expect(Math.abs(after - held)).toBeLessThanOrEqual(1e-12 * held);
      }
      expect(Number.isInteger(snailsIn(tank))).toBe(true);
      expect(Number.isInteger(tank.life.count(HUNTERS, ADULT))).toBe(true);
    }
  });
});
