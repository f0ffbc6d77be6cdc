import { describe, expect, it } from 'vitest';
import { createRandom, type Random } from '../numerics/random.ts';
import { VARIABLE_INDEX } from '../variables/variables.ts';
import type { DayConditions } from './day-conditions.ts';
import { populationBy } from './land-test-kit.ts';
import { createTank, DEATHLESS, GOOD_WATER, GRAZER, populationOf, type Tank } from './life-test-kit.ts';
import { DEATH_CAUSES } from './living-population.ts';
import { STAGES, type TraitValues } from './traits.ts';

const ADULT = STAGES.indexOf('adult');
const JUVENILE = STAGES.indexOf('juvenile');
const BROODED = STAGES.indexOf('brooded');
const DAMP = { temperature: 22, humidity: 85, groundWetness: 0.7 };
const WARM: DayConditions = { ...GOOD_WATER, temperature: 25, air: { ...DAMP, temperature: 25 } };
const COOL: DayConditions = { ...GOOD_WATER, air: DAMP };
const LAND = 0.15;

interface Given {
  readonly kind?: 'crab' | 'woodlouse';
  readonly founders?: number;
  readonly changes?: Partial<TraitValues>;
  readonly demography?: 'expected' | Random;
  readonly size?: number;
}

function landTank({
  kind = 'crab',
  founders = 6,
  changes = {},
  demography = 'expected',
  size = 1,
}: Given): Tank {
  return createTank({
    populations: [populationBy(kind, [{ stage: 'adult', count: founders }], changes)],
    demography,
    area: 0.3 * size,
    volume: 0.02 * size,
    land: LAND * size,
  });
}

/** Deaths by cause over the days. */
function pass(
  tank: Tank,
  days: number,
  conditions: DayConditions,
  serve: (day: number) => void,
): Record<string, number> {
  const deaths = Object.fromEntries(DEATH_CAUSES.map((cause) => [cause, 0]));
  for (let day = 0; day < days; day += 1) {
    serve(day);
    tank.pass(conditions);
    for (const [c, cause] of DEATH_CAUSES.entries())
      deaths[cause] = deaths[cause]! + tank.life.day(0).deaths[c]!;
  }
  return deaths;
}

const littered = (tank: Tank) => () => tank.serve('landLitterCarbon', 10 * LAND);
const everyThreeDays = (tank: Tank, protein: number) => (day: number) => {
  tank.serve('landLitterCarbon', 10 * LAND);
  if (day % 3 === 0) tank.serve('remainsCarbon', protein);
};

describe('a small breeding group of land crabs', () => {
  // Common practice, no source: young show within about four months; near adult at about five months of age; protein
  // every three to four days prevents most killing; the hungry turn on each other; a few hundred days overfill the place.
  it('shows young within four months, near adult five months after their release', () => {
    const tank = landTank({});
    const days = { born: 0, grown: 0 };
    for (let day = 0; day < 330; day += 1) {
      everyThreeDays(tank, 0.05)(day);
      tank.pass(WARM);
      if (days.born === 0 && tank.life.count(0, JUVENILE) >= 5) days.born = day;
      if (days.grown === 0 && tank.life.count(0, ADULT) > 6) days.grown = day;
    }
    expect(days.born).toBeGreaterThan(25);
    expect(days.born).toBeLessThan(120);
    expect(days.grown - days.born).toBeGreaterThan(110);
    expect(days.grown - days.born).toBeLessThan(230);
  });

  it('turns on its own kind when hungry; protein every three days prevents most of it', () => {
    const hungry = landTank({});
    const fed = landTank({});
    const killedHungry = pass(hungry, 360, WARM, everyThreeDays(hungry, 0.005))['eaten by own kind']!;
    const killedFed = pass(fed, 360, WARM, everyThreeDays(fed, 0.1))['eaten by own kind']!;
    expect(killedHungry).toBeGreaterThan(2);
    expect(killedFed).toBeLessThan(0.3 * killedHungry);
  });

  it('overfills its place within a few hundred days when well fed', () => {
    const tank = landTank({});
    const deaths = pass(tank, 300, WARM, everyThreeDays(tank, 0.2));
    expect(deaths.crowding).toBeGreaterThan(20);
    expect(tank.life.count(0, JUVENILE) + tank.life.count(0, ADULT)).toBeGreaterThan(5 * 6);
  });
});

