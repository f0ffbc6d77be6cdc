import { describe, expect, it } from 'vitest';
import { energeticsOf } from '../life/energetics.ts';
import { FOOD_SPECS, FOODS, type Food } from '../life/foods.ts';
import { valuesOf, WOODLOUSE } from '../life/land-test-kit.ts';
import { createTank, GOOD_WATER, GRAZER, populationOf, type Tank } from '../life/life-test-kit.ts';
import type { AnimalTraits, TraitValues } from '../life/traits.ts';
import type { Founders } from '../plan/plan.ts';
import { VARIABLE_INDEX } from '../variables/variables.ts';
import { upkeepOfAdult } from './need.ts';
import { steadyPopulation } from './steady-population.ts';

// What is computed for one food is compared with a box into which that food alone comes, day after day, for seven years:
// no crowding, nobody else, faeces and dead taken out. Rounds of generations swing, so the mean of the last four counts.
const DAYS = 2500;
const FROM = 1000;

const spec = (food: Food) => FOOD_SPECS[FOODS.indexOf(food)]!;
const KIND: Omit<AnimalTraits, 'priors'> = { mating: 'two sexes', brood: 'carried' };

/** Traits of an animal that eats one food alone and is never crowded. */
function onlyOn(food: Food, values: TraitValues): TraitValues {
  const preferences = FOOD_SPECS.map(({ preference }) => [preference, 0]);
  return {
    ...values,
    ...Object.fromEntries(preferences),
    [spec(food).preference]: 5,
    maxIngestion: 10,
    crowdingHazard: 0,
    groundPerAdult: 0,
  };
}

const WASTE = ['detritus', 'carcass', 'remains', 'soil'] as const;

function takeOutWaste({ values }: Tank, kept: string): void {
  for (const pool of WASTE)
    for (const element of ['Carbon', 'Nitrogen', 'Phosphorus'] as const)
      if (`${pool}Carbon` !== kept) values[VARIABLE_INDEX[`${pool}${element}`]] = 0;
}

interface Plateau {
  readonly adults: number;
  readonly young: number;
  /** [mol C/d] */
  readonly eaten: number;
}

/** Means over the last years of a box that is given an amount of one food a day. */
function plateauOn(food: Food, values: TraitValues, perDay: number): Plateau {
  const pool = spec(food).pool!;
  const founders: Founders[] = [{ stage: 'adult', count: 20 }];
  const tank = createTank({
    populations: [populationOf('eater', founders, values, KIND)],
    demography: 'expected',
    area: 0.5,
    volume: 0.03,
    land: 0.2,
  });
  const sums = { adults: 0, young: 0, eaten: 0 };
  // Faeces and dead that come to lie in the pool of the food are none of it.
  let left = 0;
  for (let day = 0; day < DAYS; day += 1) {
    takeOutWaste(tank, pool);
    tank.serve(pool, left + perDay);
    tank.pass({ ...GOOD_WATER, air: { temperature: 20, humidity: 98, groundWetness: 1 } });
    const { eatenCarbon } = tank.life.day(0);
    left = Math.max(0, left + perDay - eatenCarbon);
    if (day < FROM) continue;
    sums.adults += tank.life.count(0, 2) / (DAYS - FROM);
    sums.young += tank.life.count(0, 1) / (DAYS - FROM);
    sums.eaten += eatenCarbon / (DAYS - FROM);
  }
  return sums;
}

const CASES: readonly (readonly [string, Food, TraitValues, number])[] = [
  ['a grazer of biofilm', 'biofilm', GRAZER, 1e-3],
  ['an eater of detritus', 'detritus', GRAZER, 2e-3],
  ['an eater of leaf litter on land', 'land litter', valuesOf('woodlouse', WOODLOUSE), 4e-3],
];

