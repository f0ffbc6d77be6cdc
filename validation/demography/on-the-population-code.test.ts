import { VARIABLE_INDEX } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { lifeTable } from '../../packages/engine/src/community/life-table.ts';
import { rearAlone } from '../../packages/engine/src/community/rearing-alone.ts';
import { drawn } from '../../packages/engine/src/life/demography.ts';
import {
  createTank,
  GOOD_WATER,
  GRAZER,
  populationOf,
  type Tank,
} from '../../packages/engine/src/life/life-test-kit.ts';
import type { TraitValues } from '../../packages/engine/src/life/traits.ts';
import { createRandom } from '../../packages/engine/src/numerics/random.ts';
import { leastOf } from './least.ts';

/** An invented animal that divides, of nearly one size, so that numbers tell of food as unicells and models have it. */
const DIVIDER: TraitValues = {
  ...GRAZER,
  lengthAtBirth: 2.4,
  lengthAtPuberty: 3,
  lengthAtEnd: 3.6,
  growthRate: 0.12,
  shareToSoma: 0.6,
  eggPerNewborn: 1,
  broodTime: 1,
  broodInterval: 6,
  femaleShare: 1,
  maxIngestion: 8,
  algaeRefuge: 0,
  store: 0,
  lifespan: 20000,
  adultLoss: 0.01,
  juvenileLoss: 0.01,
  broodLoss: 0,
  crowdingHazard: 0,
};
const DIVIDES = { mating: 'division', brood: 'laid' } as const;

const count = ({ life }: Tank, population = 0): number =>
  life.count(population, 1) + life.count(population, 2);
const algae = VARIABLE_INDEX.attachedAlgae;

/** Lets algae grow for a day towards the most there can be, as the logistic equation does [mol]. */
function regrow({ values }: Tank, most: number, rate: number): void {
  const grown = Math.exp(rate);
  const now = values[algae]!;
  values[algae] = (most * now * grown) / (most + now * (grown - 1));
}

const AREA = 100;

/** The last thousand of four thousand days of grazers on regrowing algae [mol/m2 of algae]. */
function grazedAlgae(richness: number): { least: number; most: number; mean: number; grazers: number } {
  const grazers = populationOf('divider', [{ stage: 'adult', count: 2000 }], DIVIDER, DIVIDES);
  const tank = createTank({ populations: [grazers], demography: 'expected', area: AREA, volume: AREA });
  tank.serve('attachedAlgae', 0.9 * richness * AREA);
  const course: number[] = [];
  for (let day = 0; day < 4000; day += 1) {
    tank.pass(GOOD_WATER);
    regrow(tank, richness * AREA, 0.1);
    if (day >= 3000) course.push(tank.values[algae]! / AREA);
  }
  const mean = course.reduce((sum, each) => sum + each, 0) / course.length;
  return { least: Math.min(...course), most: Math.max(...course), mean, grazers: count(tank) };
}

describe('grazers on regrowing algae', () => {
  // Rosenzweig 1971: with intake half of the most at H, they settle up to a richness of 2 N* + H and cycle beyond.
  const settled = grazedAlgae(0.29);
  const threshold = 2 * settled.mean + DIVIDER.halfSaturation;

  it('settle up to the published threshold', () => {
    expect(settled.grazers).toBeGreaterThan(1000);
    for (const richness of [0.29, threshold]) {
      const { least, most, mean } = grazedAlgae(richness);
      expect((most - least) / mean).toBeLessThan(0.03);
    }
  });
  it('are held to the same algae however rich the ground: what grows is eaten', () => {
    expect(grazedAlgae(threshold).mean / settled.mean).toBeCloseTo(1, 1);
  });
  it('cycle a sixth above it, and overshoot to their end where it is richer still', () => {
    const cycling = grazedAlgae((7 / 6) * threshold);
    expect((cycling.most - cycling.least) / cycling.mean).toBeGreaterThan(0.1);
    expect(grazedAlgae(2 * threshold).grazers).toBeLessThan(1);
  });
});

/** Numbers of dividers that die at 0.04 a day on a constant daily ration [mol C]. */
function onRation(ration: number): number[] {
  const traits = { ...DIVIDER, adultLoss: 0.04, juvenileLoss: 0.04 };
  const dividers = populationOf('divider', [{ stage: 'adult', count: 20 }], traits, DIVIDES);
  const tank = createTank({ populations: [dividers], demography: 'expected', area: 0.1, volume: AREA });
  const course = [20];
  for (let day = 0; day < 300; day += 1) {
    tank.serve('feedCarbon', ration);
    tank.serve('carcassCarbon', 0);
    tank.pass(GOOD_WATER);
    course.push(count(tank));
  }
  return course;
}