describe('woodlice', () => {
  it('multiply on leaf litter and sow their dead and faeces on the land', () => {
    const tank = landTank({ kind: 'woodlouse', founders: 15 });
    pass(tank, 200, COOL, littered(tank));
    expect(tank.life.count(0, JUVENILE)).toBeGreaterThan(15);
    expect(tank.values[VARIABLE_INDEX.soilCarbon]!).toBeGreaterThan(0);
    expect(tank.values[VARIABLE_INDEX.remainsCarbon]!).toBeGreaterThan(0);
    expect(tank.values[VARIABLE_INDEX.givenOffCarbon]!).toBeGreaterThan(0);
    expect(tank.values[VARIABLE_INDEX.detritusCarbon]!).toBe(0);
    expect(tank.values[VARIABLE_INDEX.excretedCarbon]!).toBe(0);
  });

  it('dry up where air and ground are dry, and live in dry air on wet ground', () => {
    const dry = landTank({ kind: 'woodlouse', founders: 20, changes: DEATHLESS });
    const moist = landTank({ kind: 'woodlouse', founders: 20, changes: DEATHLESS });
    const air = { temperature: 20, humidity: 35, groundWetness: 0 };
    const killed = pass(dry, 30, { ...GOOD_WATER, air }, littered(dry));
    pass(moist, 30, { ...GOOD_WATER, air: { ...air, groundWetness: 0.9 } }, littered(moist));
    expect(killed.air).toBeGreaterThan(15);
    expect(moist.life.count(0, ADULT)).toBeGreaterThan(19);
  });

  it('starve where there is nothing', () => {
    const tank = landTank({ kind: 'woodlouse', founders: 20, changes: DEATHLESS });
    for (let day = 0; day < 200; day += 1) {
      for (const id of [
        'soilCarbon',
        'soilNitrogen',
        'soilPhosphorus',
        'remainsCarbon',
        'remainsNitrogen',
        'remainsPhosphorus',
      ] as const)
        tank.values[VARIABLE_INDEX[id]] = 0;
      tank.pass(COOL);
    }
    expect(tank.life.count(0, ADULT) + tank.life.count(0, JUVENILE)).toBe(0);
  });
});

describe('conservation on land', () => {
  it.each(['expected', 'drawn'] as const)(
    'holds with hunting, moults, leaving and both habitats (%s)',
    (mode) => {
      const demography = mode === 'expected' ? mode : createRandom(3, 'land');
      const tank = createTank({
        populations: [
          populationBy('crab', [{ stage: 'adult', count: 8 }], { leaving: 0.01 }),
          populationBy('woodlouse', [{ stage: 'adult', count: 60 }]),
          populationOf('grazer', [{ stage: 'adult', count: 40 }], GRAZER, {
            mating: 'two sexes',
            brood: 'carried',
            preyKind: 'crustaceans',
          }),
        ],
        demography,
        area: 0.3,
        volume: 0.02,
        land: LAND,
      });
      tank.serve('landLitterCarbon', 2);
      tank.serve('attachedAlgae', 0.2);
      tank.serve('litterCarbon', 0.5);
      for (let day = 0; day < 150; day += 1) {
        const before = (['carbon', 'nitrogen', 'phosphorus'] as const).map(tank.total);
        tank.pass({ ...WARM, openCover: 0.05 });
        const after = (['carbon', 'nitrogen', 'phosphorus'] as const).map(tank.total);
        for (const [e, held] of before.entries())
          expect(Math.abs(after[e]! - held)).toBeLessThanOrEqual(1e-12 * held);
        expect(tank.values.every((value) => value >= 0)).toBe(true);
      }
      expect(tank.life.caught(0, 1)).toBeGreaterThanOrEqual(0);
      expect(tank.values[VARIABLE_INDEX.givenOffNitrogen]!).toBeGreaterThan(0);
    },
  );

  it('doubles when land, water, food and founders double', () => {
    // Many enough that no sex is missing by chance, which does depend on numbers.
    const single = landTank({ founders: 600, size: 10 });
    const double = landTank({ founders: 1200, size: 20 });
    for (let day = 0; day < 120; day += 1) {
      single.serve('landLitterCarbon', 15);
      double.serve('landLitterCarbon', 30);
      if (day % 3 === 0) {
        single.serve('remainsCarbon', 0.2);
        double.serve('remainsCarbon', 0.4);
      }
      single.pass(WARM);
      double.pass(WARM);
    }
    for (const stage of [BROODED, JUVENILE, ADULT])
      expect(double.life.count(0, stage) / single.life.count(0, stage)).toBeCloseTo(2, 4);
  });
});

