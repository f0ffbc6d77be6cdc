import { describe, expect, it } from 'vitest';
import { createTank, DEATHLESS, GOOD_WATER, GRAZER, populationOf, type Tank } from './life-test-kit.ts';
import { DEATH_CAUSES } from './living-population.ts';
import { STAGES, type TraitValues } from './traits.ts';

const EATEN = DEATH_CAUSES.indexOf('eaten');
const ADULT = STAGES.indexOf('adult');
const HUNTER: TraitValues = {
  ...GRAZER,
  ...DEATHLESS,
  lengthAtBirth: 4,
  lengthAtPuberty: 12,
  lengthAtEnd: 25,
  preferenceForAlgae: 0,
  preferenceForDetritus: 0,
  preferenceForLitter: 0,
  preferenceForFeed: 0,
  preferenceForPlants: 0,
  preferenceForPrey: 10,
  preySmallest: 0.02,
  preyLargest: 0.5,
};
const PREY: TraitValues = { ...GRAZER, ...DEATHLESS, breedingWarmest: 5, breedingCoolest: 4 };

interface Given {
  readonly hunter?: Partial<TraitValues>;
  readonly prey?: Partial<TraitValues>;
  readonly kind?: 'crustaceans' | 'snails' | 'worms';
  readonly hunters?: number;
  readonly preys?: number;
}

function tankOf({ hunter = {}, prey = {}, kind = 'crustaceans', hunters = 4, preys = 300 }: Given): Tank {
  return createTank({
    populations: [
      populationOf(
        'hunter',
        [{ stage: 'adult', count: hunters }],
        { ...HUNTER, ...hunter },
        {
          mating: 'two sexes',
          brood: 'laid',
          hunts: { crustaceans: 1, worms: 1 },
        },
      ),
      populationOf(
        'prey',
        [{ stage: 'adult', count: preys }],
        { ...PREY, ...prey },
        {
          mating: 'two sexes',
          brood: 'carried',
          preyKind: kind,
        },
      ),
    ],
    demography: 'expected',
    area: 0.5,
    volume: 0.03,
  });
}
function eaten(tank: Tank, days: number): number {
  let sum = 0;
  for (let day = 0; day < days; day += 1) {
    tank.serve('attachedAlgae', 1e4);
    tank.pass(GOOD_WATER);
    sum += tank.life.day(1).deaths[EATEN]!;
  }
  return sum;
}

