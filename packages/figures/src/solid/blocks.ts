import type { GroundField } from '../plan-view/plan-view-options.ts';
import { remembered } from '../scene/remembered.ts';

/** The ground in plan as a coarse grid of blocks, each with a height at its four corners, so that slopes are whole. */
export interface Blocks {
  readonly columns: number;
  readonly rows: number;
  /** Edges of the columns from the left pane and of the rows from the front pane [m]. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Position of the zone of a block in the plan, -1 for bare base. */
  zoneOf(column: number, row: number): number;
  /** Ground at a corner of a block [m]: `right` and `back` are 0 or 1. */
  cornerOf(column: number, row: number, right: 0 | 1, back: 0 | 1): number;
}

const MOST = { columns: 40, rows: 18 } as const;

const blocksOnce = remembered<GroundField, Blocks>();

/** The blocks of a field, worked out once for it. */
export function blocksOf(field: GroundField): Blocks {
  return blocksOnce(field, '', () => madeOf(field));
}

/** A coarse cell: its ground and its zone. */
interface Coarse {
  readonly columns: number;
  readonly rows: number;
  readonly ground: Float64Array;
  readonly zone: Int32Array;
}

function madeOf(field: GroundField): Blocks {
  const coarse = coarsened(field);
  const { columns, rows } = coarse;
  const corners = new Float64Array(columns * rows * 4);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      for (let corner = 0; corner < 4; corner++)
        corners[(row * columns + column) * 4 + corner] = cornerHeight(coarse, { column, row, corner });
  const edges = (count: number, length: number) =>
    Array.from({ length: count + 1 }, (_, index) => (length * index) / count);
  return {
    columns,
    rows,
    x: edges(columns, field.columns * field.cellLength),
    y: edges(rows, field.rows * field.cellWidth),
    zoneOf: (column, row) => coarse.zone[row * columns + column] ?? -1,
    cornerOf: (column, row, right, back) => corners[(row * columns + column) * 4 + back * 2 + right] ?? 0,
  };
}

/** The cell in the middle of each block stands for it. */
function coarsened(field: GroundField): Coarse {
  const columns = Math.min(MOST.columns, field.columns);
  const rows = Math.min(MOST.rows, field.rows);
  const ground = new Float64Array(columns * rows);
  const zone = new Int32Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const c = Math.min(field.columns - 1, Math.floor(((column + 0.5) / columns) * field.columns));
      const r = Math.min(field.rows - 1, Math.floor(((row + 0.5) / rows) * field.rows));
      const cell = r * field.columns + c;
      ground[row * columns + column] = Math.max(0, field.ground[cell] ?? 0);
      zone[row * columns + column] = field.zone[cell] ?? -1;
    }
  return { columns, rows, ground, zone };
}

/**
 * Mean of the blocks of one zone that meet in the corner; where nothing of the zone lies beyond, its slope is carried
 * on to the edge.
 */
function cornerHeight(coarse: Coarse, at: { column: number; row: number; corner: number }): number {
  const { columns, rows, ground, zone } = coarse;
  const { column, row } = at;
  const here = row * columns + column;
  const [dx, dy] = [at.corner % 2 === 1 ? 1 : -1, at.corner >= 2 ? 1 : -1];
  const own = (c: number, r: number): number | undefined => {
    if (c < 0 || r < 0 || c >= columns || r >= rows) return undefined;
    return zone[r * columns + c] === zone[here] ? ground[r * columns + c] : undefined;
  };
  const middle = ground[here] ?? 0;
  const [besideX, besideY, across] = [
    own(column + dx, row),
    own(column, row + dy),
    own(column + dx, row + dy),
  ];
  const met = [middle, besideX, besideY, across].filter((height) => height !== undefined);
  const onwards = (beyond: number | undefined, before: number | undefined) =>
    beyond === undefined && before !== undefined ? (middle - before) / 2 : 0;
  const slope = onwards(besideX, own(column - dx, row)) + onwards(besideY, own(column, row - dy));
  return Math.max(0, met.reduce((sum, height) => sum + height, 0) / met.length + slope);
}
