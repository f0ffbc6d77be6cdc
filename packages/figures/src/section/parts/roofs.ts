import { element, group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { inkStroke, washOf } from '../shapes.ts';

/** Slabs over the ground, as over a cave. */
export function roofs(frame: SectionFrame): SceneNode | undefined {
  const slabs = frame.plan.zones.flatMap(({ id, from, to, roof }) =>
    roof ? [{ id, from, to, ...roof }] : [],
  );
  if (slabs.length === 0) return undefined;
  const { palette } = frame;
  return group(
    { 'data-part': 'roofs' },
    slabs.map(({ id, from, to, bottom, top }) => {
      const points = [frame.at(from, top), frame.at(to, top), frame.at(to, bottom), frame.at(from, bottom)];
      const [a, b, c, d] = points as [
        (typeof points)[0],
        (typeof points)[0],
        (typeof points)[0],
        (typeof points)[0],
      ];
      return group({}, [
        element('path', {
          d: `M${a.join(' ')}L${b.join(' ')}L${c.join(' ')}L${d.join(' ')}Z`,
          fill: palette.paper,
        }),
        washOf({ points, fill: palette.stone, opacity: 0.7, seed: frame.seed(`roof/${id}`), bleed: 0.8 }),
        inkStroke([a, b, c, d, a], frame.seed(`roof/${id}/edge`), {
          stroke: palette.ink,
          'stroke-width': 1.2,
        }),
      ]);
    }),
  );
}
