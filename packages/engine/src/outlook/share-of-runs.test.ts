import { describe, expect, test } from 'vitest';
import { shareOfRuns } from './share-of-runs.ts';

const Z = 1.6448536269514722;

describe('the interval of a share of runs', () => {
  // Wilson 1927: the ends are the true shares from which the one seen lies just Z standard deviations away.
  test.each([
    [18, 24],
    [90, 100],
    [1, 50],
  ])('%i of %i: at both ends the share seen is Z standard deviations off', (count, runs) => {
    const { share, low, high } = shareOfRuns(count, runs);
    expect((share - low) / Math.sqrt((low * (1 - low)) / runs)).toBeCloseTo(Z, 9);
    expect((high - share) / Math.sqrt((high * (1 - high)) / runs)).toBeCloseTo(Z, 9);
  });
  test('none and all of the runs leave room for rare exceptions', () => {
    expect(shareOfRuns(0, 20)).toMatchObject({ share: 0, low: 0 });
    expect(shareOfRuns(20, 20)).toMatchObject({ share: 1, high: 1 });
    // z^2 / (n + z^2) = 2.7055 / 22.7055.
    expect(shareOfRuns(0, 20).high).toBeCloseTo(0.11916, 4);
  });
  test('refuses shares that are none', () => {
    expect(() => shareOfRuns(1, 0)).toThrow(/no share/);
    expect(() => shareOfRuns(5, 4)).toThrow(/5 of 4/);
  });
});
