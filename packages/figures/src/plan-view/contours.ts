import type { GroundField } from './plan-view-options.ts';

/** A straight piece of a line of equal height: from x, y to x, y [m]. */
export type ContourPiece = readonly [x1: number, y1: number, x2: number, y2: number];

/**
 * Lines along which the ground stands at a height, between the middles of the cells, by marching squares; a saddle is
 * cut by the mean of its four corners. At the panes the field is continued half a cell outwards.
 */
export function contourPieces(field: GroundField, height: number): ContourPiece[] {
  const { columns, rows } = field;
  const pieces: ContourPiece[] = [];
  for (let row = -1; row < rows; row++)
    for (let column = -1; column < columns; column++) pieces.push(...square(field, row, column, height));
  return pieces;
}

interface Corner {
  readonly x: number;
  readonly y: number;
  /** Ground less the height sought [m]. */
  readonly above: number;
}

function square(field: GroundField, row: number, column: number, height: number): ContourPiece[] {
  const corners = [
    corner(field, row, column, height),
    corner(field, row, column + 1, height),
    corner(field, row + 1, column + 1, height),
    corner(field, row + 1, column, height),
  ] as const;
  const crossings = corners.flatMap((from, index) => {
    const to = corners[(index + 1) % 4] as Corner;
    return from.above > 0 === to.above > 0 ? [] : [crossing(from, to)];
  });
  const [a, b, c, d] = crossings;
  if (a && b && !c) return [[...a, ...b]];
  if (!a || !b || !c || !d) return [];
  const middle = corners.reduce((sum, { above }) => sum + above, 0);
  const apart = middle > 0 === corners[0].above > 0;
  return apart
    ? [
        [...a, ...b],
        [...c, ...d],
      ]
    : [
        [...a, ...d],
        [...b, ...c],
      ];
}

function corner(
  { columns, rows, cellLength, cellWidth, ground }: GroundField,
  row: number,
  column: number,
  height: number,
): Corner {
  const [r, c] = [Math.min(rows - 1, Math.max(0, row)), Math.min(columns - 1, Math.max(0, column))];
  return {
    x: Math.min(columns * cellLength, Math.max(0, (column + 0.5) * cellLength)),
    y: Math.min(rows * cellWidth, Math.max(0, (row + 0.5) * cellWidth)),
    above: (ground[r * columns + c] ?? 0) - height,
  };
}

function crossing(from: Corner, to: Corner): readonly [number, number] {
  const share = from.above / (from.above - to.above);
  return [from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)];
}

/** Heights of the contours between the lowest and the highest ground [m]: every `step`, the level itself left out. */
export function contourHeights(field: GroundField, step: number): number[] {
  const lowest = Math.min(...field.ground);
  const highest = Math.max(...field.ground);
  const heights: number[] = [];
  for (let index = Math.ceil(lowest / step + 1e-6); index * step < highest - 1e-6; index++)
    heights.push(index * step);
  return heights;
}
