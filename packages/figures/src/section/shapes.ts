import { wobbleFrom } from '../noise/noise.ts';
import { type Point, polyline, smoothLine } from '../scene/path.ts';
import { type AttributeInput, element, group, type SceneNode } from '../scene/scene.ts';

export interface Wash {
  readonly points: readonly Point[];
  readonly fill: string;
  readonly opacity: number;
  readonly seed: string;
  /** How far the pigment strays past the edge [px]. */
  readonly bleed?: number;
}

/** A water-colour fill: one even layer and two that stray past the edge, so that the border bleeds a little. */
export function washOf({ points, fill, opacity, seed, bleed = 1.6 }: Wash): SceneNode {
  const layers = [0.62, 0.3, 0.24].map((share, index) =>
    element('path', {
      d: polyline(index === 0 ? points : strayed(points, `${seed}/${index}`, bleed * index), true),
      fill,
      'fill-opacity': opacity * share * 1.15,
    }),
  );
  return group({}, layers);
}

/** The points moved by a smooth, repeatable irregularity of at most `reach` [px]. */
export function strayed(points: readonly Point[], seed: string, reach: number): Point[] {
  const [across, down] = [wobbleFrom(`${seed}/x`), wobbleFrom(`${seed}/y`)];
  return points.map(([x, y]) => [x + reach * across((x + y) / 17), y + reach * down((x - y) / 17)]);
}

/** An ink stroke through the points with the slight tremor of a hand. */
export function inkStroke(points: readonly Point[], seed: string, attributes: AttributeInput): SceneNode {
  return element('path', {
    d: smoothLine(strayed(points, seed, 0.7)),
    fill: 'none',
    'stroke-linecap': 'round',
    'stroke-linejoin': 'round',
    ...attributes,
  });
}