describe('modes of development', () => {
  const well = (tank: Tank) => () => tank.serve('attachedAlgae', 1e4);
  const kind = { mating: 'two sexes', brood: 'laid' } as const;

  it('larvae that need salt never become young in fresh water', () => {
    const tank = createTank({
      populations: [
        populationOf('shrimp', [{ stage: 'adult', count: 30 }], GRAZER, {
          ...kind,
          development: 'brackish larvae',
        }),
      ],
      demography: 'expected',
      area: 0.5,
      volume: 0.03,
    });
    let laid = 0;
    let born = 0;
    pass(tank, 120, GOOD_WATER, () => {
      well(tank)();
      laid += tank.life.day(0).laid;
      born += tank.life.day(0).born;
    });
    expect(laid).toBeGreaterThan(100);
    expect(born).toBe(0);
    expect(tank.life.count(0, JUVENILE)).toBe(0);
  });

  it('water larvae feed and die by the water until they change, and by the air after', () => {
    const traits = {
      ...GRAZER,
      ...DEATHLESS,
      shareInWater: 0,
      lengthAtChange: 3,
      humidityLow: 90,
      moistShelter: 0,
    };
    const make = () =>
      createTank({
        populations: [
          populationOf('newt', [{ stage: 'juvenile', count: 50 }], traits, {
            ...kind,
            development: 'water larvae',
          }),
        ],
        demography: 'expected',
        area: 0.5,
        volume: 0.03,
        land: 0.2,
      });
    const air = { temperature: 20, humidity: 50, groundWetness: 0 };
    const larvae = make();
    const early = pass(larvae, 5, { ...GOOD_WATER, air }, well(larvae));
    const changed = make();
    const late = pass(changed, 90, { ...GOOD_WATER, air }, well(changed));
    expect(early.air).toBeLessThan(1);
    expect(late.air).toBeGreaterThan(40);
  });

  it('clones and dividers need no partner', () => {
    const tank = createTank({
      populations: [
        populationOf(
          'worm',
          [{ stage: 'adult', count: 1 }],
          { ...GRAZER, ...DEATHLESS, femaleShare: 1 },
          { mating: 'division', brood: 'laid' },
        ),
      ],
      demography: 'expected',
      area: 0.5,
      volume: 0.03,
    });
    pass(tank, 60, GOOD_WATER, well(tank));
    expect(tank.life.count(0, JUVENILE) + tank.life.count(0, ADULT)).toBeGreaterThan(5);
  });
});

describe('moults', () => {
  it('kill in soft or acid water, hardly in hard', () => {
    const deaths = ([{ hardness: 3 }, { pH: 6 }, {}] as const).map((change) => {
      const traits = {
        ...GRAZER,
        ...DEATHLESS,
        breedingCoolest: 3,
        breedingWarmest: 4,
        moultInterval: 20,
        moultHardness: 6,
        moultPH: 7,
        hardnessLow: 1,
        pHLow: 5,
      };
      const tank = createTank({
        populations: [
          populationOf('shrimp', [{ stage: 'adult', count: 100 }], traits, {
            mating: 'two sexes',
            brood: 'carried',
          }),
        ],
        demography: 'expected',
        area: 0.5,
        volume: 0.3,
      });
      return pass(tank, 40, { ...GOOD_WATER, ...change }, () => tank.serve('attachedAlgae', 1e4)).moulting!;
    });
    expect(deaths[0]!).toBeGreaterThan(50);
    expect(deaths[1]!).toBeGreaterThan(50);
    expect(deaths[2]!).toBeLessThan(15);
  });
});

describe('ways out', () => {
  it('are taken where the cover is open, and the leaving carry their carbon off', () => {
    const open = landTank({ changes: { ...DEATHLESS, leaving: 0.02 }, founders: 40 });
    const closed = landTank({ changes: { ...DEATHLESS, leaving: 0.02 }, founders: 40 });
    expect(pass(open, 60, { ...WARM, openCover: 0.05 }, everyThreeDays(open, 0.1)).left).toBeGreaterThan(5);
    expect(pass(closed, 60, WARM, everyThreeDays(closed, 0.1)).left).toBe(0);
    expect(open.values[VARIABLE_INDEX.givenOffNitrogen]!).toBeGreaterThan(0);
    expect(closed.values[VARIABLE_INDEX.givenOffNitrogen]!).toBe(0);
  });
});
