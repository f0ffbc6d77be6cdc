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
  return group({ 'data-part': 'rulers' }, [
    ...heights.flatMap((cm) => {
      const y = frame.y(cm / 100);
      const style = { size, fill: palette.softInk, anchor: 'end' } as const;
      return [tick(`M${left - 8} ${y}H${left - 3}`), textAt(left - 11, y + size * 0.34, String(cm), style)];
    }),
    ...lengths.flatMap((cm, index) => {
      const x = frame.x(cm / 100);
      const last = index === lengths.length - 1;
      const style = { size, fill: palette.softInk, anchor: 'middle' } as const;
      const content = last ? `${cm} cm` : String(cm);
      const shift = last ? size * 0.9 : 0;
      return [
        tick(`M${x} ${bottom + 3}V${bottom + 8}`),
        textAt(
          last && !labels ? layout.inside.right : x + shift,
          bottom + 9 + size,
          content,
          last && !labels ? { ...style, anchor: 'end' } : style,
        ),
      ];
    }),
  ]);
}
