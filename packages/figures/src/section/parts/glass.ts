import { element, group, type SceneNode } from '../../scene/scene.ts';
import { numberText } from '../../type/number-text.ts';
import { textAt } from '../../type/text.ts';
import { fitText } from '../../type/text-width.ts';
import type { SectionFrame } from '../frame.ts';

const GLASS_STROKE = 2.2;

/** Clip of the inside of the glass, for washes that would bleed past it. */
export function glassDefinitions(frame: SectionFrame): SceneNode[] {
  const { left, right, top, bottom } = frame.layout.inside;
  const rect = element('rect', { x: left, y: top, width: right - left, height: bottom - top });
  return [element('clipPath', { id: frame.id('glass') }, rect)];
}

/** Panes and base in ink, the cover with its closed part and its open gap. */
export function glass(frame: SectionFrame): SceneNode {
  const { palette, layout, labels } = frame;
  const { left, right, top, bottom } = layout.inside;
  const edge = GLASS_STROKE / 2;
  const open = frame.plan.box.coverOpenFraction;
  const hinge = right - (right - left) * open;
  const coverY = top - 5;
  const text = `open ${numberText(open * 100)}\u00a0%`;
  const style = { size: labels ? 12 : 11, fill: palette.softInk, anchor: 'end' } as const;
  return group({ 'data-part': 'glass', fill: 'none', stroke: palette.ink }, [
    element('path', {
      d: `M${left - edge} ${top}V${bottom + edge}H${right + edge}V${top}`,
      'stroke-width': GLASS_STROKE,
      'stroke-linejoin': 'miter',
    }),
    element('path', {
      d: `M${left - edge} ${top}H${right + edge}`,
      'stroke-width': 0.8,
      'stroke-opacity': 0.5,
    }),
    open < 1 ? element('path', { d: `M${left - edge} ${coverY}H${hinge}`, 'stroke-width': 3.2 }) : undefined,
    open > 0
      ? element('path', {
          d: `M${hinge + 4} ${coverY}H${right}`,
          'stroke-width': 1.2,
          'stroke-dasharray': '1.5 4',
        })
      : undefined,
    group({ stroke: 'none' }, [textAt(right, coverY - 7, text, style)]),
  ]);
}

/** Lamps above the cover, side by side, each with its power and hours. */
export function lamps(frame: SectionFrame): SceneNode | undefined {
  const { palette, layout, plan, labels } = frame;
  const count = plan.devices.lamps.length;
  if (count === 0) return undefined;
  const { left, right, top } = layout.inside;
  const share = ((right - left) * 0.78) / count;
  const barY = top - (labels ? 24 : 20);
  return group(
    { 'data-part': 'lamps' },
    plan.devices.lamps.map((lamp, index) => {
      const center = left + share * (index + 0.5);
      const width = Math.min(share * 0.62, 240);
      const label = `${lamp.name} ${numberText(lamp.power)}\u00a0W, ${numberText(lamp.hours, lamp.hours % 1 === 0 ? 0 : 1)}\u00a0h`;
      const style = { size: labels ? 12 : 11, fill: palette.softInk, anchor: 'middle' } as const;
      return group({}, [
        element('rect', {
          x: center - width / 2,
          y: barY,
          width,
          height: labels ? 9 : 7,
          rx: 2.5,
          fill: palette.raised,
          stroke: palette.ink,
          'stroke-width': 1,
        }),
        element('path', {
          d: `M${center - width / 2 + 6} ${barY + (labels ? 5 : 4)}H${center + width / 2 - 6}`,
          stroke: palette.ink,
          'stroke-width': 1.4,
          'stroke-dasharray': '0.5 5',
          'stroke-linecap': 'round',
        }),
        textAt(center, barY - 6, fitText(label, share - 8, style.size), style),
      ]);
    }),
  );
}
