import type { Spot } from './clip.ts';
import type { SolidFrame } from './solid-frame.ts';

/** A face of the ground inside the box. */
export interface Face {
  readonly spots: readonly Spot[];
  readonly zone: number;
  readonly kind: 'top' | 'step';
  /** 0 lying flat and lit, 1 standing upright in shade. */
  readonly shade: number;
}

/** Blocks drawn in one go, far ones first: a row where one looks along the width, else a column. */
export function bandsFarFirst(frame: SolidFrame): (readonly (readonly [column: number, row: number])[])[] {
  const { columnsFarFirst: columns, rowsFarFirst: rows } = frame;
  return frame.alongWidth
    ? rows.map((row) => columns.map((column) => [column, row] as const))
    : columns.map((column) => rows.map((row) => [column, row] as const));
}

/** Faces of one block that may be seen: its top, and the upright steps down to its neighbours on the near sides. */
export function facesOf(frame: SolidFrame, column: number, row: number): Face[] {
  const { blocks } = frame;
  const zone = blocks.zoneOf(column, row);
  const [x0, x1] = [blocks.x[column] ?? 0, blocks.x[column + 1] ?? 0];
  const [y0, y1] = [blocks.y[row] ?? 0, blocks.y[row + 1] ?? 0];
  const h = (right: 0 | 1, back: 0 | 1) => blocks.cornerOf(column, row, right, back);
  const spots: Spot[] = [
    [x0, y0, h(0, 0)],
    [x1, y0, h(1, 0)],
    [x1, y1, h(1, 1)],
    [x0, y1, h(0, 1)],
  ];
  const slope = Math.hypot(
    (h(1, 0) + h(1, 1) - h(0, 0) - h(0, 1)) / (2 * (x1 - x0)),
    (h(0, 1) + h(1, 1) - h(0, 0) - h(1, 0)) / (2 * (y1 - y0)),
  );
  return [
    { spots, zone, kind: 'top', shade: Math.min(0.5, 0.28 * slope) },
    ...steps(frame, { column, row, spots, zone }),
  ];
}

interface Block {
  readonly column: number;
  readonly row: number;
  readonly spots: readonly Spot[];
  readonly zone: number;
}

function steps({ blocks, projection }: SolidFrame, { column, row, spots, zone }: Block): Face[] {
  const { sees } = projection;
  const [a, b, c, d] = spots as readonly [Spot, Spot, Spot, Spot];
  const sides = [
    {
      seen: sees.front,
      to: [0, -1],
      edge: [a, b],
      other: [
        [0, 1],
        [1, 1],
      ],
    },
    {
      seen: sees.back,
      to: [0, 1],
      edge: [c, d],
      other: [
        [1, 0],
        [0, 0],
      ],
    },
    {
      seen: sees.left,
      to: [-1, 0],
      edge: [d, a],
      other: [
        [1, 1],
        [1, 0],
      ],
    },
    {
      seen: sees.right,
      to: [1, 0],
      edge: [b, c],
      other: [
        [0, 0],
        [0, 1],
      ],
    },
  ] as const;
  return sides.flatMap(({ seen, to, edge, other }): Face[] => {
    const [nextColumn, nextRow] = [column + to[0], row + to[1]];
    if (!seen || nextColumn < 0 || nextRow < 0 || nextColumn >= blocks.columns || nextRow >= blocks.rows)
      return [];
    const feet = other.map(([right, back]) => blocks.cornerOf(nextColumn, nextRow, right, back));
    const [first, second] = edge;
    const [low0, low1] = [Math.min(first[2], feet[0] ?? 0), Math.min(second[2], feet[1] ?? 0)];
    if (first[2] - low0 < 0.002 && second[2] - low1 < 0.002) return [];
    const face: Spot[] = [first, second, [second[0], second[1], low1], [first[0], first[1], low0]];
    return [{ spots: face, zone, kind: 'step', shade: to[0] === 0 ? 0.55 : 0.7 }];
  });
}
