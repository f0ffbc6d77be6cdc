import { linearScale } from '../scale/linear-scale.ts';

/** The ribbon's time axis: where it lies in the drawing, and the map between day and pixel both ways. */
export interface RibbonScale {
  readonly left: number;
  readonly right: number;
  readonly days: number;
  toX(day: number): number;
  /** Whole day under a pixel, held within the run. */
  toDay(x: number): number;
}

/** Below this width labels stand above their strips instead of beside them [px]. */
const NARROW = 620;

export function isNarrow(width: number): boolean {
  return width < NARROW;
}

export function ribbonScale({ days, width }: { days: number; width: number }): RibbonScale {
  const narrow = isNarrow(width);
  const left = narrow ? 10 : 154;
  const right = Math.max(left + 40, width - (narrow ? 42 : 54));
  const scale = linearScale([0, Math.max(1, days)], [left, right]);
  return {
    left,
    right,
    days,
    toX: scale.toPixel,
    toDay: (x) => Math.min(days, Math.max(0, Math.round(scale.toValue(x)))),
  };
}
