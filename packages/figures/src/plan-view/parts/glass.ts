import { rulerMarks } from '../../scale/length-unit.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import { textAt } from '../../type/text.ts';
import type { PlanFrame } from '../frame.ts';

export function glassDefinition(frame: PlanFrame): SceneNode {
  const { left, right, top, bottom } = frame.layout.inside;
  return element(
    'clipPath',
    { id: frame.id('glass') },
    element('rect', { x: left, y: top, width: right - left, height: bottom - top }),
  );
}

/** Four panes as thick as they are, the front one at the bottom. */
export function panes(frame: PlanFrame): SceneNode {
  const { left, right, top, bottom } = frame.layout.inside;
  const thick = Math.max(1.6, frame.plan.box.glassThickness * frame.pixelsPerMetre);
  return element('path', {
    'data-part': 'glass',
    d: `M${left - thick} ${top - thick}H${right + thick}V${bottom + thick}H${left - thick}ZM${left} ${top}V${bottom}H${right}V${top}Z`,
    'fill-rule': 'evenodd',
    fill: frame.palette.waterDeep,
    'fill-opacity': 0.35,
    stroke: frame.palette.ink,
    'stroke-width': 0.9,
  });
}

/** Lamps over the plan as dashed outlines, where the file says where they hang. */
export function lampPanels(frame: PlanFrame): SceneNode {
  const panels = frame.plan.devices.lamps.flatMap(({ panel }) => {
    if (!panel) return [];
    const [x, y] = frame.at(panel.x - panel.length / 2, panel.y + panel.breadth / 2);
    return [
      element('rect', {
        x,
        y,
        width: panel.length * frame.pixelsPerMetre,
        height: panel.breadth * frame.pixelsPerMetre,
        rx: 2,
      }),
    ];
  });
  return group(
    {
      'data-part': 'lamps',
      fill: 'none',
      stroke: frame.palette.ink,
      'stroke-width': 0.9,
      'stroke-dasharray': '5 3 1 3',
    },
    panels,
  );
}

/** Where the section is cut: along the middle, with the way one looks at its ends. */
export function cutLine(frame: PlanFrame): SceneNode {
  const { left, right } = frame.layout.inside;
  const y = frame.y(frame.plan.box.width / 2);
  return group({ 'data-part': 'cut', fill: 'none', stroke: frame.palette.ink, 'stroke-width': 0.8 }, [
    element('path', { d: `M${left} ${y}H${right}`, 'stroke-dasharray': '12 3 2 3', 'stroke-opacity': 0.55 }),
    element('path', {
      d: `M${left + 3} ${y}v-8l-3 4m3 -4l3 4M${right - 3} ${y}v-8l-3 4m3 -4l3 4`,
      'stroke-width': 1,
    }),
  ]);
}

const LEAST_GAP = 30;

/** Rulers along the left and the front pane, and lines across at their marks. */
export function rulers(frame: PlanFrame): SceneNode {
  const { palette, layout, plan, unit } = frame;
  const { left, right, top, bottom } = layout.inside;
  const least = LEAST_GAP / frame.pixelsPerMetre;
  const along = rulerMarks(plan.box.length, least, unit).marks;
  const across = rulerMarks(plan.box.width, least, unit).marks;
  const figure = (x: number, y: number, text: string, anchor: 'middle' | 'end') =>
    textAt(x, y, text, { size: 11, fill: palette.softInk, anchor });
  const ticks = [
    ...along.map(({ at }) => `M${frame.x(at)} ${bottom + 5}v5`),
    ...across.map(({ at }) => `M${left - 10} ${frame.y(at)}h5`),
  ].join('');
  const lines = [
    ...along.map(({ at }) => `M${frame.x(at)} ${top}V${bottom}`),
    ...across.map(({ at }) => `M${left} ${frame.y(at)}H${right}`),
  ].join('');
  return group({ 'data-part': 'rulers' }, [
    frame.grid
      ? element('path', {
          d: lines,
          stroke: palette.ink,
          'stroke-width': 0.5,
          'stroke-opacity': 0.16,
          fill: 'none',
        })
      : undefined,
    element('path', { d: ticks, stroke: palette.softInk, 'stroke-width': 0.8, fill: 'none' }),
    figure(left - 9, bottom + 22, unit, 'end'),
    ...along.map(({ at, text }) => figure(frame.x(at), bottom + 22, text, 'middle')),
    ...across.slice(1).map(({ at, text }) => figure(left - 12, frame.y(at) + 4, text, 'end')),
  ]);
}
