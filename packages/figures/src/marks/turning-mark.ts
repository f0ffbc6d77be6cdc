import type { TurningPoint, TurningPointKind } from '@shoreglass/engine';
import type { Palette } from '../palette/palette.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';

interface Look {
  /** Drawn around (0, 0), about 8 wide. */
  readonly path: string;
  readonly needsKeeper: boolean;
}

/** Each kind has its own shape, so that none depends on its colour. */
const LOOKS: Record<TurningPointKind, Look> = {
  'falls below': { path: 'M-4.4 -3.2h8.8L0 4z', needsKeeper: true },
  'rises above': { path: 'M-4.4 3.2h8.8L0 -4z', needsKeeper: true },
  returns: { path: 'M-3.6 0a3.6 3.6 0 1 0 7.2 0a3.6 3.6 0 1 0 -7.2 0', needsKeeper: false },
  'first young': { path: 'M0 -4.6L4.6 0L0 4.6L-4.6 0z', needsKeeper: false },
  'dies out': { path: 'M-3.6 -3.6L3.6 3.6M3.6 -3.6L-3.6 3.6', needsKeeper: true },
};

/** A turning point on a time axis: bar from its early to its late day, and the shape of its kind at the median. */
export function turningMark(
  point: TurningPoint,
  { toX, y, palette }: { toX: (day: number) => number; y: number; palette: Palette },
): SceneNode {
  const { early, median, late } = point.window;
  const look = LOOKS[point.kind];
  const ink = look.needsKeeper ? palette.vermilion : palette.ink;
  const place = `translate(${toX(median).toFixed(1)} ${y.toFixed(1)})`;
  return group({ 'data-turning-point': point.id }, [
    element('title', {}, point.sentence),
    element('path', {
      d: `M${toX(early).toFixed(1)} ${y.toFixed(1)}H${toX(late).toFixed(1)}`,
      stroke: ink,
      'stroke-width': 2.6,
      'stroke-linecap': 'round',
      'stroke-opacity': 0.55,
    }),
    element('path', {
      d: look.path,
      transform: place,
      fill: point.kind === 'dies out' ? 'none' : look.needsKeeper ? ink : palette.paper,
      stroke: ink,
      'stroke-width': 1.6,
      'stroke-linejoin': 'round',
      'stroke-linecap': 'round',
    }),
  ]);
}
