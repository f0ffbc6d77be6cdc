import type { PlanZone } from './plan-zones.ts';

/** A line along the length and the depth of the strip it stands for [m]. */
export interface Row {
  readonly y: number;
  readonly depth: number;
}

/**
 * Returns lines along the length one behind another, none of whose strips holds a corner inside, so that borders along
 * the length are met exactly [m].
 * @param zones with their outlines
 * @param width of the box [m]
 * @param rows about how many
 * @source derived
 */
export function rowsOf(zones: readonly Pick<PlanZone, 'outline'>[], width: number, rows: number): Row[] {
  const least = width / rows / 16;
  const corners = zones.flatMap(({ outline }) => outline.map(({ y }) => y)).sort((a, b) => a - b);
  const ends = [0];
  for (const y of [...corners, width]) {
    if (y - ends.at(-1)! > least && (width - y > least || y === width)) ends.push(y);
  }
  return ends.slice(1).flatMap((to, i) => {
    const from = ends[i]!;
    const parts = Math.ceil(((to - from) * rows) / width - 1e-6);
    const depth = (to - from) / parts;
    return Array.from({ length: parts }, (_, part) => ({ y: from + (part + 0.5) * depth, depth }));
  });
}
