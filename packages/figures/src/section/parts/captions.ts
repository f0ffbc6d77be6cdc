import { group, type SceneNode } from '../../scene/scene.ts';
import { quantityText } from '../../type/number-text.ts';
import { type TextStyle, textAt } from '../../type/text.ts';
import { textWidth } from '../../type/text-width.ts';
import type { SectionFrame } from '../frame.ts';
import { layerBodies } from '../layer-bodies.ts';
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
  const size = frame.labels ? 14 : 11.5;
  const style: TextStyle = { size, fill: frame.palette.ink, halo: frame.palette.paper, haloWidth: 4 };
  const inset = frame.labels ? 12 : 8;
  const left = frame.x(body.from) + inset;
  const room = frame.x(body.to) - left;
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
      textAt(left, surface + lift - (lines.length - 1 - index) * size * 1.25, line, style),
    ),
  );
}

function linesWithin(parts: readonly string[], room: number, size: number): string[] {
  return parts.reduce<string[]>((lines, part) => {
    const last = lines[lines.length - 1];
    const joined = last === undefined ? part : `${last} · ${part}`;
    if (last !== undefined && textWidth(joined, size) > room) return [...lines, part];
    return [...lines.slice(0, -1), joined];
  }, []);
}

/** Names of the layers, written into those that have room for them. */
export function layerNames(frame: SectionFrame): SceneNode | undefined {
  if (!frame.labels) return undefined;
  const size = 12;
  const style: TextStyle = {
    size,
    face: 'italic',
    fill: frame.palette.ink,
    anchor: 'middle',
    halo: frame.palette.paper,
    haloWidth: 3.2,
  };
  const names = layerBodies(frame).flatMap(({ layer, columns }) => {
    const thick = columns.filter(({ low, high }) => (high - low) * frame.pixelsPerMetre >= size + 5);
    const [first, last] = [thick[0], thick[thick.length - 1]];
    if (!first || !last) return [];
    const width = textWidth(layer.name, size, 'italic');
    if ((last.x - first.x) * frame.pixelsPerMetre < width + 24) return [];
    const middle = thick[Math.floor(thick.length * 0.5)] ?? first;
    const height = (middle.low + middle.high) / 2;
    return [textAt(frame.x(middle.x), frame.y(height) + size * 0.33, layer.name, style)];
  });
  return group({ 'data-part': 'layer-names' }, names);
}
