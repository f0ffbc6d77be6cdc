import type { Point } from '../scene/path.ts';
import type { SolidOptions } from './solid-options.ts';

/** A parallel projection: lengths along one direction keep their ratio wherever they lie. */
export interface Projection {
  /** Pixel of x from the left pane, y from the front pane, z above the base [m]. */
  at(x: number, y: number, z: number): Point;
  readonly pixelsPerMetre: number;
  /** Whether one sees the outside of a side of the box. */
  readonly sees: Readonly<Record<Side, boolean>>;
}

export type Side = 'front' | 'right' | 'back' | 'left';

const MARGIN = 22;

/**
 * The box turned about its upright axis and tilted towards the viewer, as large as it can be drawn at every turn, so
 * that its size holds still while it turns.
 */
export function projectionOf({ plan, size, turn, tilt }: SolidOptions): Projection {
  const { length, width, height } = plan.box;
  const [a, e] = [(turn * Math.PI) / 180, (tilt * Math.PI) / 180];
  const [sinA, cosA, sinE, cosE] = [Math.sin(a), Math.cos(a), Math.sin(e), Math.cos(e)];
  const span = Math.hypot(length, width);
  const pixelsPerMetre = Math.max(
    10,
    Math.min((size.width - 2 * MARGIN) / span, (size.height - 2 * MARGIN) / (height * cosE + span * sinE)),
  );
  const [middleX, middleY] = [size.width / 2, size.height / 2];
  return {
    pixelsPerMetre,
    at(x, y, z) {
      const [u, v] = [x - length / 2, y - width / 2];
      const across = u * cosA + v * sinA;
      const away = v * cosA - u * sinA;
      const up = (z - height / 2) * cosE + away * sinE;
      return [middleX + across * pixelsPerMetre, middleY - up * pixelsPerMetre];
    },
    sees: { front: cosA > 1e-9, back: cosA < -1e-9, right: sinA > 1e-9, left: sinA < -1e-9 },
  };
}
