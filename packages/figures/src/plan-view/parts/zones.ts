import type { Zone } from '@shoreglass/engine';
import { type Point, polyline } from '../../scene/path.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import { groundBuildUp } from '../../section/layer-bodies.ts';
import { type MaterialLook, materialLook } from '../../section/materials.ts';
import { washOf } from '../../section/shapes.ts';
import { textAt } from '../../type/text.ts';
import { fitText } from '../../type/text-width.ts';
import type { PlanFrame } from '../frame.ts';

/** Outline of a zone in plan [m]: its corners, or the strip between its two ends. */
export function zoneOutline({ from, to, outline }: Zone, width: number): (readonly [x: number, y: number])[] {
  if (outline) return outline.map(({ x, y }) => [x, y] as const);
  return [
    [from, 0],
    [to, 0],
    [to, width],
    [from, width],
  ];
}

/** What is seen of a zone from above: the look of its topmost layer. */
export function zoneLook(zone: Zone): MaterialLook {
  const layers = groundBuildUp(zone);
  return materialLook(layers[layers.length - 1] as (typeof layers)[number]);
}

/** Strips first, then what is drawn into them; each with wash, pattern and an ink border. */
export function zones(frame: PlanFrame): SceneNode {
  const ordered = [...frame.plan.zones].sort((a, b) => Number(!!a.outline) - Number(!!b.outline));
  return group(
    { 'data-part': 'zones', 'clip-path': frame.url('glass') },
    ordered.filter((zone) => !standsDry(zone, frame.plan.water.level)).map((zone) => zoneNode(frame, zone)),
  );
}

/** What is drawn in plan and stands out of the water with all its corners: it is laid over the water. */
export function standsDry({ outline }: Zone, level: number): boolean {
  return outline?.every(({ ground }) => ground > level) ?? false;
}

/** Islands and other dry ground drawn in plan, with its outline as the shore. */
export function dryZones(frame: PlanFrame): SceneNode {
  const dry = frame.plan.zones.filter((zone) => standsDry(zone, frame.plan.water.level));
  return group(
    { 'data-part': 'dry-zones', 'clip-path': frame.url('glass') },
    dry.map((zone) =>
      group({}, [
        zoneNode(frame, zone),
        element('path', {
          d: polyline(outlinePoints(frame, zone), true),
          fill: 'none',
          stroke: frame.palette.ink,
          'stroke-width': 1.3,
          'stroke-linejoin': 'round',
        }),
      ]),
    ),
  );
}

function zoneNode(frame: PlanFrame, zone: Zone): SceneNode {
  const { palette } = frame;
  const look = zoneLook(zone);
  const points = outlinePoints(frame, zone);
  const d = polyline(points, true);
  return group({ 'data-zone': zone.id }, [
    zone.outline ? element('path', { d, fill: palette.paper }) : undefined,
    washOf({
      points,
      fill: palette[look.wash],
      opacity: look.opacity,
      seed: frame.seed(zone.id),
      bleed: 0.8,
    }),
    look.pattern === 'void' ? undefined : element('path', { d, fill: frame.url(`pattern-${look.pattern}`) }),
    element('path', {
      d,
      fill: 'none',
      stroke: palette.ink,
      'stroke-width': 0.9,
      'stroke-opacity': 0.6,
      'stroke-dasharray': zone.outline ? undefined : '7 3',
    }),
  ]);
}

export function outlinePoints(frame: PlanFrame, zone: Zone): Point[] {
  return zoneOutline(zone, frame.plan.box.width).map(([x, y]) => frame.at(x, y));
}

const NAME_SIZE = 12.5;
/** The name stands below the middle, where a mark may be that moves the zone. */
const BELOW_MIDDLE = 20;

/** Names of the zones along the back, or in the middle of those with an outline. */
export function zoneNames(frame: PlanFrame): SceneNode {
  const names = frame.plan.zones.map((zone) => {
    const points = outlinePoints(frame, zone);
    const [left, right] = [Math.min(...points.map(([x]) => x)), Math.max(...points.map(([x]) => x))];
    const [top, bottom] = [Math.min(...points.map(([, y]) => y)), Math.max(...points.map(([, y]) => y))];
    const y = zone.outline
      ? Math.min((top + bottom) / 2 + BELOW_MIDDLE, Math.max((top + bottom) / 2 + 4, bottom - 5))
      : Math.max(top, frame.layout.inside.top) + 17;
    return textAt((left + right) / 2, y, fitText(zone.name, right - left - 8, NAME_SIZE, 'italic'), {
      size: NAME_SIZE,
      face: 'italic',
      fill: frame.palette.ink,
      anchor: 'middle',
      halo: frame.palette.paper,
      haloWidth: 3,
    });
  });
  return group({ 'data-part': 'zone-names' }, names);
}
