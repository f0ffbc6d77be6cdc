import { describe, expect, it } from 'vitest';
import { hunterWords } from './hunter-words.ts';

describe('hunters put in against a pest', () => {
  it('are told by what becomes of them', () => {
    const after = (...course: number[]) => {
      const last = course.at(-1)!;
      const end = { q10: last, q50: last, q90: last };
      return hunterWords({
        hunter: { id: 'hunters', adults: 4 },
        others: [{ id: 'hunters', name: 'hunters', end, course }],
      });
    };
    expect(after(4, 6, 2, 0, 0)).toBe(
      'The hunters themselves die out about day 3: find them food or another home in time.',
    );
    expect(after(4, 20, 8)).toBe('Of the hunters 8 are left, after at most 20 on day 1.');
    expect(after(4, 12, 30)).toMatch(/multiply to 30 and hunt on/);
    expect(after(4, 4, 1)).toBe('Of the 4 hunters 1 is left on the last day.');
    expect(after(4, 4, 4)).toBe('The hunters are still there on the last day, 4 of them, and go on hunting.');
    expect(hunterWords({ others: [] })).toBeUndefined();
  });
});
