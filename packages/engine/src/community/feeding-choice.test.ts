import { describe, expect, test } from 'vitest';
import { createRandom } from '../numerics/random.ts';
import { judgedAfresh, raisedUntilHalf } from './feeding-choice.ts';

/** Invented: with each dose some share of an endless number of runs hold, each member by chance of its own. */
function invented(seed: number, shares: readonly number[]) {
  const asked: number[] = [];
  const holds = (dose: number, member: number): boolean => {
    asked.push(member);
    return createRandom(seed, `dose ${dose} member ${member}`).uniform() < shares[dose]!;
  };
  const raised = (dose: number): number | undefined => (dose + 1 < shares.length ? dose + 1 : undefined);
  return { asked, holds, raised };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('the dose of a feeding is chosen by some runs and judged by others', () => {
  test.each([0.1, 0.35, 0.5, 0.8])('no run that judges was seen in choosing: share %f', (share) => {
    for (let seed = 0; seed < 20; seed += 1) {
      const { asked, holds, raised } = invented(seed, [share, share, share]);
      const { dose, drawn } = raisedUntilHalf(0, { raised, holds });
      const choosing = new Set(asked);
      expect(asked).toHaveLength(drawn);
      asked.length = 0;
      const { runs } = judgedAfresh((member) => holds(dose, member), 30);
      expect(new Set(asked).size).toBe(30);
      expect(runs).toBe(30);
      expect(asked.filter((member) => choosing.has(member))).toEqual([]);
    }
  });

  test('the share told is right on average, where that of the runs that chose is flattered', () => {
    const told: number[] = [];
    const flattered: number[] = [];
    const within: number[] = [];
    for (let seed = 0; seed < 1500; seed += 1) {
      const shares = [0.3, 0.35, 0.4, 0.4, 0.4];
      const { holds, raised } = invented(seed, shares);
      const { dose } = raisedUntilHalf(0, { raised, holds });
      const { share, low, high } = judgedAfresh((member) => holds(dose, member), 24);
      told.push(share - shares[dose]!);
      within.push(low <= shares[dose]! && shares[dose]! <= high ? 1 : 0);
      flattered.push(
        Array.from({ length: 20 }, (_, member) => holds(dose, member)).filter(Boolean).length / 20 -
          shares[dose]!,
      );
    }
    // The mean of 1500 shares of 24 has a standard error of 0.0026.
    expect(Math.abs(mean(told))).toBeLessThan(3 * 0.0026);
    expect(mean(flattered)).toBeGreaterThan(0.03);
    // An interval of 90 % holds the true share in nine of ten.
    expect(mean(within)).toBeGreaterThan(0.87);
    expect(mean(within)).toBeLessThan(0.95);
  });

  test('raised no further than needed, and said so where no dose holds in half of the runs', () => {
    const sure = invented(1, [0, 1, 1]);
    expect(raisedUntilHalf(0, sure)).toEqual({ dose: 1, chosenBy: 'half of the runs drawn', drawn: 11 + 10 });
    const never = invented(1, [0, 0, 0]);
    expect(raisedUntilHalf(0, never)).toEqual({ dose: 0, chosenBy: 'fewer of the runs drawn', drawn: 33 });
    const better = invented(1, [0, 0.2, 0.45]);
    expect(raisedUntilHalf(0, better).dose).toBeGreaterThan(0);
  });
});
