import { describe, expect, it } from 'vitest';
import { populationBy } from '../life/land-test-kit.ts';
import type { HardscapePiece, Plan } from '../plan/plan.ts';
import { calciumConflicts } from './calcium-conflicts.ts';
import type { FoodFlow } from './food-flows.ts';

/** 0.37 g carbonate a gram dry without it, 0.42 g carbon in that. */
const SHELL = (0.37 * 12.011) / (100.087 * 0.42);
const woodlice = { ...populationBy('woodlouse', []), name: 'woodlice', shellOnLand: SHELL };
const DAYS = 120;

const WATER = { level: 0.15 } as Plan['water'];
const planOf = (
  hardscape: readonly HardscapePiece[] = [],
): Pick<Plan, 'populations' | 'hardscape' | 'water'> => ({
  populations: [woodlice],
  hardscape,
  water: WATER,
});
/** Adults that stay as they are up to a day and then grow in number by ten a day for a month. */
const counts = (_: string, stage: string): readonly number[] =>
  stage === 'adult'
    ? Array.from({ length: DAYS }, (_each, day) => 20 + 10 * Math.min(30, Math.max(0, day - 50)))
    : Array.from({ length: DAYS }, () => 0);
const eating = (weekly: number): FoodFlow[] => [
  {
    eater: 'woodlouse',
    food: 'land litter',
    foodName: 'leaf litter on land',
    weekly: Array.from({ length: 18 }, () => weekly),
    mean: weekly,
  },
];
const lime = (z: number): HardscapePiece => ({
  id: 'lump',
  name: 'limestone',
  kind: 'carbonate',
  material: 'grey-limestone',
  mass: 0.1,
  volume: 4e-5,
  course: [[0.5, z, 0.04]],
  contents: {},
});

describe('calcium of animals on land', () => {
  // A woodlouse of the kit: 30 mg wet, 22 % dry at 10 mm; adults of 6.3 to 10.5 mm have 0.62 of that mass in the mean, so
  // 300 more of them hold 300 x 4.1 mg x 0.37 x 0.4004 = 182 mg of calcium.
  it('is told by the month in which the colony grows most, with what makes up for it', () => {
    const [conflict] = calciumConflicts({ plan: planOf(), flows: [], counts });
    expect(conflict).toMatchObject({ kind: 'calcium', severity: 'warning', who: ['woodlouse'] });
    const grams = Number(/bind ([\d.]+) g of calcium/.exec(conflict!.sentence)?.[1]);
    expect(grams).toBeGreaterThan(0.16);
    expect(grams).toBeLessThan(0.21);
    expect(conflict!.sentence).toContain('from day 50 on');
    const bone = Number(/([\d.]+) g of cuttlebone/.exec(conflict!.mend)?.[1]);
    // To the two digits that are written.
    expect(Math.abs((bone / grams) * 0.83 * 0.4004 - 1)).toBeLessThan(0.05);
  });

  it('is a remark where the leaves they eat hold too little, and nothing where they hold enough', () => {
    // 500 mg C of leaves a week are 2.1 g carbon a month, with 54 mg of calcium at 12 mg a gram dry.
    const [short] = calciumConflicts({ plan: planOf(), flows: eating(500), counts });
    expect(short?.severity).toBe('note');
    expect(short?.sentence).toMatch(/hold 5\d(\.\d)? mg/);
    expect(calciumConflicts({ plan: planOf(), flows: eating(5000), counts })).toEqual([]);
  });

  it('is there in a lump of lime that stands out of the water, not in one that lies in it', () => {
    expect(calciumConflicts({ plan: planOf([lime(0.3)]), flows: [], counts })).toEqual([]);
    expect(calciumConflicts({ plan: planOf([lime(0.05)]), flows: [], counts })).toHaveLength(1);
  });

  it('is not asked of those that build none, moult in water, or do not grow', () => {
    const bare = { ...planOf(), populations: [{ ...woodlice, shellOnLand: 0 }] };
    expect(calciumConflicts({ plan: bare, flows: [], counts })).toEqual([]);
    const crab = { ...populationBy('crab', []), shellOnLand: SHELL };
    expect(calciumConflicts({ plan: { ...planOf(), populations: [crab] }, flows: [], counts })).toEqual([]);
    expect(calciumConflicts({ plan: planOf(), flows: [], counts: () => Array(DAYS).fill(5) })).toEqual([]);
  });
});
