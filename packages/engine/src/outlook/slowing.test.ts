import { describe, expect, it } from 'vitest';
import { SLOWING_CAUSES } from '../life/sublethal.ts';
import { AMPLE_ENTRY, bookShape, POPULATION_ENTRIES } from '../run/block-book.ts';
import { turningSentence } from './sentences.ts';
import {
  addSlowed,
  nothingSlowed,
  slowedSentence,
  slowingSentence,
  slowingSpells,
  worstSlowing,
} from './slowing.ts';

const shape = bookShape(3, 5, 2);
const OXYGEN = SLOWING_CAUSES.indexOf('lack of oxygen');
const NITRATE = SLOWING_CAUSES.indexOf('nitrate');

/** A book of blocks, each with ample food of 10 mol and what two causes took of it in the second population. */
function bookOf(blocks: readonly { oxygen: number; nitrate: number }[]): Float64Array {
  const rows = new Float64Array(blocks.length * shape.rowLength);
  for (const [block, { oxygen, nitrate }] of blocks.entries()) {
    const at = block * shape.rowLength + shape.populationOffset + POPULATION_ENTRIES + AMPLE_ENTRY;
    rows[at] = 10;
    rows[at + 1 + OXYGEN] = oxygen;
    rows[at + 1 + NITRATE] = nitrate;
  }
  return rows;
}

describe('slowingSpells', () => {
  const rows = bookOf([
    { oxygen: 0, nitrate: 0.1 },
    { oxygen: 2, nitrate: 0.1 },
    { oxygen: 4, nitrate: 0.1 },
    { oxygen: 1, nitrate: 0.1 },
  ]);
  it('tells causes worth telling, their part of the run and the days around the worst', () => {
    expect(slowingSpells(rows, shape, 1, 35)).toEqual([
      {
        cause: 'lack of oxygen',
        share: expect.closeTo(7 / 40, 12),
        most: expect.closeTo(0.4, 12),
        fromDay: 10,
        toDay: 29,
      },
    ]);
  });
  it('does not put it down to the others', () => {
    expect(slowingSpells(rows, shape, 0, 35)).toEqual([]);
  });
  it('ends with the run', () => {
    const late = bookOf([
      { oxygen: 0, nitrate: 0 },
      { oxygen: 0, nitrate: 3 },
    ]);
    expect(slowingSpells(late, shape, 1, 14)[0]).toMatchObject({ cause: 'nitrate', fromDay: 10, toDay: 13 });
  });
});

describe('worstSlowing', () => {
  it('is the cause that took most, none where nothing was taken', () => {
    const slowed = nothingSlowed();
    expect(worstSlowing(slowed)).toBeUndefined();
    addSlowed(slowed, bookOf([{ oxygen: 1, nitrate: 3 }]), shape, 1);
    expect(worstSlowing(slowed)).toEqual({ cause: 'nitrate', share: 0.3 });
  });
});

describe('sentences', () => {
  it('say what it costs them and when', () => {
    const spell = { cause: 'lack of oxygen', share: 0.2, most: 0.6, fromDay: 40, toDay: 69 } as const;
    expect(slowingSentence('ramshorn snails', spell)).toBe(
      'Ramshorn snails grow slowly and lay few eggs for want of oxygen: over the run that costs them 20 % of what they could eat and lay, most from day 40 to 69 (up to 60 %).',
    );
    expect(slowingSentence('guppies', { ...spell, cause: 'nitrate', share: 0.05, most: 0.06 })).toBe(
      'Guppies grow somewhat slower and lay fewer eggs because of nitrate: over the run that costs them 5 % of what they could eat and lay.',
    );
  });
  it('stand beside the reasons of a population that dies out or begins late', () => {
    const point = {
      subject: 'population:scuds',
      subjectName: 'Mexican scuds',
      probability: 0.5,
      because: [{ term: 'starvation', share: 1 }],
    } as const;
    const slowed = { cause: 'ammonia', share: 0.3 } as const;
    expect(turningSentence({ ...point, kind: 'dies out', slowed: slowedSentence(slowed, true) })).toBe(
      'Mexican scuds die out, likely in 50 % of runs. Pushed by starvation 100 %. Before, they grew slowly and laid few eggs because of ammonia.',
    );
    expect(
      turningSentence({ ...point, because: [], kind: 'first young', slowed: slowedSentence(slowed, false) }),
    ).toBe(
      'Mexican scuds have their first young, likely in 50 % of runs. They grow slowly and lay few eggs because of ammonia.',
    );
  });
});