function logisticFit(course: readonly number[]): { most: number; rate: number; spread: number } {
  const squares = ([most, rate, first]: readonly number[]): number =>
    course.reduce(
      (sum, each, day) => sum + (most! / (1 + (most! / first! - 1) * Math.exp(-rate! * day)) - each) ** 2,
      0,
    );
  const fit = leastOf(squares, [Math.max(...course), 0.05, 20]);
  return { most: fit[0]!, rate: fit[1]!, spread: Math.sqrt(squares(fit) / course.length) / fit[0]! };
}

describe('animals on a constant ration', () => {
  const once = logisticFit(onRation(0.01));
  it("grow as near to a logistic as Gause's Paramecium aurelia did", () => {
    // Gause 1934: 25 counts lie around their logistic of 543.5 by sqrt(27694.95 / 25).
    expect(once.spread).toBeLessThan(Math.sqrt(27694.94648 / 25) / 543.5210895);
    expect(once.rate).toBeGreaterThan(0.01);
  });
  it('to about twice the numbers on twice the ration', () => {
    // More than twice: where more lie on the same ground, less is left over.
    const times = logisticFit(onRation(0.02)).most / once.most;
    expect(times).toBeGreaterThan(1.9);
    expect(times).toBeLessThan(2.5);
  });
});

it('of two that eat the same, the one that lives on less is left, as in Gause 1934', () => {
  const founders = [{ stage: 'adult', count: 1000 }] as const;
  const frugal = populationOf('frugal', founders, DIVIDER, DIVIDES);
  const needy = populationOf('needy', founders, { ...DIVIDER, halfSaturation: 0.06 }, DIVIDES);
  const tank = createTank({ populations: [needy, frugal], demography: 'expected', area: AREA, volume: AREA });
  tank.serve('attachedAlgae', 0.3 * AREA);
  for (let day = 0; day < 3000; day += 1) {
    tank.pass(GOOD_WATER);
    regrow(tank, 0.3 * AREA, 0.1);
  }
  expect(count(tank, 1)).toBeGreaterThan(1000);
  expect(count(tank, 0)).toBeLessThan(0.01 * count(tank, 1));
});

/** How far a part of n draws may lie from its chance: four times the binomial error. */
const reach = (chance: number, n: number): number => 4 * Math.sqrt((chance * (1 - chance)) / n);

describe('whole animals, drawn', () => {
  // Nasell 2001; the exact chances are those of demography.json. A twentieth of a day is a step.
  it.each([
    [1, 0.552850045, 5000],
    [5, 0.08276928713, 2000],
    [20, 0.005327788081, 1000],
  ])('of %i in a place for 20, the part %f die out by day 50', (founders, chance, lines) => {
    const demography = drawn(createRandom(1, `logistic-${founders}`));
    const step = 0.05;
    let extinct = 0;
    for (let line = 0; line < lines; line += 1) {
      let n = founders;
      for (let time = 0; time < 50 && n > 0; time += step) {
        const born = demography.events(0.2 * n * step);
        n += born - demography.among(n, 1 - Math.exp(-(0.1 + (0.1 * n) / 20) * step));
      }
      if (n === 0) extinct += 1;
    }
    expect(Math.abs(extinct / lines - chance)).toBeLessThan(reach(chance, lines));
  });

  it.each([
    [1, 0.4171883561],
    [3, 0.07261001657],
    [10, 0.0001597062036],
  ])('lines of %i that bear 1.5 young each die out in the part %f of cases', (founders, chance) => {
    const demography = drawn(createRandom(2, `line-${founders}`));
    const lines = 20_000;
    let extinct = 0;
    for (let line = 0; line < lines; line += 1) {
      let n = founders;
      while (n > 0 && n < 60) n = demography.events(1.5 * n);
      if (n === 0) extinct += 1;
    }
    expect(Math.abs(extinct / lines - chance)).toBeLessThan(reach(chance, lines));
  });

  it('lines of the population code die out about as often as its life table says', () => {
    const species = {
      id: 'grazer',
      traits: { mating: 'self-fertile', brood: 'carried' },
      values: GRAZER,
    } as const;
    const lines = 300;
    let extinct = 0;
    for (let line = 0; line < lines; line += 1) {
      const demography = drawn(createRandom(3, `lives-${line}`));
      const { population, pass } = rearAlone(species, 20, 1, { demography });
      const { train, broods } = population;
      const living = (): number => train.count.slice(0, train.size).reduce((sum, each) => sum + each, 0);
      while ((train.size > 0 || broods.size > 0) && living() < 40) pass(true);
      if (train.size === 0) extinct += 1;
    }
    const { lineDiesOut } = lifeTable(species, 20);
    // The table lets young come one by one, the code in broods: at most a tenth more lines end.
    expect(extinct / lines).toBeGreaterThan(lineDiesOut - reach(lineDiesOut, lines));
    expect(extinct / lines).toBeLessThan(lineDiesOut + 0.1 + reach(lineDiesOut, lines));
  });
});
