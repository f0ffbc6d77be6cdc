import { element, group, type SceneNode } from '../../scene/scene.ts';
import { contourHeights } from '../contours.ts';
import type { PlanFrame } from '../frame.ts';
import { linesOf } from './water.ts';

/** Distance between contours: [m] by unit of length. */
const STEP = { cm: 0.05, in: 0.0508 } as const;

/** Lines of equal height: dotted under water, full above. */
export function contourLines(frame: PlanFrame): SceneNode {
  const { level } = frame.plan.water;
  const lines = contourHeights(frame.field, STEP[frame.unit])
    .filter((height) => Math.abs(height - level) > 0.002)
    .map((height) =>
      element('path', {
        d: linesOf(frame, height),
        'stroke-width': 0.7,
        'stroke-opacity': height < level ? 0.65 : 0.5,
        'stroke-dasharray': height < level ? '1 3' : undefined,
      }),
    );
  return group(
    {
      'data-part': 'contours',
      'clip-path': frame.url('glass'),
      fill: 'none',
      stroke: frame.palette.ink,
      'stroke-linecap': 'round',
    },
    lines,
  );
}
