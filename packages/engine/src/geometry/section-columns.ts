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
export const paneDensity = (section: Section) => (z: number) =>
  (2 * rawOpenArea(section)(z)) / section.width +
  section.width * sum(section.ends, (end) => (z > end ? 1 : 0));
export const stepDensity = (section: Section) => (z: number) =>
  section.width *
  sum(section.steps, ([left, right]) => (z > Math.min(left, right) && z < Math.max(left, right) ? 1 : 0));

/** Sloping ground under water [m2]. */
export const wetGround = (section: Section) => (z: number) =>
  section.width *
  sum(section.zones, ({ length, low, high, openShare }) => {
    const rise = high - low;
    return Math.sqrt(length * length + rise * rise) * openShare(z);
  });
