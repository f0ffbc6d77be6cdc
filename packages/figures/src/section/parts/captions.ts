import { group, type SceneNode } from '../../scene/scene.ts';
import { quantityText } from '../../type/number-text.ts';
import { type TextStyle, textAt } from '../../type/text.ts';
import { textWidth } from '../../type/text-width.ts';
import { anchorsOf } from '../anchors.ts';
import type { SectionFrame } from '../frame.ts';
import { type LayerBody, layerBodies } from '../layer-bodies.ts';
import { subjectsOf } from '../subjects.ts';
import { waterBodies } from '../water-body.ts';

/** The level's figures, standing on the water line: cm, L and °C; on as many lines as the room beside the bank asks. */
export function levelCaption(frame: SectionFrame): SceneNode | undefined {
  const body = waterBodies(frame)[0];
  if (!body) return undefined;
  const { waterVolume, waterTemperature } = frame.day;
  const parts = [
    quantityText(frame.level * 100, 'cm', 1),
    waterVolume ? quantityText(waterVolume.median, 'L', 1) : '',
    waterTemperature ? quantityText(waterTemperature.median, '°C', 1) : '',
  ].filter((part) => part !== '');
  const atRight = body.from > 0.01 && frame.plan.box.length - body.to < 0.01;
  const size = frame.labels ? 14 : 11.5;
  const style: TextStyle = {
    size,
    fill: frame.palette.ink,
    anchor: atRight ? 'end' : 'start',
    halo: frame.palette.paper,
    haloWidth: 4,
  };
  const inset = frame.labels ? 12 : 8;
  const room = frame.x(body.to) - frame.x(body.from) - inset;
  const x = atRight ? frame.x(body.to) - inset : frame.x(body.from) + inset;
  const whole = parts.join(' · ');
  const lines = textWidth(whole, size) <= room * 1.06 ? [whole] : linesWithin(parts, room, size);
  const surface = frame.y(frame.level);
  const lift =
    surface - frame.layout.inside.top < lines.length * size * 1.25 + 8
      ? size + 6 + (lines.length - 1) * size * 1.25
      : -7;
  return group(
    { 'data-part': 'level-caption' },
    lines.map((line, index) =>
      textAt(x, surface + lift - (lines.length - 1 - index) * size * 1.25, line, style),
    ),
  );
}

function linesWithin(parts: readonly string[], room: number, size: number): string[] {
  const lines: string[] = [];
  for (const part of parts) {
    const last = lines.pop();
    const joined = last === undefined ? part : `${last} · ${part}`;
    if (last === undefined || textWidth(joined, size) <= room) lines.push(joined);
    else lines.push(last, part);
  }
  return lines;
}

/** Names of the layers, written into those that have room for them and clear of the leaders that pass through. */
export function layerNames(frame: SectionFrame): SceneNode | undefined {
  if (!frame.labels) return undefined;
  const leaders = anchorsOf(frame, subjectsOf(frame.plan, frame.day))
    .filter((anchor) => anchor.way === 'base')
    .map((anchor) => frame.x(anchor.x));
  const names = layerBodies(frame).map((body) => layerName(frame, body, leaders));
  return group({ 'data-part': 'layer-names' }, names);
}

const NAME_SIZE = 12;

function layerName(
  frame: SectionFrame,
  { layer, columns }: LayerBody,
  leaders: readonly number[],
): SceneNode | undefined {
  if (layer.name === '') return undefined;
  const half = textWidth(layer.name, NAME_SIZE, 'italic') / 2 + 6;
  const thick = columns.filter(({ low, high }) => (high - low) * frame.pixelsPerMetre >= NAME_SIZE + 5);
  const [first, last] = [thick[0], thick[thick.length - 1]];
  if (!first || !last) return undefined;
  const spot = [0.5, 0.62, 0.38, 0.74, 0.26, 0.86, 0.14]
    .map((share) => thick[Math.floor(thick.length * share)])
    .find((column) => {
      if (!column) return false;
      const x = frame.x(column.x);
      const inside = x - half >= frame.x(first.x) && x + half <= frame.x(last.x);
      return inside && leaders.every((leader) => Math.abs(leader - x) > half);
    });
  if (!spot) return undefined;
  const style: TextStyle = {
    size: NAME_SIZE,
    face: 'italic',
    fill: frame.palette.ink,
    anchor: 'middle',
    halo: frame.palette.paper,
    haloWidth: 2.2,
  };
  const middle = frame.y((spot.low + spot.high) / 2);
  return textAt(frame.x(spot.x), middle + NAME_SIZE * 0.33, layer.name, style);
}
