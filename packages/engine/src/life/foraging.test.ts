import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energeticsOf } from './energetics.ts';
import { FOOD_COUNT } from './foods.ts';
import { appealOf, dietOf, filledBy, satiation, vegetablesOf, wantedFood } from './foraging.ts';
import { createTank, GOOD_WATER, GRAZER, populationOf } from './life-test-kit.ts';

const grazer = energeticsOf(GRAZER);
const diet = dietOf(GRAZER);

const WALLEYE: readonly (readonly [number, number])[] = [
  [24.4, 7.41],
  [19.5, 11.85],
  [83.0, 13.91],
  [58.6, 16.38],
  [312.6, 17.28],
  [195.4, 19.34],
  [161.2, 22.8],
  [332.2, 22.39],
  [298.0, 25.35],
  [356.6, 24.44],
  [468.9, 25.27],
  [776.7, 24.28],
  [268.7, 29.3],
  [586.2, 30.12],
  [664.3, 31.28],
  [2085.8, 38.19],
  [2246.9, 32.59],
  [2691.5, 37.12],
  [2798.9, 33.99],
  [3492.5, 31.03],
];

function wanted(amounts: readonly number[], area = 1): Float64Array {
  const into = new Float64Array(FOOD_COUNT);
  wantedFood(diet, grazer, { amounts: Float64Array.from(amounts), area }, into);
  return into;
}
function worth(bites: Float64Array): number {
  return bites.reduce((sum, bite, k) => sum + bite * diet.efficiency[k]!, 0);
}

describe('filledBy', () => {
  it('meets the intake of a water flea of 2 mm at five concentrations within 13 %', () => {
    // Gergs et al. 2014, PLoS ONE 9: e91503: mg C a day at mg C/L, half saturation near 0.2 mg C/L.
    const eaten = { 0.0238: 0.00153, 0.0975: 0.00625, 0.195: 0.0139, 0.4875: 0.0243, 1.95: 0.0273 };
    for (const [food, intake] of Object.entries(eaten)) {
      expect(Math.abs((0.0273 * filledBy(Number(food), 0.2)) / intake - 1)).toBeLessThan(0.13);
    }
  });
});

describe('satiation', () => {
  it('is one half at the half saturation', () => {
    expect(satiation(0.05, 0.05)).toBe(0.5);
  });

  it('gives the published fit of walleye eating perch', () => {
    // Prey density and consumption of Swenson 1977 as tabulated by Madenjian & Carpenter 1991; least-squares fit and
    // its sum of squares computed with SciPy 1.17.1: Cmax 34.04626637, half saturation 105.7334926, 282.9834361.
    let squares = 0;
    WALLEYE.forEach(([density, eaten]) => {
      squares += (34.04626637 * satiation(density, 105.7334926) - eaten) ** 2;
    });
    expect(squares).toBeCloseTo(282.9834361, 5);
  });
});

describe('wantedFood', () => {
  it('wants nothing where there is nothing, and no algae below the refuge', () => {
    expect([...wanted([0, 0, 0, 0, 0])].every((each) => each === 0)).toBe(true);
    expect(wanted([0.019, 0, 0, 0, 0])[0]).toBe(0);
  });

  it('fills the largest assimilation on boundless rich food', () => {
    expect(worth(wanted([1e6, 0, 0, 0, 0]))).toBeCloseTo(grazer.assimilation, 12);
  });

  it('eats more of poor food, up to the limit of the gut', () => {
    const litter = wanted([0, 0, 1e6, 0, 0]);
    expect(litter[2]).toBeGreaterThan(wanted([1e6, 0, 0, 0, 0])[0]!);
    expect(litter[2]).toBeCloseTo(grazer.ingestion, 10);
  });

  it('never wants more than can be assimilated nor than the gut holds, whatever is served', () => {
    const amount = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(amount, { minLength: 5, maxLength: 5 }), (amounts) => {
        const bites = wanted(amounts);
        const eaten = bites.reduce((sum, bite) => sum + bite, 0);
        expect(worth(bites)).toBeLessThanOrEqual(grazer.assimilation * (1 + 1e-12));
        expect(eaten).toBeLessThanOrEqual(grazer.ingestion * (1 + 1e-12));
      }),
    );
  });

  it('depends on amounts per area only', () => {
    const single = wanted([0.2, 0.1, 0.3, 0.01, 0.4], 1);
    const double = wanted([0.4, 0.2, 0.6, 0.02, 0.8], 2);
    single.forEach((bite, k) => {
      expect(double[k]).toBeCloseTo(bite, 18);
    });
  });
});

describe('kinds of feed', () => {
  const hunter = {
    ...GRAZER,
    preferenceForFeed: 25,
    preferenceForPrey: 5,
    preferenceForDetritus: 0,
    algaeRefuge: 0,
  };

  it('are all one to grazers; hunters refuse those of plants', () => {
    expect(vegetablesOf(GRAZER)).toBe(1);
    expect(vegetablesOf(hunter)).toBe(0);
    for (const meaty of [0, 0.5, 1]) expect(appealOf(diet, meaty)).toBe(1);
    expect(appealOf(dietOf(hunter), 0)).toBe(0);
    expect(appealOf(dietOf(hunter), 0.25)).toBeCloseTo(0.5, 12);
    expect(appealOf(dietOf(hunter), 1)).toBe(1);
  });

  it('are eaten by who takes them, once it is told what lies there', () => {
    const eaten = (meaty: number): readonly number[] => {
      const kind = { mating: 'self-fertile', brood: 'laid' } as const;
      const founders = [{ stage: 'adult', count: 20 }] as const;
      const populations = [
        populationOf('hunter', founders, hunter, kind),
        populationOf('grazer', founders, GRAZER, kind),
      ];
      const tank = createTank({ populations, demography: 'expected', area: 0.5, volume: 0.03 });
      tank.life.taste(meaty);
      tank.serve('feedCarbon', 1e-4);
      tank.pass(GOOD_WATER);
      return [tank.life.day(0).eatenCarbon, tank.life.day(1).eatenCarbon];
    };
    expect(eaten(0)[0]).toBe(0);
    expect(eaten(0)[1]).toBeGreaterThan(0);
    expect(eaten(1)[0]).toBeGreaterThan(eaten(1)[1]!);
  });
});
