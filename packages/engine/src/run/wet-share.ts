import type { HardscapePiece } from '../plan/plan.ts';

type Course = HardscapePiece['course'];

/** Share of a straight stretch that lies below a height [0..1]. */
function shareBelow(from: number, to: number, level: number): number {
  if (from <= level && to <= level) return 1;
  if (from >= level && to >= level) return 0;
  return Math.abs(level - Math.min(from, to)) / Math.abs(to - from);
}

/**
 * Part of a piece that lies under water [0..1]: of the stretches between its points, each by length times thickness
 * squared, the share of their middle line below the level. A piece without a course lies in the pool.
 * @param level of the water above the base [m]
 * @source derived: round pieces, straight between their points
 */
export function wetShare(course: Course, level: number): number {
  const [only, ...more] = course;
  if (!only) return 1;
  if (more.length === 0) return only[1] <= level ? 1 : 0;
  let all = 0;
  let wet = 0;
  for (let k = 1; k < course.length; k += 1) {
    const [x0, z0, thick0] = course[k - 1]!;
    const [x1, z1, thick1] = course[k]!;
    const mean = (thick0 + thick1) / 2;
    const bulk = Math.sqrt((x1 - x0) * (x1 - x0) + (z1 - z0) * (z1 - z0)) * mean * mean;
    all += bulk;
    wet += bulk * shareBelow(z0, z1, level);
  }
  return all > 0 ? wet / all : 1;
}
