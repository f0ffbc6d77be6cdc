import { type Column, columnOf } from './column.ts';
import type { HardscapeBand } from './hardscape-bands.ts';
import type { Knots } from './knots.ts';
import type { Section } from './section.ts';

function sum<T>(items: readonly T[], term: (item: T) => number): number {
  let total = 0;
  for (const item of items) total += term(item);
  return total;
}

/**
 * Returns the heights at which a ground, a layer, an end or a step of the section begins or ends [m].
 * @source derived
 */
export function sectionHeights({ zones, ends, steps }: Section): number[] {
  return [
    ...zones.flatMap(({ low, high, layerTops }) => [low, high, ...layerTops]),
    ...ends,
    ...steps.flat(),
  ];
}

/**
 * Returns the open section by height, hardscape left out [m2].
 * @source derived
 */
export const rawOpenArea = (section: Section) => (z: number) =>
  section.width * sum(section.zones, (zone) => zone.length * zone.openShare(z));

/** Wetted width of pane ends, front, back and of the vertical steps between zones, per metre of height [m]. */
const paneDensity = (section: Section) => (z: number) =>
  (2 * rawOpenArea(section)(z)) / section.width +
  section.width * sum(section.ends, (end) => (z > end ? 1 : 0));
const stepDensity = (section: Section) => (z: number) =>
  section.width *
  sum(section.steps, ([left, right]) => (z > Math.min(left, right) && z < Math.max(left, right) ? 1 : 0));

/** Sloping ground under water [m2]. */
const wetGround = (section: Section) => (z: number) =>
  section.width *
  sum(section.zones, ({ length, low, high, openShare }) => {
    const rise = high - low;
    return Math.sqrt(length * length + rise * rise) * openShare(z);
  });

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
 * Returns the columns of a section with its hardscape.
 * @source derived
 */
export function columnsOf(section: Section, bands: readonly HardscapeBand[], knots: Knots): Columns {
  const raw = rawOpenArea(section);
  const share = displacedShare(bands);
  const surface = hardscapeSurface(bands);
  const panes = paneDensity(section);
  const steps = stepDensity(section);
  const inGround = (property: 'porosityAt' | 'filmSurfaceAt') => (z: number) =>
    section.width * sum(section.zones, (zone) => zone.length * (1 - zone.openShare(z)) * zone[property](z));
  const pores = inGround('porosityAt');
  const open = (z: number) => (1 - share(z)) * raw(z);
  return {
    raw: columnOf(knots, raw),
    open: columnOf(knots, open),
    pores: columnOf(knots, pores),
    wet: columnOf(knots, (z) => open(z) + pores(z)),
    films: columnOf(knots, inGround('filmSurfaceAt')),
    panes: columnOf(knots, panes),
    sides: columnOf(knots, (z) => panes(z) + steps(z) + surface(z) * raw(z)),
    ground: columnOf(knots, wetGround(section)),
  };
}
