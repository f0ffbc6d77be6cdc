import { describe, expect, it } from 'vitest';
import { addCohort } from './cohort-train.ts';
import { EXPECTED } from './demography.ts';
import { type Pasture, setWanted } from './feeding.ts';
import { FOOD_COUNT, nothingEaten } from './foods.ts';
import { type LifeHistory, traitsOfLifeHistory } from './life-history.ts';
import { GOOD_WATER } from './life-test-kit.ts';
import { liveDay } from './live-day.ts';
import { clearDay, createLivingPopulation } from './living-population.ts';
import { TRAIT_IDS, type TraitValues } from './traits.ts';

/** A toad as Bombina orientalis: 18 mm at the change (Michaels et al. 2014), two months in egg and as tadpole (Peoria Zoo). */
const TOAD: LifeHistory = {
  habitat: 'amphibious',
  temperature: 20,
  lengthAtBirth: 3.6,
  lengthAtPuberty: 34,
  adultLength: 45,
  adultMass: 9000,
  maturityAge: 450,
  lengthAtChange: 18,
  larvalTime: 55,
  youngPerBrood: 40,
  broodInterval: 45,
  broodTime: 5,
  lifespan: 4000,
  diet: { algae: 0.5, prey: 0.5 },
  survives: {},
  timeInWater: 0.5,
};

/** Young that die of nothing but what comes on top for larvae. */
const NO_OTHER_DEATHS = { juvenileLoss: 0, lifespan: 20000, starvationHazard: 0, crowdingHazard: 0 };

function valuesOf(history: LifeHistory): TraitValues {
  const { priors } = traitsOfLifeHistory('toad', history);
  return Object.fromEntries(TRAIT_IDS.map((id) => [id, priors[id].median])) as TraitValues;
}

interface Reared {
  readonly days: number;
  readonly left: number;
}

/** Days with food without end until a length is reached, and who is left of 100. */
function rearTo(values: TraitValues, length: number): Reared {
  const population = createLivingPopulation(
    { id: 'toad', traits: { mating: 'self-fertile', brood: 'laid', development: 'water larvae' } },
    values,
  );
  const { train, energetics } = population;
  addCohort(train, energetics, { count: 100, length: energetics.birth, age: 0, isAdult: false });
  const pasture: Pasture = { amounts: new Float64Array(FOOD_COUNT).fill(1e9), area: 1, landArea: 1 };
  const meal = nothingEaten();
  for (let day = 1; day < 2000; day += 1) {
    setWanted(population, pasture, 1);
    meal.carbon.set(population.wanted);
    for (let k = 0; k < FOOD_COUNT; k += 1) {
      meal.nitrogen[k] = 0.2 * meal.carbon[k]!;
      meal.phosphorus[k] = 0.02 * meal.carbon[k]!;
    }
    clearDay(population.day);
    liveDay(population, meal, { water: GOOD_WATER, volume: Number.POSITIVE_INFINITY }, EXPECTED);
    if (train.length[0]! >= length) return { days: day, left: train.count[0]! };
  }
  return { days: Number.NaN, left: Number.NaN };
}

const daysTo = (values: TraitValues, length: number): number => rearTo(values, length).days;

describe('larvae with a time of their own', () => {
  const values = valuesOf(TOAD);

  it('change at the length and in the time told, and are grown up at the age told', () => {
    expect(Math.abs(daysTo(values, 18) - 55)).toBeLessThanOrEqual(2);
    expect(Math.abs(daysTo(values, 34) - 450)).toBeLessThanOrEqual(8);
  });

  it('are slower without it: the toad rule alone would take half a year to 18 mm', () => {
    const { larvalTime: _, ...alike } = TOAD;
    expect(daysTo(valuesOf(alike), 18)).toBeGreaterThan(150);
  });

  it('die more often until the change where the kind does, and no more often after it', () => {
    // Of Ranitomeya variabilis 46 % live through egg and tadpole in 85 d (Regnet et al. 2023): 0.009 a day.
    const frail = { ...values, ...NO_OTHER_DEATHS, larvalLoss: 0.009 };
    const atChange = rearTo(frail, 18);
    expect(atChange.left).toBeGreaterThan(100 * 0.46 ** ((atChange.days + 1) / 85));
    expect(atChange.left).toBeLessThan(100 * 0.46 ** ((atChange.days - 2) / 85));
    // Old age at 20000 d takes 0.0003 of a hundred in between.
    expect(rearTo(frail, 30).left).toBeCloseTo(rearTo(frail, 20).left, 2);
  });

  it('cannot take longer than it takes to grow up', () => {
    expect(() => traitsOfLifeHistory('toad', { ...TOAD, larvalTime: 500 })).toThrow(
      /maturityAge must be longer/,
    );
  });
});
