import { describe, expect, it } from 'vitest';
import { searchOf } from './search-rule.ts';

describe('ground that hunters search', () => {
  const hunter = { adultMass: 1e6, diet: { prey: 1 } };

  it('is that of Pawar et al. 2012: 10^-3.08 m2/s at 1 kg, by the power 0.68 of mass', () => {
    expect(searchOf(hunter)).toBeCloseTo(86_400 * 8.3176e-4, 2);
    const tenth = searchOf({ ...hunter, adultMass: 1e5 }) / searchOf(hunter);
    expect(Math.log10(tenth)).toBeCloseTo(-0.68, 9);
  });

  it('is searched for the part of the diet that is prey', () => {
    expect(searchOf({ ...hunter, diet: { prey: 1, feed: 3 } }) / searchOf(hunter)).toBeCloseTo(0.25, 9);
    expect(searchOf({ ...hunter, diet: { feed: 1 } })).toBe(0);
  });
});
