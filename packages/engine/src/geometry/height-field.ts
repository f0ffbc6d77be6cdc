import type { Plan } from '../plan/plan.ts';
import { type PlanZone, planZones, stretchesOwned, zoneAt } from './plan-zones.ts';
import { rowsOf } from './rows.ts';

/** A patch of ground in plan: its area [m2], the heights between which its ground lies [m], its area along the slope [m2]. */
export interface Patch {
  readonly owner: PlanZone | undefined;
  readonly area: number;
  readonly low: number;
  readonly high: number;
  readonly slopedArea: number;
}

/** An upright face: its length in plan and the heights between which it stands [m], and the zone on its upper side. */
export interface Face {
  readonly length: number;
  readonly low: number;
  readonly high: number;
  readonly upper: PlanZone | undefined;
}

/** A stretch of glass: its length and the height of the ground before it [m]. */
export interface Footing {
  readonly length: number;
  readonly ground: number;
}

/** The ground of a plan, sampled along lines; `rows` lines across the width. */
export interface HeightField {
  readonly zones: readonly PlanZone[];
  readonly rows: number;
  readonly patches: readonly Patch[];
  readonly faces: readonly Face[];
  readonly footings: readonly Footing[];
}

/** Lines across the width at which the ground is sampled. @source derived: see `FieldFigures.convergence` */
export const FIELD_ROWS = 48;
/** Patches are so many times as long as deep: along the length borders are met exactly. */
const ALONG = 2;
/** How far from an edge its two sides are looked up [m]. */
const BESIDE = 1e-6;

function patchesOf(zones: readonly PlanZone[], { length, width }: Plan['box'], rows: number): Patch[] {
  const patches: Patch[] = [];
  for (const { y, depth } of rowsOf(zones, width, rows)) {
    for (const { from, to, owner } of stretchesOwned(zones, length, y)) {
      const parts = Math.max(1, Math.ceil((to - from) / (ALONG * depth)));
      const step = (to - from) / parts;
      for (let part = 0; part < parts; part++) {
        const area = step * depth;
        if (!owner) {
          patches.push({ owner, area, low: 0, high: 0, slopedArea: area });
          continue;
        }
        const x = from + (part + 0.5) * step;
        const ground = owner.groundAt(x, y);
        const [a, b] = owner.slopeAt(x, y);
        const half = 0.5 * (Math.abs(a) * step + Math.abs(b) * depth);
        const slopedArea = area * Math.sqrt(1 + a * a + b * b);
        patches.push({ owner, area, low: ground - half, high: ground + half, slopedArea });
      }
    }
  }
  return patches;
}

/** True when a point lies on the border of an outline. */
function isOnBorder({ outline }: PlanZone, x: number, y: number): boolean {
  let before = outline[outline.length - 1]!;
  for (const corner of outline) {
    const dx = corner.x - before.x;
    const dy = corner.y - before.y;
    const squared = dx * dx + dy * dy;
    const t =
      squared > 0 ? Math.min(1, Math.max(0, ((x - before.x) * dx + (y - before.y) * dy) / squared)) : 0;
    const offX = before.x + t * dx - x;
    const offY = before.y + t * dy - y;
    if (offX * offX + offY * offY < 4 * BESIDE * BESIDE) return true;
    before = corner;
  }
  return false;
}

/** Upright faces along the borders of all zones: where a border is shared by two, each counts half of it. */
function facesOf(zones: readonly PlanZone[], { length, width }: Plan['box'], rows: number): Face[] {
  const faces: Face[] = [];
  const depth = width / rows;
  const inBox = (x: number, y: number) =>
    x > BESIDE && y > BESIDE && x < length - BESIDE && y < width - BESIDE;
  for (const zone of zones) {
    let before = zone.outline[zone.outline.length - 1]!;
    for (const corner of zone.outline) {
      const dx = corner.x - before.x;
      const dy = corner.y - before.y;
      const edge = Math.sqrt(dx * dx + dy * dy);
      const parts = edge > 0 ? Math.max(1, Math.ceil(edge / depth)) : 0;
      for (let part = 0; part < parts; part++) {
        const t = (part + 0.5) / parts;
        const x = before.x + t * dx;
        const y = before.y + t * dy;
        if (!inBox(x, y)) continue;
        const offX = (BESIDE * dy) / edge;
        const offY = (-BESIDE * dx) / edge;
        const one = zoneAt(zones, x + offX, y + offY);
        const other = zoneAt(zones, x - offX, y - offY);
        if (one === other || (one !== zone && other !== zone)) continue;
        const neighbour = one === zone ? other : one;
        const here = zone.groundAt(x, y);
        const there = neighbour ? neighbour.groundAt(x, y) : 0;
        const share = neighbour && isOnBorder(neighbour, x, y) ? 0.5 : 1;
        const upper = here >= there ? zone : neighbour;
        if (here !== there)
          faces.push({
            length: (share * edge) / parts,
            low: Math.min(here, there),
            high: Math.max(here, there),
            upper,
          });
      }
      before = corner;
    }
  }
  return faces;
}

function footingsOf(zones: readonly PlanZone[], { length, width }: Plan['box'], rows: number): Footing[] {
  const footings: Footing[] = [];
  const depth = width / rows;
  const look = (x: number, y: number, size: number) => {
    const inwardX = Math.min(length - BESIDE, Math.max(BESIDE, x));
    const inwardY = Math.min(width - BESIDE, Math.max(BESIDE, y));
    footings.push({ length: size, ground: zoneAt(zones, inwardX, inwardY)?.groundAt(x, y) ?? 0 });
  };
  for (let row = 0; row < rows; row++) {
    look(0, (row + 0.5) * depth, depth);
    look(length, (row + 0.5) * depth, depth);
  }
  for (const y of [0, width]) {
    const inward = y === 0 ? BESIDE : width - BESIDE;
    for (const { from, to } of stretchesOwned(zones, length, inward)) {
      const parts = Math.max(1, Math.ceil((to - from) / depth));
      const step = (to - from) / parts;
      for (let part = 0; part < parts; part++) look(from + (part + 0.5) * step, y, step);
    }
  }
  return footings;
}

interface Kept {
  readonly box: Plan['box'];
  readonly rows: number;
  readonly field: HeightField;
}

/** The last field of each list of zones: checking, drawing and running a plan ask for the same one. */
const kept = new WeakMap<Plan['zones'], Kept>();

/**
 * Returns the ground of a plan as patches, upright faces and footings of the glass. Along the length borders are met
 * exactly, across the width by `rows` lines, so that areas and volumes converge with the square of their distance.
 * @param plan box and zones, sound by `outlineProblems`
 * @param rows lines across the width
 * @source derived
 */
export function heightField({ box, zones }: Pick<Plan, 'box' | 'zones'>, rows = FIELD_ROWS): HeightField {
  const last = kept.get(zones);
  if (last && last.rows === rows && last.box === box) return last.field;
  const sorted = planZones({ box, zones });
  const field = {
    zones: sorted,
    rows,
    patches: patchesOf(sorted, box, rows),
    faces: facesOf(sorted, box, rows),
    footings: footingsOf(sorted, box, rows),
  };
  if (rows === FIELD_ROWS) kept.set(zones, { box, rows, field });
  return field;
}
