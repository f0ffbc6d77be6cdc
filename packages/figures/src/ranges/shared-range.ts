import type { Palette } from '../palette/palette.ts';
import { linearScale } from '../scale/linear-scale.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { quantityText } from '../type/number-text.ts';
import { textAt } from '../type/text.ts';
import { fitText } from '../type/text-width.ts';

/** The range of one who lives here; an end that is left out has no known limit. */
export interface OwnRange {
  readonly owner: string;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

export interface SharedRangeOptions {
  readonly name: string;
  readonly unit: string;
  readonly ranges: readonly OwnRange[];
  readonly width: number;
  readonly palette: Palette;
  readonly id: string;
}

/** What suits all, and who narrows it at either end. */
export interface SharedRange {
  readonly low?: number;
  readonly high?: number;
  readonly lowOwner?: string;
  readonly highOwner?: string;
  /** Nothing suits all: one needs more than another bears. */
  readonly apart: boolean;
}

export function sharedRange(ranges: readonly OwnRange[]): SharedRange {
  let shared: SharedRange = { apart: false };
  for (const { owner, low, high } of ranges) {
    if (low !== undefined && !(shared.low !== undefined && shared.low >= low))
      shared = { ...shared, low, lowOwner: owner };
    if (high !== undefined && !(shared.high !== undefined && shared.high <= high))
      shared = { ...shared, high, highOwner: owner };
  }
  const { low, high } = shared;
  return { ...shared, apart: low !== undefined && high !== undefined && low > high };
}

const ROW = 24;
const HEAD = 8;
const FOOT = 24;
const NARROW = 420;

/** One line for each who lives here, and the stretch that suits all as a hatched column behind them. */
export function sharedRangeScene(options: SharedRangeOptions): Scene {
  const { ranges, width, palette, name, unit, id } = options;
  const shared = sharedRange(ranges);
  const left = Math.min(width < NARROW ? 118 : 170, width * 0.4);
  const right = width - 14;
  const ends = ranges.flatMap(({ low, high }) => [low, high]).filter((end) => end !== undefined);
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const beyond = Math.max(0.16 * (most - least), 0.03 * Math.abs(most), 0.01);
  const x = linearScale([least - beyond, most + beyond], [left, right]);
  const bottom = HEAD + ROW * ranges.length;
  const clip = (value: number | undefined, otherwise: number) =>
    value === undefined ? otherwise : x.toPixel(value);
  const pattern = `shared-${id}`;
  return sceneOf({ width, height: bottom + FOOT }, sentence(name, unit, shared), [
    hatch(pattern, palette),
    shared.apart
      ? undefined
      : element('rect', {
          x: clip(shared.low, left),
          y: HEAD,
          width: Math.max(1, clip(shared.high, right) - clip(shared.low, left)),
          height: bottom - HEAD,
          fill: `url(#${pattern})`,
        }),
    ...ranges.map((range, at) => {
      const y = HEAD + ROW * at + ROW / 2;
      const [from, to] = [clip(range.low, left), clip(range.high, right)];
      return group({}, [
        textAt(left - 10, y + 4, fitText(range.owner, left - 12, 13), {
          size: 13,
          fill: palette.ink,
          anchor: 'end',
        }),
        element('path', {
          d: `M${from.toFixed(1)} ${y}H${to.toFixed(1)}${range.low === undefined ? '' : `M${from.toFixed(1)} ${y - 5}v10`}${range.high === undefined ? '' : `M${to.toFixed(1)} ${y - 5}v10`}`,
          stroke: palette.ink,
          'stroke-width': 1.8,
          fill: 'none',
        }),
      ]);
    }),
    limits(shared, { x: x.toPixel, y: bottom + 15, unit, left, right }, palette),
  ]);
}

function hatch(id: string, palette: Palette): SceneNode {
  return element(
    'defs',
    {},
    element(
      'pattern',
      { id, width: 6, height: 6, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
      element('rect', { x: 0, y: 0, width: 6, height: 6, fill: palette.band }),
      element('path', { d: 'M3 0V6', stroke: palette.bandEdge, 'stroke-width': 1 }),
    ),
  );
}

interface Limits {
  readonly x: (value: number) => number;
  readonly y: number;
  readonly unit: string;
  readonly left: number;
  readonly right: number;
}

/** The ends that suit all, written below the lines. */
function limits(
  { low, high, apart }: SharedRange,
  { x, y, unit, left, right }: Limits,
  palette: Palette,
): SceneNode {
  const style = { size: 12, fill: palette.ink, halo: palette.paper } as const;
  const written = (value: number) => quantityText(value, unit, digitsOf(value));
  const close = low !== undefined && high !== undefined && Math.abs(x(high) - x(low)) < 90;
  const room = (at: number, half: number) => Math.min(right - half, Math.max(left + half, at));
  if (low !== undefined && low === high)
    return textAt(room(x(low), 24), y, written(low), { ...style, anchor: 'middle' });
  const lowAnchor = close && !apart ? 'end' : 'middle';
  const highAnchor = close && !apart ? 'start' : 'middle';
  return group({}, [
    low === undefined
      ? undefined
      : textAt(room(x(low), 24) + (lowAnchor === 'end' ? -3 : 0), y, written(low), {
          ...style,
          anchor: lowAnchor,
        }),
    high === undefined
      ? undefined
      : textAt(room(x(high), 24) + (highAnchor === 'start' ? 3 : 0), y, written(high), {
          ...style,
          anchor: highAnchor,
        }),
  ]);
}

/** Digits a limit needs: none for 300, two for 0.05. */
function digitsOf(value: number): number {
  return (String(Number(value.toPrecision(4))).split('.')[1] ?? '').length;
}

function sentence(
  name: string,
  unit: string,
  { low, high, lowOwner, highOwner, apart }: SharedRange,
): string {
  const text = (value: number) => quantityText(value, unit, digitsOf(value));
  if (apart && low !== undefined && high !== undefined)
    return `${name}: nothing suits all; ${lowOwner} need at least ${text(low)}, ${highOwner} bear at most ${text(high)}.`;
  if (low !== undefined && low === high)
    return `${name} that suits all: only ${text(low)}, the least for ${lowOwner}, the most for ${highOwner}.`;
  const from = low === undefined ? '' : ` at least ${text(low)}, for ${lowOwner}`;
  const to = high === undefined ? '' : ` at most ${text(high)}, for ${highOwner}`;
  return `${name} that suits all:${[from, to].filter((part) => part !== '').join(';')}.`;
}
