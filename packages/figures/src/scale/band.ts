import type { QuantileSeries } from '@shoreglass/engine';
import type { Palette } from '../palette/palette.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';

interface BandBox {
  readonly left: number;
  readonly right: number;
  /** Upper and lower edge of the strip [px]. */
  readonly top: number;
  readonly bottom: number;
  toY(value: number): number;
  readonly palette: Palette;
}

/** The range in which those who live there are fine: pale ground, and a toothed edge that points outwards. */
export function band(limits: QuantileSeries['band'], box: BandBox): SceneNode | undefined {
  if (!limits || (limits.low === undefined && limits.high === undefined)) return undefined;
  const within = (y: number) => Math.min(box.bottom, Math.max(box.top, y));
  const upper = within(limits.high === undefined ? box.top : box.toY(limits.high));
  const lower = within(limits.low === undefined ? box.bottom : box.toY(limits.low));
  const edges = [
    limits.high !== undefined && upper > box.top ? edge(box, upper, -1) : undefined,
    limits.low !== undefined && lower < box.bottom ? edge(box, lower, 1) : undefined,
  ];
  return group({ 'data-part': 'band' }, [
    element('rect', {
      x: box.left,
      y: upper,
      width: box.right - box.left,
      height: Math.max(0, lower - upper),
      fill: box.palette.band,
    }),
    ...edges,
  ]);
}

const TOOTH = 9;

function edge({ left, right, palette }: BandBox, y: number, outwards: 1 | -1): SceneNode {
  const teeth = Array.from({ length: Math.floor((right - left) / TOOTH) }, (_, index) => {
    const x = left + TOOTH * (index + 0.5);
    return `M${x.toFixed(1)} ${y.toFixed(1)}v${outwards * 3}`;
  });
  return group({ stroke: palette.bandEdge, fill: 'none' }, [
    element('path', { d: `M${left} ${y.toFixed(1)}H${right}`, 'stroke-width': 0.9 }),
    element('path', { d: teeth.join(''), 'stroke-width': 0.9 }),
  ]);
}
