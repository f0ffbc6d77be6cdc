import { describe, expect, it } from 'vitest';
import { mouthfulPerLength } from './mouthful.ts';

describe('the length prey counts as in a mouth', () => {
  it('is that of compact prey of the same mass for a worm', () => {
    // A blackworm of 6 mg wet (Leppänen and Kukkonen 1998), 0.9 mg dry and 42 mm long: 5.3 mm of compact prey weigh as much.
    const perLength = mouthfulPerLength('worms', 0.9 / 42 ** 3);
    expect(0.006 * (42 * perLength) ** 3).toBeCloseTo(0.9, 9);
    expect(42 * perLength).toBeCloseTo(5.31, 2);
  });

  it('is its own for prey that does not bend, however slender, and for no worm above it', () => {
    expect(mouthfulPerLength('crustaceans', 0.0008)).toBe(1);
    expect(mouthfulPerLength('fish', 0.0016)).toBe(1);
    expect(mouthfulPerLength(undefined, 0.0008)).toBe(1);
    expect(mouthfulPerLength('worms', 0.02)).toBe(1);
  });
});
