import type { Random } from '../numerics/random.ts';

/** How many of a group meet a fate: means in the expected run, whole animals in a member. */
export interface Demography {
  /** Of `count` animals, how many meet a fate of probability `chance`. */
  among(count: number, chance: number): number;
  /** How many events happen of which `mean` are expected. */
  events(mean: number): number;
  /** A count that stands for `value`: itself, or a neighbouring whole number with that mean. */
  whole(value: number): number;
  /** The largest count that `value` can stand for. */
  wholeBelow(value: number): number;
  /** When `left` animals are still to be taken from `total`, how many come from a group of `count` among them. */
  taken(left: number, count: number, total: number): number;
  /** Below this a cohort counts as gone. */
  readonly least: number;
}

export const EXPECTED: Demography = {
  among: (count, chance) => count * chance,
  events: (mean) => mean,
  whole: (value) => value,
  wholeBelow: (value) => value,
  taken: (left, count, total) => (total > 0 ? left * (count / total) : 0),
  least: 1e-4,
};

/** Whole animals, drawn. `among` is binomial, `events` Poisson, `whole` rounds up with the broken part's chance. */
export function drawn(random: Random): Demography {
  return {
    among: (count, chance) => (count > 0 && chance > 0 ? random.binomial(count, Math.min(1, chance)) : 0),
    events: (mean) => (mean > 0 ? random.poisson(mean) : 0),
    whole(value) {
      const below = Math.floor(value);
      return below + (random.uniform() < value - below ? 1 : 0);
    },
    wholeBelow: (value) => Math.floor(value),
    taken(left, count, total) {
      let taken = 0;
      for (let drawnSoFar = 0; drawnSoFar < left; drawnSoFar += 1) {
        if (random.uniform() * (total - drawnSoFar) < count - taken) taken += 1;
      }
      return taken;
    },
    least: 0.5,
  };
}
