import { describe, expect, it } from 'vitest';
import type { FoodFlow } from './food-flows.ts';
import { foodRivals } from './food-rivals.ts';

const flow = (eater: string, food: string, weekly: readonly number[]): FoodFlow => ({
  eater,
  food,
  foodName: food,
  weekly,
  mean: weekly.reduce((sum, amount) => sum + amount, 0) / weekly.length,
});
const rising = [0, 0, 1, 2, 4, 8, 16, 20, 20, 20, 20, 20];
const falling = [6, 6, 6, 6, 5, 4, 3, 2, 1, 1, 1, 1];
const steady = [2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2];

describe('who takes whose food', () => {
  it('names the food, who lost it, who has it now, and how much they lived of it', () => {
    const [one, ...more] = foodRivals([
      flow('snails', 'algae', falling),
      flow('snails', 'detritus', steady),
      flow('scuds', 'algae', rising),
    ]);
    expect(more).toEqual([]);
    expect(one).toMatchObject({ food: 'algae', loser: 'snails', taker: 'scuds', bestWeek: 0 });
    expect(one!.dependence).toBeCloseTo(6 / 8, 12);
    expect([one!.loserBefore, one!.loserAfter, one!.takerAfter]).toEqual([6, 1, 20]);
  });

  it('says nothing where the food ran short for all, or was never more than a titbit', () => {
    expect(foodRivals([flow('snails', 'algae', falling), flow('scuds', 'algae', falling)])).toEqual([]);
    expect(
      foodRivals([
        flow('snails', 'algae', falling),
        flow(
          'snails',
          'detritus',
          steady.map((amount) => 30 * amount),
        ),
        flow('scuds', 'algae', rising),
      ]),
    ).toEqual([]);
  });

  it('says nothing of a run too short to tell', () => {
    expect(foodRivals([flow('snails', 'algae', [6, 1, 1]), flow('scuds', 'algae', [0, 9, 9])])).toEqual([]);
  });
});
