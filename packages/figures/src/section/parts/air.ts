import { noiseFrom } from '../../noise/noise.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import { quantityText } from '../../type/number-text.ts';
import { textAt } from '../../type/text.ts';
import type { SectionFrame } from '../frame.ts';

const DROPS_PER_HOUR = 42;
const MOST_DROPS = 420;

/** Fog on the front glass: a stippled patch in the upper corner over the water that grows with its hours a day. */
export function glassFog(frame: SectionFrame): SceneNode | undefined {
  const hours = Math.min(24, Math.max(0, frame.day.glassFog?.median ?? 0));
  if (hours < 0.05) return undefined;
  const noise = noiseFrom(frame.seed('fog'));
  const { corner, width, height } = fogPatch(frame, hours);
  const scale = Math.max(0.6, Math.min(1, frame.pixelsPerMetre / 700));
  const drops = Array.from({ length: Math.min(MOST_DROPS, Math.round(hours * DROPS_PER_HOUR)) }, () => {
    const [across, down, size] = [noise() * noise(), noise(), noise()];
    const x = corner.x + corner.inwards * width * (across + 0.12 * noise());
    return dropPath(x, corner.y + height * down * (1 - 0.5 * across), (0.5 + 1.5 * size ** 4) * scale);
  });
  const label = `fog ${quantityText(hours, 'h/d', 1)}`;
  const style = {
    size: 12,
    fill: frame.palette.softInk,
    anchor: corner.anchor,
    halo: frame.palette.paper,
  } as const;
  return group({ 'data-part': 'fog' }, [
    element('path', {
      d: drops.join(''),
      fill: 'none',
      stroke: frame.palette.softInk,
      'stroke-width': 0.6,
      'stroke-opacity': 0.8,
    }),
    frame.labels ? textAt(corner.x, corner.y + height + 16, label, style) : undefined,
  ]);
}

function dropPath(x: number, y: number, radius: number): string {
  const [across, r] = [(2 * radius).toFixed(1), radius.toFixed(1)];
  return `M${(x - radius).toFixed(1)} ${y.toFixed(1)}a${r} ${r} 0 1 0 ${across} 0a${r} ${r} 0 1 0 -${across} 0`;
}

/** Air temperature and humidity, written under the cover on the side of the water. */
export function airCaption(frame: SectionFrame): SceneNode | undefined {
  const { airTemperature, relativeHumidity } = frame.day;
  const parts = [
    airTemperature ? quantityText(airTemperature.median, '°C', 1) : '',
    relativeHumidity ? quantityText(relativeHumidity.median, '%') : '',
  ].filter((part) => part !== '');
  if (parts.length === 0) return undefined;
  const corner = airCorner(frame);
  const style = {
    size: frame.labels ? 12.5 : 11,
    fill: frame.palette.softInk,
    anchor: corner.anchor,
    halo: frame.palette.paper,
  } as const;
  return textAt(corner.x, corner.y, `air ${parts.join(' · ')}`, style);
}

/** Fine spray under the cover where the enclosure has a mister. */
export function mist(frame: SectionFrame): SceneNode | undefined {
  if (!frame.plan.devices.mister) return undefined;
  const { palette, layout } = frame;
  const corner = airCorner(frame);
  const aside = 0.16 * (layout.inside.right - layout.inside.left);
  const x = corner.inwards > 0 ? layout.inside.right - aside : layout.inside.left + aside;
  const y = layout.inside.top;
  const reach = Math.min(46, frame.pixelsPerMetre * 0.07);
  const rays = [-0.9, -0.45, 0, 0.45, 0.9].map((lean) =>
    element('path', {
      d: `M${x} ${y + 8}L${(x + lean * reach).toFixed(1)} ${(y + 8 + reach * (1.15 - 0.25 * Math.abs(lean))).toFixed(1)}`,
    }),
  );
  return group({ 'data-part': 'mister', fill: 'none', stroke: palette.ink }, [
    element('path', {
      d: `M${x} ${y}v5M${x - 3.5} ${y + 5}h7l-2 3h-3z`,
      'stroke-width': 1,
      fill: palette.raised,
    }),
    group(
      {
        'stroke-width': 1.1,
        'stroke-opacity': 0.55,
        'stroke-dasharray': '0.5 4.5',
        'stroke-linecap': 'round',
      },
      rays,
    ),
  ]);
}

interface AirCorner {
  readonly x: number;
  readonly y: number;
  /** +1 when the inside lies to the right of the corner. */
  readonly inwards: 1 | -1;
  readonly anchor: 'start' | 'end';
}

/** The upper corner over the lower half of the ground: there is most air, and no leader starts there. */
function airCorner({ plan, layout, ground, labels }: SectionFrame): AirCorner {
  const middle = plan.box.length / 2;
  const left = ground.highest(0, middle) <= ground.highest(middle, plan.box.length);
  const inset = labels ? 11 : 7;
  const y = layout.inside.top + (labels ? 20 : 15);
  return left
    ? { x: layout.inside.left + inset, y, inwards: 1, anchor: 'start' }
    : { x: layout.inside.right - inset, y, inwards: -1, anchor: 'end' };
}

function fogPatch(frame: SectionFrame, hours: number): { corner: AirCorner; width: number; height: number } {
  const corner = airCorner(frame);
  const spread = Math.sqrt(hours / 24);
  const { left, right, top, bottom } = frame.layout.inside;
  return {
    corner: { ...corner, y: corner.y + (frame.labels ? 12 : 8) },
    width: (right - left) * (0.06 + 0.42 * spread),
    height: (bottom - top) * (0.06 + 0.34 * spread),
  };
}
