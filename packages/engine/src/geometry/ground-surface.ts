import type { Corner } from '../plan/plan.ts';

/** A point counts as lying on an edge or corner when it is nearer than this [m]. */
const ON_EDGE = 1e-9;

/**
 * Returns the height of the ground of an outlined zone at a point of its plan [m]: the mean value coordinates of the
 * corners, w_i = (tan(a_i-1/2) + tan(a_i/2))/r_i, straight along edges, exact for any plane, smooth inside.
 * @param outline corners in order, at least three, not crossing itself
 * @param x from the left pane [m]
 * @param y from the front pane [m]
 * @source floater-2003
 */
export function groundAt(outline: readonly Corner[], x: number, y: number): number {
  let before = outline[outline.length - 1]!;
  let bx = before.x - x;
  let by = before.y - y;
  let bd = Math.sqrt(bx * bx + by * by);
  if (bd < ON_EDGE) return before.ground;
  let weights = 0;
  let heights = 0;
  let tangentBefore = 0;
  let first = 0;
  // Each corner's weight needs the angles to both its neighbours: it is booked one corner later.
  for (let i = 0; i < outline.length; i++) {
    const corner = outline[i]!;
    const cx = corner.x - x;
    const cy = corner.y - y;
    const cd = Math.sqrt(cx * cx + cy * cy);
    if (cd < ON_EDGE) return corner.ground;
    const cross = bx * cy - by * cx;
    const dot = bx * cx + by * cy;
    if (dot < 0 && Math.abs(cross) < ON_EDGE * (bd + cd))
      return (before.ground * cd + corner.ground * bd) / (bd + cd);
    // tan of half the angle between the two rays: (|a||b| - a b)/(a x b)
    const tangent = cross === 0 ? 0 : (bd * cd - dot) / cross;
    if (i === 0) first = tangent;
    else {
      const weight = (tangentBefore + tangent) / bd;
      weights += weight;
      heights += weight * before.ground;
    }
    tangentBefore = tangent;
    before = corner;
    bx = cx;
    by = cy;
    bd = cd;
  }
  const last = (tangentBefore + first) / bd;
  return (heights + last * before.ground) / (weights + last);
}

/**
 * Returns whether a point lies inside an outline or on its left or front edge: an edge is crossed by a ray to the right an
 * odd number of times.
 * @param outline corners in order
 * @param x from the left pane [m]
 * @param y from the front pane [m]
 * @source derived
 */
export function isInside(outline: readonly Corner[], x: number, y: number): boolean {
  let inside = false;
  let before = outline[outline.length - 1]!;
  for (const corner of outline) {
    if (corner.y > y !== before.y > y) {
      const crossing = corner.x + ((y - corner.y) * (before.x - corner.x)) / (before.y - corner.y);
      if (x < crossing) inside = !inside;
    }
    before = corner;
  }
  return inside;
}

/** A stretch of an outline cut along the length. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Returns where a line along the length cuts an outline, as stretches from left to right [m]; none where it passes by.
 * @param outline corners in order
 * @param y of the line, from the front pane [m]
 * @source derived
 */
export function stretchesAt(outline: readonly Corner[], y: number): Stretch[] {
  const crossings: number[] = [];
  let before = outline[outline.length - 1]!;
  for (const corner of outline) {
    if (corner.y > y !== before.y > y)
      crossings.push(corner.x + ((y - corner.y) * (before.x - corner.x)) / (before.y - corner.y));
    before = corner;
  }
  crossings.sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const from = crossings[i]!;
    const to = crossings[i + 1]!;
    if (to > from) stretches.push({ from, to });
  }
  return stretches;
}

/** Ends of a zone along the length, and its ground there [m]. */
export interface ZoneEnds extends Stretch {
  readonly groundStart: number;
  readonly groundEnd: number;
}

/**
 * Returns the ends of an outlined zone as a line along the length meets it [m]: first and last cut, or, where the line
 * passes by, its leftmost and rightmost corners.
 * @param outline corners in order, at least one
 * @param y of the line, from the front pane [m]
 * @source derived
 */
export function endsOf(outline: readonly Corner[], y: number): ZoneEnds {
  const stretches = outline.length < 3 ? [] : stretchesAt(outline, y);
  if (stretches.length > 0) {
    const from = stretches[0]!.from;
    const to = stretches.at(-1)!.to;
    return { from, to, groundStart: groundAt(outline, from, y), groundEnd: groundAt(outline, to, y) };
  }
  const left = outline.reduce((a, b) => (b.x < a.x ? b : a));
  const right = outline.reduce((a, b) => (b.x > a.x ? b : a));
  return { from: left.x, to: right.x, groundStart: left.ground, groundEnd: right.ground };
}

/**
 * Returns the area of an outline [m2, >= 0]: half the absolute sum of cross products.
 * @param outline corners in order
 * @source derived
 */
export function outlineArea(outline: readonly Corner[]): number {
  let twice = 0;
  let before = outline[outline.length - 1]!;
  for (const corner of outline) {
    twice += before.x * corner.y - corner.x * before.y;
    before = corner;
  }
  return Math.abs(twice) / 2;
}
