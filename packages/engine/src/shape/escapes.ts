import type { FieldGrid } from '../geometry/field-grid.ts';
import type { Plan } from '../plan/plan.ts';
import type { EscapeFigures } from './shape-sheet.ts';

/** Steepest ground on which small animals climb out [m/m]. @source assumed: 45 degrees */
const CLIMBABLE = 1;
/** A step out of the water that is no higher than this serves as a ledge [m]. @source assumed */
const LEDGE = 0.015;
/** Mean of |cos| + |sin| over all directions: how much a staircase of cells is longer than the line it follows. */
const STAIRCASE = 4 / Math.PI;

/**
 * Returns the ways out of the water [m]: length of the shoreline by counting sides between wet and dry cells, over
 * 4/pi for their staircase, and the part of it with ground no steeper than 45 degrees or a ledge of at most 1.5 cm.
 * @param plan that can be drawn
 * @param grid its ground
 * @validity lengths within about a cell, 1 cm
 * @source derived: Cauchy and Crofton
 */
export function escapeFigures(plan: Plan, grid: FieldGrid): EscapeFigures {
  const { level } = plan.water;
  const { columns, rows, cellLength, cellWidth, ground } = grid;
  let shoreline = 0;
  let climbable = 0;
  const meet = (a: number, b: number, side: number, distance: number): void => {
    if (a < level === b < level) return;
    shoreline += side;
    const [low, high] = a < b ? [a, b] : [b, a];
    if ((high - low) / distance <= CLIMBABLE || high - level <= LEDGE) climbable += side;
  };
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const here = ground[row * columns + column]!;
      if (column + 1 < columns) meet(here, ground[row * columns + column + 1]!, cellWidth, cellLength);
      if (row + 1 < rows) meet(here, ground[(row + 1) * columns + column]!, cellLength, cellWidth);
    }
  }
  const isStraight = plan.zones.every(({ outline }) => outline === undefined);
  const factor = isStraight ? 1 : STAIRCASE;
  const pieces = plan.hardscape
    .filter(({ course }) => {
      const reach = course.map(([, z, thickness]) => [z - thickness / 2, z + thickness / 2] as const);
      return reach.some(([low]) => low < level) && reach.some(([, high]) => high > level + LEDGE);
    })
    .map(({ name }) => name);
  return {
    shoreline: shoreline / factor,
    climbable: climbable / factor,
    pieces,
    hasWayOut: climbable > 0 || pieces.length > 0,
  };
}
