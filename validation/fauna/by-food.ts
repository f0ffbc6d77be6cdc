import { animalTraitsOf } from '@shoreglass/contract';
import {
  createTank,
  GOOD_WATER,
  populationOf,
  type Tank,
} from '../../packages/engine/src/life/life-test-kit.ts';
import { NotStated, type Quantity, ultimateLength } from './quantities.ts';
import { rear } from './rearing.ts';
import type { Species } from './species.ts';

const LONGEST = 300;
const COHORT = 1000;

/** Longest length that newborns reach with the food held at a concentration, else with food without end [mm]. */
export const lengthInTheEnd: Quantity = (question) => {
  const { species, temperatures } = question;
  if (species.concentration === undefined) return ultimateLength(question);
  const [temperature] = temperatures;
  if (temperature === undefined) throw new NotStated('the conditions name no temperature');
  const rearing = rear(species, { temperature, count: COHORT });
  let longest = rearing.length();
  for (let day = 0; day < LONGEST && rearing.alive() > 0; day += 1) {
    rearing.pass('ample');
    rearing.keepOldest();
    const length = rearing.alive() > 0 ? rearing.length() : longest;
    if (length <= longest + 1e-6 && day > 20) break;
    longest = Math.max(longest, length);
  }
  return longest;
};

/** Longer than a year; the case names no length. Model animals that divide keep their age and die of it after some 900 d. */
const DAYS = 450;
/** Ground of the dish the animals and their food share [m2]. @source assumed: bowls of that time */
const DISH = 0.02;

function total({ life }: Tank): number {
  return life.count(0, 1) + life.count(0, 2);
}

/** Numbers day by day of founders on a constant daily ration of feed [mol C], in much water. */
function onRation({ animal, traits }: Species, founders: number, ration: number): number[] {
  const { priors: _, ...kind } = animalTraitsOf(animal).traits;
  const population = populationOf(animal.id, [{ stage: 'adult', count: founders }], traits, kind);
  const tank = createTank({ populations: [population], demography: 'expected', area: DISH, volume: 1 });
  return Array.from({ length: DAYS }, () => {
    tank.serve('feedCarbon', ration);
    tank.serve('carcassCarbon', 0);
    tank.pass({ ...GOOD_WATER, temperature: traits.referenceTemperature });
    return total(tank);
  });
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;

/** Daily ration of the trial [mol C]: about half a milligram of dry food for each founder. */
const RATION = 1.2e-3;

/**
 * 1 when founders on a constant ration rise to a plateau that they keep within a tenth to the end, without having
 * stood more than a fifth above it before, and twice the ration carries about twice as many; 0 otherwise.
 */
export const plateauOnRation: Quantity = ({ species, text }) => {
  const founders = Number(/(\d+) founders/.exec(text)?.[1] ?? Number.NaN);
  if (Number.isNaN(founders)) throw new NotStated('no number of founders is named');
  const numbers = onRation(species, founders, RATION);
  const plateau = meanOf(numbers.slice(-100));
  const before = meanOf(numbers.slice(-250, -150));
  const twice = meanOf(onRation(species, founders, 2 * RATION).slice(-100));
  const holds =
    plateau > 2 * founders &&
    Math.abs(plateau / before - 1) < 0.1 &&
    Math.max(...numbers) < 1.2 * plateau &&
    Math.abs(twice / plateau - 2) < 0.3;
  return holds ? 1 : 0;
};
