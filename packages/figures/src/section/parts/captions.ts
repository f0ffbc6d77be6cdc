import { metresOf } from '../../scale/length-unit.ts';
import type { Point } from '../../scene/path.ts';
import { group, type SceneNode } from '../../scene/scene.ts';
import { quantityText } from '../../type/number-text.ts';
import { type TextStyle, textAt } from '../../type/text.ts';
import { textWidth } from '../../type/text-width.ts';
import { anchorsOf } from '../anchors.ts';
import type { SectionFrame } from '../frame.ts';
import { type LayerBody, layerBodies } from '../layer-bodies.ts';
import { subjectsOf } from '../subjects.ts';
import { waterBodies } from '../water-body.ts';
import { pumpLines } from './equipment.ts';

/** The level's figures, standing on the water line: cm, L and °C; on as many lines as the room beside the bank asks. */
export function levelCaption(frame: SectionFrame): SceneNode | undefined {
  const body = waterBodies(frame)[0];
  if (!body) return undefined;
  const { waterVolume, waterTemperature } = frame.day;
  const parts = [
    quantityText(frame.level / metresOf(frame.unit), frame.unit, 1),
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
  if (!frame.layerNames) return undefined;
  const leaders = anchorsOf(frame, subjectsOf(frame.plan, frame.day))
    .filter((anchor) => anchor.way === 'base')
    .map((anchor) => frame.x(anchor.x));
  const names = layerBodies(frame).map((body) => layerName(frame, body, [...leaders, ...pumpLines(frame)]));
  return group({ 'data-part': 'layer-names' }, names);
}

const NAME_SIZE = 12;

/** What comes before the first comma; what follows is left out silently where it is a grain size. */
function shortName(name: string): string {
  const [head = '', ...rest] = name.split(',');
  return rest.length === 0 || /^ *[0-9]/.test(rest[0] ?? '') ? head : `${head} …`;
}

/** The whole name where it stands clear, else its beginning. */
function layerName(frame: SectionFrame, body: LayerBody, lines: readonly number[]): SceneNode | undefined {
  const { name } = body.layer;
  for (const text of new Set([name, shortName(name)])) {
    const spot = text === '' ? undefined : clearSpot(frame, body, { text, lines });
    if (spot) {
      const style: TextStyle = {
        size: NAME_SIZE,
        face: 'italic',
        fill: frame.palette.ink,
        anchor: 'middle',
        halo: frame.palette.paper,
        haloWidth: 2.2,
      };
      return textAt(spot[0], spot[1] + NAME_SIZE * 0.33, text, style);
    }
  }
  return undefined;
}

/** Middle of a stretch of the layer that is thick enough for the text and that no upright line passes. */
function clearSpot(
  frame: SectionFrame,
  { columns }: LayerBody,
  { text, lines }: { text: string; lines: readonly number[] },
): Point | undefined {
  const half = textWidth(text, NAME_SIZE, 'italic') / 2 + 6;
  const thick = columns.filter(({ low, high }) => (high - low) * frame.pixelsPerMetre >= NAME_SIZE + 5);
  const [first, last] = [thick[0], thick[thick.length - 1]];
  if (!first || !last) return undefined;
  const clear = (x: number) =>
    x - half >= frame.x(first.x) &&
    x + half <= frame.x(last.x) &&
    lines.every((line) => Math.abs(line - x) > half);
  for (const share of [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82]) {
    const column = thick[Math.floor(thick.length * share)];
    if (column && clear(frame.x(column.x))) return frame.at(column.x, (column.low + column.high) / 2);
  }
  return undefined;
}
