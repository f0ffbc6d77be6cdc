import { exp } from '../numerics/elementary.ts';
import { findRoot } from '../numerics/roots.ts';

/** A life as chance meets it: who is still alive at the end of each age, and what the living bear at it. */
export interface ChancesByAge {
  /** Part of newborns alive when age i begins, falling from 1 [1]; one more than `births`, the last is taken for 0. */
  readonly alive: readonly number[];
  /** Mean young of an animal that lives through age i [1], >= 0. */
  readonly births: readonly number[];
}

/**
 * Chance that all descendants of one newborn die out in the long run, however much food there is [1], 0 to 1.
 * The least root of q = sum (l(i) - l(i+1)) exp(-(1 - q) M(i)), M(i) the young of an animal that dies in age i: a
 * branching process whose animals bear Poisson numbers while they live. Lines independent of each other die out
 * together with chance q^n.
 * @throws RangeError when the parts alive do not fall from 1, or births are no numbers of 0 or more
 * @source harris-1963 ch. I (least root of the generating function); the function of a life table is derived
 */
export function chanceOfDyingOut({ alive, births }: ChancesByAge): number {
  if (alive.length !== births.length + 1 || alive[0] !== 1)
    throw new RangeError('a life needs one part alive more than births, the first of them 1');
  const deaths: { part: number; young: number }[] = [];
  let young = 0;
  for (const [i, born] of births.entries()) {
    const next = i + 1 < births.length ? alive[i + 1]! : 0;
    if (!(alive[i]! >= next && next >= 0 && born >= 0))
      throw new RangeError(`at age ${i} parts alive must fall and births be 0 or more`);
    young += born;
    deaths.push({ part: alive[i]! - next, young });
  }
  const expected = deaths.reduce((sum, death) => sum + death.part * death.young, 0);
  if (!(expected > 1)) return 1;
  const gap = (q: number): number =>
    deaths.reduce((sum, death) => sum + death.part * exp(-(1 - q) * death.young), 0) - q;
  // Between 0 and the least root the gap is positive, between it and 1 negative.
  let high = 0.5;
  while (gap(high) >= 0 && high < 1 - 1e-9) high = 1 - (1 - high) / 2;
  return gap(0) <= 0 ? 0 : gap(high) >= 0 ? 1 : findRoot(gap, { low: 0, high, tolerance: 1e-15 });
}
