import type { TurningPoint } from '@shoreglass/engine';
import type { Palette } from '../palette/palette.ts';
import { linearScale } from '../scale/linear-scale.ts';
import { element, type Scene, sceneOf } from '../scene/scene.ts';
import { turningMark } from './turning-mark.ts';

export interface IntervalLineOptions {
  readonly turningPoint: TurningPoint;
  /** Length of the run: the common scale of all lines that stand under one another. */
  readonly days: number;
  readonly width: number;
  readonly palette: Palette;
}

const HEIGHT = 18;
const INSET = 6;

/** When a turning point comes, on a scale from the first to the last day of the run. */
export function intervalLineScene({ turningPoint, days, width, palette }: IntervalLineOptions): Scene {
  const { toPixel } = linearScale([0, Math.max(1, days)], [INSET, Math.max(INSET + 10, width - INSET)]);
  const y = HEIGHT / 2;
  const { early, median, late } = turningPoint.window;
  const label = `Day ${Math.round(median)}; four times in five between day ${Math.round(early)} and day ${Math.round(late)}.`;
  return sceneOf({ width, height: HEIGHT }, label, [
    element('path', {
      d: `M${INSET} ${y}H${Math.max(INSET + 10, width - INSET)}M${INSET} ${y - 3}v6M${Math.max(INSET + 10, width - INSET)} ${y - 3}v6`,
      stroke: palette.rule,
      'stroke-width': 1.2,
      fill: 'none',
    }),
    turningMark(turningPoint, { toX: toPixel, y, palette }),
  ]);
}
