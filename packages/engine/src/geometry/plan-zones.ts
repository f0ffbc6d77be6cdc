import type { Corner, Plan, Zone, ZoneKind } from '../plan/plan.ts';
import { TOLERANCE } from './geometry-problem.ts';
import { groundAt, isInside, type Stretch, stretchesAt } from './ground-surface.ts';

/** A zone seen from above. */
export interface PlanZone {
  readonly zone: Zone;
  /** Position in the plan's list. */
  readonly index: number;
  readonly outline: readonly Corner[];
  /** Height of its ground at a point [m]. */
  groundAt(x: number, y: number): number;
  /** Rise of its ground along x and y at a point [m/m]. */
  slopeAt(x: number, y: number): readonly [number, number];
}

/** Kinds that are drawn into others and take their place. */
const ON_TOP: readonly ZoneKind[] = ['island', 'stream', 'cave', 'wall', 'canopy'];

/** True for kinds that may lie within another zone. */
export const liesOnOthers = (kind: ZoneKind): boolean => ON_TOP.includes(kind);

/** Heights off a plane by less than this count as lying in it [m]. */
const FLAT = 1e-9;
/** Step for slopes of curved ground [m]. */
const SLOPE_STEP = 1e-4;

/** Plane z = c + a x + b y through all corners, or nothing when they do not lie in one. */
function planeOf(outline: readonly Corner[]): readonly [a: number, b: number, c: number] | undefined {
  const origin = outline[0]!;
  let best = 0;
  let plane: readonly [number, number, number] | undefined;
  for (let i = 1; i < outline.length; i++) {
    for (let j = i + 1; j < outline.length; j++) {
      const p = outline[i]!;
      const q = outline[j]!;
      const cross = (p.x - origin.x) * (q.y - origin.y) - (q.x - origin.x) * (p.y - origin.y);
      if (Math.abs(cross) <= best) continue;
      best = Math.abs(cross);
      const dp = p.ground - origin.ground;
      const dq = q.ground - origin.ground;
      const a = (dp * (q.y - origin.y) - dq * (p.y - origin.y)) / cross;
      const b = (dq * (p.x - origin.x) - dp * (q.x - origin.x)) / cross;
      plane = [a, b, origin.ground - a * origin.x - b * origin.y];
    }
  }
  if (!plane) return undefined;
  const [a, b, c] = plane;
  return outline.every(({ x, y, ground }) => Math.abs(c + a * x + b * y - ground) < FLAT) ? plane : undefined;
}

function surfaceOf(outline: readonly Corner[]): Pick<PlanZone, 'groundAt' | 'slopeAt'> {
  const plane = planeOf(outline);
  if (plane) {
    const [a, b, c] = plane;
    const slope = [a, b] as const;
    return { groundAt: (x, y) => c + a * x + b * y, slopeAt: () => slope };
  }
  const at = (x: number, y: number) => groundAt(outline, x, y);
  return {
    groundAt: at,
    slopeAt(x, y) {
      const here = at(x, y);
      return [(at(x + SLOPE_STEP, y) - here) / SLOPE_STEP, (at(x, y + SLOPE_STEP) - here) / SLOPE_STEP];
    },
  };
}

/**
 * Returns the lowest ground of a zone [m].
 * @param zone with or without outline
 * @source derived
 */
export function lowestGround({ outline, groundStart, groundEnd }: Zone): number {
  return outline ? Math.min(...outline.map(({ ground }) => ground)) : Math.min(groundStart, groundEnd);
}

/**
 * Returns the highest ground of a zone [m].
 * @param zone with or without outline
 * @source derived
 */
export function highestGround({ outline, groundStart, groundEnd }: Zone): number {
  return outline ? Math.max(...outline.map(({ ground }) => ground)) : Math.max(groundStart, groundEnd);
}

/** The outline of a zone; that of one as wide as the box is a rectangle. */
export function outlineOf(zone: Zone, width: number): readonly Corner[] {
  const { outline, from, to, groundStart, groundEnd } = zone;
  return (
    outline ?? [
      { x: from, y: 0, ground: groundStart },
      { x: to, y: 0, ground: groundEnd },
      { x: to, y: width, ground: groundEnd },
      { x: from, y: width, ground: groundStart },
    ]
  );
}

/** True for a zone as wide as the box between two x: the base on which others may be drawn. */
export function isWholeWidth({ outline }: Zone, width: number): boolean {
  if (!outline) return true;
  const isEdge = (y: number) => Math.abs(y) < TOLERANCE || Math.abs(y - width) < TOLERANCE;
  const left = Math.min(...outline.map(({ x }) => x));
  const right = Math.max(...outline.map(({ x }) => x));
  return outline.every(
    ({ x, y }) => isEdge(y) && (Math.abs(x - left) < TOLERANCE || Math.abs(x - right) < TOLERANCE),
  );
}

/**
 * Returns the zones of a plan as seen from above, the topmost first: islands, streams, caves and walls lie on others,
 * outlined zones on those as wide as the box, later ones on earlier ones.
 * @source derived
 */
export function planZones({ box, zones }: Pick<Plan, 'box' | 'zones'>): PlanZone[] {
  const rank = (zone: Zone): number => {
    if (liesOnOthers(zone.kind) && zone.outline) return 2;
    return isWholeWidth(zone, box.width) ? 0 : 1;
  };
  return zones
    .map((zone, index) => {
      const outline = outlineOf(zone, box.width);
      return { zone, index, outline, ...surfaceOf(outline) };
    })
    .sort((a, b) => rank(b.zone) - rank(a.zone) || b.index - a.index);
}

/** The zone on top at a point; nothing over bare base. */
export function zoneAt(zones: readonly PlanZone[], x: number, y: number): PlanZone | undefined {
  return zones.find(({ outline }) => isInside(outline, x, y));
}

/** A stretch of a line along the length, and the zone on top there. */
export interface Owned extends Stretch {
  readonly owner: PlanZone | undefined;
}

/** Shorter stretches are dropped [m]. */
const LEAST = 1e-9;

/**
 * Returns the stretches into which the zones' borders cut a line along the length, from the left pane to the right, each
 * with the zone on top.
 * @param zones topmost first
 * @param length of the box [m]
 * @param y of the line, from the front pane [m]
 * @source derived
 */
export function stretchesOwned(zones: readonly PlanZone[], length: number, y: number): Owned[] {
  const cuts = zones.map((zone) => ({ zone, stretches: stretchesAt(zone.outline, y) }));
  const ends = new Set([0, length]);
  for (const { stretches } of cuts)
    for (const { from, to } of stretches) {
      if (from > 0 && from < length) ends.add(from);
      if (to > 0 && to < length) ends.add(to);
    }
  const sorted = [...ends].sort((a, b) => a - b);
  const owned: Owned[] = [];
  for (let i = 0; i + 1 < sorted.length; i++) {
    const from = sorted[i]!;
    const to = sorted[i + 1]!;
    if (to - from < LEAST) continue;
    const middle = 0.5 * (from + to);
    const owner = cuts.find(({ stretches }) =>
      stretches.some((stretch) => stretch.from <= middle && middle < stretch.to),
    )?.zone;
    const last = owned.at(-1);
    if (last && last.owner === owner) owned[owned.length - 1] = { from: last.from, to, owner };
    else owned.push({ from, to, owner });
  }
  return owned;
}
