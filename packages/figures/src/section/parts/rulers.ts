import { element, group, type SceneNode } from '../../scene/scene.ts';
import { textAt } from '../../type/text.ts';
import type { SectionFrame } from '../frame.ts';

/** Centimetre rulers along the left pane and under the base. */
export function rulers(frame: SectionFrame): SceneNode {
  const { palette, layout, plan, labels } = frame;
  const { left, bottom } = layout.inside;
  const step = layout.rulerStep;
  const size = labels ? 12 : 11;
  const marks = (length: number) =>
    Array.from({ length: Math.floor((length * 100) / step + 1e-6) + 1 }, (_, i) => i * step);
  const heights = marks(plan.box.height);
  const lengths = marks(plan.box.length);
  const tick = (d: string) => element('path', { d, stroke: palette.softInk, 'stroke-width': 0.8 });
  const figure = (x: number, y: number, content: string, anchor: 'middle' | 'end') =>
    textAt(x, y, content, { size, fill: palette.softInk, anchor });
  return group({ 'data-part': 'rulers' }, [
    figure(left - 9, bottom + 9 + size, 'cm', 'end'),
    ...heights.slice(1).flatMap((cm) => {
      const y = frame.y(cm / 100);
      return [tick(`M${left - 8} ${y}H${left - 3}`), figure(left - 11, y + size * 0.34, String(cm), 'end')];
    }),
    ...lengths.flatMap((cm) => {
      const x = frame.x(cm / 100);
      return [tick(`M${x} ${bottom + 3}V${bottom + 8}`), figure(x, bottom + 9 + size, String(cm), 'middle')];
    }),
  ]);
}
