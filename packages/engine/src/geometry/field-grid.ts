import type { Plan } from '../plan/plan.ts';
import { planZones, zoneAt } from './plan-zones.ts';

/** Heights of the ground on a grid in plan, row by row from the front pane, each row from the left pane. */
export interface FieldGrid {
  readonly columns: number;
  readonly rows: number;
  /** Size of a cell along x and y [m]. */
  readonly cellLength: number;
  readonly cellWidth: number;
  /** Ground in the middle of each cell [m]. */
  readonly ground: readonly number[];
  /** Position in the plan's list of the zone on top of each cell; -1 for bare base. */
  readonly zone: readonly number[];
}

/** Cells along the shorter side. @source derived: about 1 cm in an ordinary box */
const ACROSS = 40;

/**
 * Returns the ground of a plan on a grid of nearly square cells [m].
 * @param plan box and zones that can be drawn
 * @param across cells along the shorter side
 * @source derived
 */
export function fieldGrid(plan: Pick<Plan, 'box' | 'zones'>, across = ACROSS): FieldGrid {
  const { length, width } = plan.box;
  const cell = Math.min(length, width) / across;
  const columns = Math.max(1, Math.round(length / cell));
  const rows = Math.max(1, Math.round(width / cell));
  const zones = planZones(plan);
  const ground: number[] = [];
  const zone: number[] = [];
  for (let row = 0; row < rows; row++) {
    const y = ((row + 0.5) * width) / rows;
    for (let column = 0; column < columns; column++) {
      const x = ((column + 0.5) * length) / columns;
      const owner = zoneAt(zones, x, y);
      ground.push(owner ? owner.groundAt(x, y) : 0);
      zone.push(owner ? owner.index : -1);
    }
  }
  return { columns, rows, cellLength: length / columns, cellWidth: width / rows, ground, zone };
}