describe('the population a food carries', () => {
  it.each(CASES)('is that of a box given nothing else: %s', (_, food, traits, perDay) => {
    const values = onlyOn(food, traits);
    const steady = steadyPopulation({ id: 'eater', traits: KIND, values }, 20)!;
    const plateau = plateauOn(food, values, perDay);
    const assimilated = perDay * values[spec(food).efficiency];
    expect(plateau.eaten / perDay).toBeGreaterThan(0.98);
    // Generations that swing about the mean live on a ration that swings too; a quarter is what that comes to here.
    expect(plateau.adults / (steady.adults * assimilated)).toBeGreaterThan(0.75);
    expect(plateau.adults / (steady.adults * assimilated)).toBeLessThan(1.25);
    expect(plateau.young / (steady.young * assimilated)).toBeGreaterThan(0.6);
    expect(plateau.young / (steady.young * assimilated)).toBeLessThan(1.6);
  });

  it('is that of a box given nothing but prey: a hunter', () => {
    const hunter = {
      ...onlyOn('prey', GRAZER),
      preySmallest: 0,
      preyLargest: 1,
      preferenceForPrey: 50,
      hiding: 0,
    };
    // Prey that never ages, breeds or starves comes in day after day, so what it holds is what the hunters get.
    const prey = {
      ...onlyOn('algae', GRAZER),
      lengthAtBirth: 0.4,
      lengthAtPuberty: 0.5,
      lengthAtEnd: 0.9,
      growthRate: 1e-4,
      adultLoss: 0,
      juvenileLoss: 0,
      lifespan: 20000,
      hiding: 0,
      breedingCoolest: 3,
      breedingWarmest: 4,
    };
    const hunts = { ...KIND, hunts: { plankton: 1 } };
    const populations = [
      populationOf('hunter', [{ stage: 'adult', count: 20 }], hunter, hunts),
      populationOf('prey', [], prey, { ...KIND, preyKind: 'plankton' }),
    ];
    const tank = createTank({ populations, demography: 'expected', area: 0.5, volume: 0.03 });
    const steady = steadyPopulation({ id: 'hunter', traits: hunts, values: hunter }, 20)!;
    let caught = 0;
    let adults = 0;
    let young = 0;
    for (let day = 0; day < DAYS; day += 1) {
      takeOutWaste(tank, '');
      tank.serve('attachedAlgae', 1e4);
      tank.life.add('prey', 'juvenile', 50_000, tank.values);
      tank.pass(GOOD_WATER);
      if (day < FROM) continue;
      caught += tank.life.caught(0, 1) / (DAYS - FROM);
      adults += tank.life.count(0, 2) / (DAYS - FROM);
      young += tank.life.count(0, 1) / (DAYS - FROM);
    }
    const assimilated = caught * hunter.efficiencyOnPrey;
    expect(adults / (steady.adults * assimilated)).toBeGreaterThan(0.75);
    expect(adults / (steady.adults * assimilated)).toBeLessThan(1.25);
    expect(young / (steady.young * assimilated)).toBeGreaterThan(0.6);
    expect(young / (steady.young * assimilated)).toBeLessThan(1.6);
  });

  it('eats about as much as so many full-grown animals that only live, and has more adults', () => {
    for (const values of [GRAZER, valuesOf('woodlouse', WOODLOUSE)]) {
      const steady = steadyPopulation({ id: 'eater', traits: KIND, values }, 20)!;
      const upkeep = upkeepOfAdult(energeticsOf(values), 1);
      expect(steady.equivalents * upkeep).toBeGreaterThan(0.7);
      expect(steady.equivalents * upkeep).toBeLessThan(1.5);
      expect(steady.adults).toBeGreaterThan(1 / upkeep);
    }
  });

  it('is none for those who do not replace themselves with ample food', () => {
    const barren = { ...GRAZER, juvenileLoss: 0.4 };
    expect(steadyPopulation({ id: 'eater', traits: KIND, values: barren }, 20)).toBeUndefined();
    const salty = { ...KIND, development: 'brackish larvae' as const };
    expect(steadyPopulation({ id: 'eater', traits: salty, values: GRAZER }, 20)).toBeUndefined();
  });
});
