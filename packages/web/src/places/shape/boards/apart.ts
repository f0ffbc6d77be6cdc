export interface Spot {
  readonly id: string;
  /** [px] */
  readonly x: number;
  readonly y: number;
}

/** Middles of marks are at least this far apart, sideways or up and down, so that each can be hit [px]. */
export const APART = 25;
const ROUNDS = 60;

/** Edges of the glass in a drawing [px]. */
interface Edges {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * A mark of what lies outside the glass, as after the glass was made smaller, stands at its edge: it stays in its drawing
 * and can be taken hold of. What hangs above the glass stays where it is.
 */
export function withinReach({ id, x, y }: Spot, { left, right, bottom }: Edges): Spot {
  return { id, x: Math.min(right, Math.max(left, x)), y: Math.min(bottom, Math.max(0, y)) };
}

/**
 * Marks that lie on one another step aside until none is nearer to another than `APART`; one that is held stays where
 * it is. Marks that lie apart already do not move.
 */
export function steppedAside(spots: readonly Spot[], heldId?: string): Spot[] {
  const moved = spots.map(({ id, x, y }) => ({ id, x, y }));
  for (let round = 0; round < ROUNDS; round++) {
    let still = true;
    for (let first = 0; first < moved.length; first++)
      for (let second = first + 1; second < moved.length; second++) {
        const [a, b] = [moved[first], moved[second]];
        if (a && b && pushApart(a, b, heldId)) still = false;
      }
    if (still) break;
  }
  return moved;
}

function pushApart(
  a: { id: string; x: number; y: number },
  b: { id: string; x: number; y: number },
  heldId: string | undefined,
): boolean {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const distance = Math.max(Math.abs(dx), Math.abs(dy));
  if (distance >= APART - 0.01) return false;
  // The shorter way apart; two on the very same spot part sideways.
  const sideways = Math.abs(dx) >= Math.abs(dy);
  const [ux, uy] = sideways ? [dx < 0 ? -1 : 1, 0] : [0, dy < 0 ? -1 : 1];
  const gap = APART - distance;
  const shareOfA = a.id === heldId ? 0 : b.id === heldId ? 1 : 0.5;
  a.x -= ux * gap * shareOfA;
  a.y -= uy * gap * shareOfA;
  b.x += ux * gap * (1 - shareOfA);
  b.y += uy * gap * (1 - shareOfA);
  return true;
}
