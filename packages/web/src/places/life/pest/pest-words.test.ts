import type { PestAnswer } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { changedOthers, endWords, gainWords, otherWords, rankWords } from './pest-words.ts';

const spread = (q50: number, q10 = q50, q90 = q50) => ({ q10, q50, q90 });
const other = (id: string, ...course: number[]) => ({ id, name: id, end: spread(course.at(-1)!), course });
const answer = (some: Partial<PestAnswer>): PestAnswer => ({
  kind: 'hunter',
  name: '4 hunters',
  pest: spread(20),
  course: [],
  courseLow: [],
  courseHigh: [],
  runs: 16,
  gone: 0,
  others: [],
  ...some,
});

describe('what an answer to a pest is told as', () => {
  it('the number left, its spread and the runs without any', () => {
    expect(endWords({ pest: spread(12, 0, 30), runs: 16, gone: 0.25 })).toBe(
      '12 on the last day, in four of five runs between 0 and 30; none left in 4 of 16 runs.',
    );
    expect(endWords({ pest: spread(0), runs: 16, gone: 1 })).toBe(
      '0 on the last day; none left in any of the 16 runs.',
    );
    expect(endWords({ pest: spread(104_321), runs: 16, gone: 0 })).toBe('~100\u00a0000 on the last day.');
  });

  it('the part of what there would be otherwise', () => {
    const nothing = answer({ kind: 'nothing', pest: spread(100) });
    expect(gainWords(answer({ pest: spread(25) }), nothing)).toBe(
      '25\u00a0% of what there would be otherwise.',
    );
    expect(gainWords(answer({ pest: spread(0) }), nothing)).toBe('Next to none are left.');
    expect(gainWords(answer({ pest: spread(95) }), nothing)).toMatch(/^Hardly different/);
    expect(gainWords(answer({ pest: spread(140) }), nothing)).toMatch(/^More than/);
    expect(gainWords(answer({ pest: spread(0) }), answer({ pest: spread(0) }))).toMatch(/^Even when nothing/);
  });

  it('all answers by what they leave, fewest first', () => {
    const left = (name: string, count: number) => answer({ name, pest: spread(count) });
    expect(
      rankWords([
        left('nothing is done', 520),
        left('a bait a week, at most 20', 0),
        left('half the feed', 284),
      ]),
    ).toBe(
      'Left on the last day, fewest first: a bait a week: 0; half the feed: ~280; nothing is done: ~520.',
    );
  });

  it('others that change, the worst hit first, the hunter apart', () => {
    const nothing = answer({
      kind: 'nothing',
      others: [other('scuds', 180), other('woodlice', 35), other('worms', 10)],
    });
    const hunted = answer({
      hunter: { id: 'hunters', adults: 4 },
      others: [other('scuds', 20), other('woodlice', 35.4), other('worms', 30), other('hunters', 4, 9, 9)],
    });
    expect(changedOthers(hunted, nothing).map(otherWords)).toEqual([
      'scuds: 20 instead of 180',
      'worms: 30 instead of 10',
    ]);
  });
});
