import { animalTraitsOf } from '@shoreglass/contract';
import { TRAIT_IDS } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import {
  createTank,
  GOOD_WATER,
  populationOf,
  type Tank,
} from '../../packages/engine/src/life/life-test-kit.ts';
import { createLivingPopulation } from '../../packages/engine/src/life/living-population.ts';
import { createRandom } from '../../packages/engine/src/numerics/random.ts';
import { drawPrior } from '../../packages/engine/src/outlook/draw.ts';
import { speciesOf } from './species.ts';

const animals = Object.values(library.data.organisms);

describe('traits of the library', () => {
  it.each(animals.map(({ id }) => id))('of %s agree with each other in 500 draws', (id) => {
    const random = createRandom(1, id);
    const { traits } = animalTraitsOf(speciesOf(id)!.animal);
    const { priors } = traits;
    for (let draw = 0; draw < 500; draw += 1) {
      const values = Object.fromEntries(TRAIT_IDS.map((trait) => [trait, drawPrior(priors[trait], random)]));
      const { energetics } = createLivingPopulation({ id, traits }, values);
      expect(energetics.assimilation).toBeGreaterThan(0);
    }
  });

  it.each(animals.map(({ id }) => id))(
    'of %s let an egg cost no more than half its mother, a piece no more than all of it',
    (id) => {
      const { animal, traits } = speciesOf(id)!;
      const { energetics } = createLivingPopulation({ id, traits: animalTraitsOf(animal).traits }, traits);
      const body = (1 + energetics.store) * energetics.carbonPerCube * energetics.puberty ** 3;
      const most = animal.mating === 'division' ? 1 : 0.5;
      expect(energetics.eggCarbon).toBeLessThan(most * body);
    },
  );
});

/** Half a square metre of submerged surface and 30 L. */
function tankOf(id: string, count: number): Tank {
  const { animal, traits } = speciesOf(id)!;
  const { priors: _, ...kind } = animalTraitsOf(animal).traits;
  const population = populationOf(id, [{ stage: 'adult', count }], traits, kind);
  return createTank({ populations: [population], demography: 'expected', area: 0.5, volume: 0.03 });
}
function total({ life }: Tank): number {
  return life.count(0, 1) + life.count(0, 2);
}

describe('twenty scuds at 20 °C', () => {
  // Bounds from the breeding of the species: about ten females, each some 51 young by day 126 (Pedersen et al. 2013),
  // of which 78 to 85 % reach day 28 (Borgmann et al. 1989), mature within a month (Othman & Pascoe 2001).
  it('are hundreds after four months with ample food', () => {
    const tank = tankOf('hyalella-azteca', 20);
    for (let day = 0; day < 120; day += 1) {
      tank.serve('attachedAlgae', 0.15);
      tank.pass(GOOD_WATER);
    }
    expect(total(tank)).toBeGreaterThan(150);
    expect(total(tank)).toBeLessThan(1500);
  });

  it('stay within what a tenth of a gram of food every three days can keep, for two years', () => {
    // 0.033 g dry a day at 45 % carbon is 1.25 mmol C; 70 % of it assimilated. A scud of 1 mg dry holds 33 umol C and
    // needs 3 r / y = 7.7 % of it a day (r = 0.0205 1/d at 22 °C), so about 350 full-grown or 4000 small ones.
    const tank = tankOf('hyalella-azteca', 20);
    const counts: number[] = [];
    for (let day = 0; day < 730; day += 1) {
      if (day % 3 === 0) tank.serve('feedCarbon', 3.75e-3);
      tank.serve('detritusCarbon', 0);
      tank.pass(GOOD_WATER);
      if (day > 300) counts.push(total(tank));
    }
    expect(Math.min(...counts)).toBeGreaterThan(100);
    expect(Math.max(...counts)).toBeLessThan(6000);
  });
});
