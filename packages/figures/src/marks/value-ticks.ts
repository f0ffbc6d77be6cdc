import type { Palette } from '../palette/palette.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { numberText } from '../type/number-text.ts';
import { textAt } from '../type/text.ts';

interface ValueAxis {
  /** Ends of the plot from left to right [px]. */
  readonly left: number;
  readonly right: number;
  readonly toY: (value: number) => number;
  /** Digits behind the point; as many as the number needs when left out. */
  readonly digits?: number;
  readonly palette: Palette;
}

/** A line across the plot at each value, with its number on the left. */
export function valueTicks(ticks: readonly number[], axis: ValueAxis): SceneNode[] {
  const { left, right, toY, digits, palette } = axis;
  return ticks.map((tick) =>
    group({}, [
      element('path', {
        d: `M${left} ${toY(tick).toFixed(1)}H${right}`,
        stroke: palette.rule,
        'stroke-width': 0.7,
      }),
      textAt(left - 6, toY(tick) + 4, numberText(tick, digits), {
        size: 12,
        fill: palette.softInk,
        anchor: 'end',
      }),
    ]),
  );
}
