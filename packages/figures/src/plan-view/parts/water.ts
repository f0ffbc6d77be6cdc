import { element, group, type SceneNode } from '../../scene/scene.ts';
import { contourPieces } from '../contours.ts';
import type { PlanFrame } from '../frame.ts';
import type { GroundField } from '../plan-view-options.ts';

/** Depths at which the wash gets one layer stronger [m]. */
const DEPTHS = [0, 0.04, 0.08, 0.14, 0.22] as const;

/** Open water, the darker the deeper, with the shoreline in ink. */
export function water(frame: PlanFrame): SceneNode {
  const { palette, plan } = frame;
  const { level } = plan.water;
  return group({ 'data-part': 'water', 'clip-path': frame.url('glass') }, [
    ...DEPTHS.map((depth, index) =>
      element('path', {
        d: wetCells(frame, level - depth),
        fill: index === 0 ? palette.water : palette.waterDeep,
        'fill-opacity': index === 0 ? 0.72 : 0.2,
      }),
    ),
    shore(frame, level),
  ]);
}

/** Cells whose ground lies under a height, row by row, each run with its ends where the ground passes it. */
function wetCells(frame: PlanFrame, height: number): string {
  const { columns, rows, cellWidth, ground } = frame.field;
  let path = '';
  for (let row = 0; row < rows; row++) {
    const [top, bottom] = [tenth(frame.y((row + 1) * cellWidth)), tenth(frame.y(row * cellWidth) + 0.3)];
    let from: number | undefined;
    for (let column = 0; column <= columns; column++) {
      const wet = column < columns && (ground[row * columns + column] ?? 0) < height;
      if (wet === (from !== undefined)) continue;
      const x = tenth(frame.x(passes(frame.field, { row, column, height })));
      if (from === undefined) from = x;
      else {
        path += `M${from} ${top}H${x}V${bottom}H${from}Z`;
        from = undefined;
      }
    }
  }
  return path;
}

/** Where the ground passes a height between the middles of a cell and the one before it [m]. */
function passes(
  { columns, cellLength, ground }: GroundField,
  { row, column, height }: { row: number; column: number; height: number },
): number {
  if (column === 0 || column === columns) return column * cellLength;
  const [before, here] = [ground[row * columns + column - 1] ?? 0, ground[row * columns + column] ?? 0];
  const share = here === before ? 0.5 : Math.min(1, Math.max(0, (height - before) / (here - before)));
  return (column - 0.5 + share) * cellLength;
}

function shore(frame: PlanFrame, level: number): SceneNode {
  const d = linesOf(frame, level);
  const { palette } = frame;
  return group({ 'data-part': 'shore', fill: 'none', 'stroke-linecap': 'round' }, [
    element('path', { d, stroke: palette.waterDeep, 'stroke-width': 4, 'stroke-opacity': 0.45 }),
    element('path', { d, stroke: palette.ink, 'stroke-width': 1.4 }),
  ]);
}

/** The contour of a height as a path. */
export function linesOf(frame: PlanFrame, height: number): string {
  return contourPieces(frame.field, height)
    .map(
      ([x1, y1, x2, y2]) =>
        `M${tenth(frame.x(x1))} ${tenth(frame.y(y1))}L${tenth(frame.x(x2))} ${tenth(frame.y(y2))}`,
    )
    .join('');
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