describe('hunting', () => {
  it('takes prey within its size window, keeps the hunters alive and books what was caught', () => {
    const tank = tankOf({});
    expect(eaten(tank, 20)).toBeGreaterThan(10);
    expect(tank.life.count(0, ADULT)).toBeGreaterThan(3.9);
    expect(tank.life.caught(0, 1)).toBeGreaterThan(0);
    expect(tank.life.caught(1, 0)).toBe(0);
    const { eatenByFood } = tank.life.day(0);
    expect(eatenByFood.at(-1)).toBeCloseTo(tank.life.caught(0, 1), 15);
  });

  it('spares prey too large, of a kind it does not hunt, or living elsewhere', () => {
    expect(eaten(tankOf({ hunter: { preyLargest: 0.05 } }), 20)).toBe(0);
    expect(eaten(tankOf({ kind: 'snails' }), 20)).toBe(0);
    expect(eaten(tankOf({ hunter: { shareInWater: 0 } }), 20)).toBe(0);
  });

  it('takes a worm too long for its mouth by how thick it is, and sees it by its length', () => {
    // Prey of 3 mm and more, hunters of 12 to 25 mm: mouths of 1.2 to 2.5 mm, and worms that count as 0.44 of their length.
    const thin = { dryMassPerCube: 0.0005 };
    const short = { preyLargest: 0.1 };
    expect(eaten(tankOf({ hunter: short, prey: thin, kind: 'crustaceans' }), 20)).toBe(0);
    expect(eaten(tankOf({ hunter: short, prey: thin, kind: 'worms' }), 20)).toBeGreaterThan(10);
    const keen = { preySmallest: 0.2, preyLargest: 1 };
    const asOthers = eaten(tankOf({ hunter: keen, prey: thin, kind: 'crustaceans' }), 20);
    expect(eaten(tankOf({ hunter: keen, prey: thin, kind: 'worms' }), 20)).toBeCloseTo(asOthers, 9);
    expect(asOthers).toBeGreaterThan(10);
  });

  it('catches fewer of those that hide, and of more cover', () => {
    const open = eaten(tankOf({ prey: { hiding: 0 }, hunters: 1 }), 10);
    const hidden = tankOf({ prey: { hiding: 0.95 }, hunters: 1 });
    const inGravel = eaten(hidden, 10);
    const planted = tankOf({ prey: { hiding: 0.95 }, hunters: 1 });
    planted.serve('submergedPlants', 20);
    const inPlants = eaten(planted, 10);
    expect(inGravel).toBeLessThan(open);
    expect(inPlants).toBeLessThan(0.9 * inGravel);
  });

  it('finds scarce prey by the ground it searches, and is sated all the same where prey abounds', () => {
    const day = (search: number, prey: number): number => {
      const tank = tankOf({ hunter: { search }, prey: { hiding: 0 }, hunters: 1, preys: prey });
      return eaten(tank, 1) / prey;
    };
    // One hunter of 12 to 25 mm clears up to 0.005 m2 of the 0.5 m2 a day, by the square of its length.
    expect(day(0.005, 1)).toBeLessThan(0.01);
    expect(day(0.005, 1)).toBeGreaterThan((0.01 * 12 * 12) / (25 * 25));
    expect(day(0.01, 1) / day(0.005, 1)).toBeCloseTo(2, 1);
    expect(day(100, 1e5) / day(10, 1e5)).toBeCloseTo(1, 1);
  });

  it('takes of two kinds by what is there and how it chooses, and turns to the one when the other dwindles', () => {
    const share = (snails: number): number => {
      const kinds = [
        ['snails', snails],
        ['crustaceans', 100],
      ] as const;
      const tank = createTank({
        populations: [
          populationOf('hunter', [{ stage: 'adult', count: 2 }], HUNTER, {
            mating: 'two sexes',
            brood: 'laid',
            hunts: { crustaceans: 1, snails: 0.5 },
          }),
          ...kinds.map(([kind, count]) =>
            populationOf(kind, [{ stage: 'adult', count }], PREY, {
              mating: 'two sexes',
              brood: 'carried',
              preyKind: kind,
            }),
          ),
        ],
        demography: 'expected',
        area: 0.5,
        volume: 0.03,
      });
      tank.serve('attachedAlgae', 1e4);
      tank.pass(GOOD_WATER);
      return tank.life.caught(0, 1) / (tank.life.caught(0, 1) + tank.life.caught(0, 2));
    };
    // Weights 0.5 x 300 to 1 x 100, and 0.5 x 3 to 100; a day thins the ones most hunted a little.
    expect(share(300)).toBeCloseTo(0.6, 1);
    expect(share(3)).toBeCloseTo(1.5 / 101.5, 2);
  });

  it('never takes more than there is', () => {
    const tank = tankOf({ hunters: 200 });
    expect(eaten(tank, 60)).toBeLessThanOrEqual(300 + 1e-9);
    expect(tank.life.count(1, ADULT)).toBeGreaterThanOrEqual(0);
  });

  it('on land catches in a day no more than lies open: a tenth where leaves are nine times the ground', () => {
    const land = 0.2;
    const part = (leaves: number, inGround: number): number => {
      const tank = createTank({
        populations: [
          populationOf(
            'frog',
            [{ stage: 'adult', count: 4 }],
            { ...HUNTER, shareInWater: 0, search: 100 },
            { mating: 'two sexes', brood: 'laid', preyKind: 'amphibians', hunts: { 'small arthropods': 1 } },
          ),
          populationOf(
            'springtail',
            [{ stage: 'adult', count: 10 }],
            { ...PREY, shareInWater: 0, hiding: 0 },
            { mating: 'two sexes', brood: 'laid', preyKind: 'small arthropods', inGround },
          ),
        ],
        demography: 'expected',
        area: 0.5,
        volume: 0.03,
        land,
      });
      tank.serve('landLitterCarbon', (leaves * land) / 0.7);
      tank.pass(GOOD_WATER);
      return tank.life.day(1).deaths[EATEN]! / 10;
    };
    expect(part(0, 0)).toBeGreaterThan(0.9);
    expect(part(9, 0)).toBeCloseTo(0.1, 3);
    expect(part(9, 0.5)).toBeCloseTo(0.05, 3);
    expect(part(0, 1)).toBe(0);
  });
});
