import { describe, expect, it } from 'vitest';
import { createRandom } from '../numerics/random.ts';
import { comesAlong } from './arrivals.ts';

describe('what comes along by accident', () => {
  it('is there in its share of the members, and always without a chance', () => {
    const members = Array.from({ length: 4000 }, (_, k) => createRandom(1, `member ${k}`));
    const share =
      members.filter((random) => comesAlong(random, 'physella-acuta', 0.15)).length / members.length;
    // Four standard errors of a share of 0.15 in 4000 draws are 0.0226
    expect(Math.abs(share - 0.15)).toBeLessThan(0.0226);
    expect(members.every((random) => comesAlong(random, 'physella-acuta', undefined))).toBe(true);
  });

  it('does not depend on what else was drawn, and each has its own draw', () => {
    const [fresh, used] = [createRandom(7, 'x'), createRandom(7, 'x')];
    for (let k = 0; k < 100; k += 1) used.uniform();
    expect(comesAlong(used, 'a', 0.5)).toBe(comesAlong(fresh, 'a', 0.5));
    const both = Array.from({ length: 400 }, (_, k) => createRandom(k, 'x')).map((random) => [
      comesAlong(random, 'a', 0.5),
      comesAlong(random, 'b', 0.5),
    ]);
    expect(both.some(([a, b]) => a !== b)).toBe(true);
  });

  it('is in the expected run when it is likelier than not', () => {
    expect([comesAlong('expected', 'a', 0.5), comesAlong('expected', 'a', 0.51)]).toEqual([false, true]);
  });
});
