import { type Column, columnOf } from './column.ts';
import type { HardscapeBand } from './hardscape-bands.ts';
import type { Knots } from './knots.ts';
import type { Profile } from './profile.ts';

function sum<T>(items: readonly T[], term: (item: T) => number): number {
  let total = 0;
  for (const item of items) total += term(item);
  return total;
}

const displacedShare = (bands: readonly HardscapeBand[]) => (z: number) =>
  sum(bands, ({ low, high, share }) => (z > low && z < high ? share : 0));
const hardscapeSurface = (bands: readonly HardscapeBand[]) => (z: number) =>
  sum(bands, ({ low, high, share, surfacePerVolume }) =>
    z > low && z < high ? share * surfacePerVolume : 0,
  );

/** What is integrated over height; see `Geometry` for what each serves. */
export interface Columns {
  readonly raw: Column;
  readonly open: Column;
  readonly pores: Column;
  readonly wet: Column;
  readonly films: Column;
  readonly panes: Column;
  readonly sides: Column;
  readonly ground: Column;
}

/**
 * Returns the columns of a profile with its hardscape.
 * @source derived
 */
export function columnsOf(profile: Profile, bands: readonly HardscapeBand[], knots: Knots): Columns {
  const { open: raw, pores, panes, steps } = profile;
  const share = displacedShare(bands);
  const surface = hardscapeSurface(bands);
  const open = (z: number) => (1 - share(z)) * raw(z);
  return {
    raw: columnOf(knots, raw),
    open: columnOf(knots, open),
    pores: columnOf(knots, pores),
    wet: columnOf(knots, (z) => open(z) + pores(z)),
    films: columnOf(knots, profile.films),
    panes: columnOf(knots, panes),
    sides: columnOf(knots, (z) => panes(z) + steps(z) + surface(z) * raw(z)),
    ground: columnOf(knots, profile.ground),
  };
}
