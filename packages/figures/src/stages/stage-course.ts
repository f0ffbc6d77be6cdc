import { lookFill, lookPatterns, type TermLook } from '../budget/term-look.ts';
import { valueTicks } from '../marks/value-ticks.ts';
import type { Palette } from '../palette/palette.ts';
import { type TimeAxis, timeAxis } from '../ribbon/time-axis.ts';
import { linearScale } from '../scale/linear-scale.ts';
import { roundTicks } from '../scale/ticks.ts';
import { areaBetween, type Point } from '../scene/path.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { dateLabel } from '../time/calendar.ts';
import { numberText } from '../type/number-text.ts';
import { textAt } from '../type/text.ts';
import { textWidth } from '../type/text-width.ts';

/** One stage of life: its name and how many there are, one value a day. */
export interface StageCourse {
  readonly name: string;
  readonly values: readonly number[];
}

export interface StageOptions {
  /** From the lowest layer to the highest. */
  readonly stages: readonly StageCourse[];
  readonly startDate: string;
  readonly day?: number;
  readonly width: number;
  readonly height: number;
  readonly palette: Palette;
  /** What the numbers are of: medians of the runs, or while these are coming in the expected run. */
  readonly of?: 'medians of the runs' | 'expected run';
  /** Keeps the patterns of several such figures on a page apart. */
  readonly id: string;
}

const LOOKS: readonly TermLook[] = [
  { letter: '', wash: 'mossDeep', pattern: 0 },
  { letter: '', wash: 'litter', pattern: 1 },
  { letter: '', wash: 'water', pattern: 2 },
];
const MEDIANS = 'medians of the runs';
const [TOP, FOOT] = [44, 48];

/** Animals by stage, one layer upon the other, over the run. */
export function stageScene(options: StageOptions): Scene {
  const { stages, startDate, width, height, palette, id, day } = options;
  const days = Math.max(1, (stages[0]?.values.length ?? 1) - 1);
  const tops = layersOf(stages);
  const most = Math.max(1, ...(tops[tops.length - 1] ?? [1]));
  const digits = most < 4 ? 1 : 0;
  const ticks = roundTicks([0, most * 1.06], 4);
  const left = 12 + Math.max(...ticks.map((tick) => textWidth(numberText(tick, digits), 12)));
  const [right, bottom] = [Math.max(left + 60, width - 8), Math.max(TOP + 40, height - FOOT)];
  const x = linearScale([0, days], [left, right]);
  const y = linearScale([0, most * 1.06], [bottom, TOP]);
  const time: TimeAxis = { startDate, days, left, right, toX: x.toPixel, palette };
  const course = (values: readonly number[]): Point[] =>
    values.map((value, at) => [x.toPixel(at), y.toPixel(value)]);
  const prefix = `stages-${id.replaceAll(/[^A-Za-z0-9_-]/g, '_')}`;
  const looks = stages.map((_, at) => LOOKS[at % LOOKS.length] as TermLook);
  return sceneOf({ width, height }, sentence(options, days), [
    lookPatterns(looks, prefix, palette),
    heading(options, looks, prefix),
    ...valueTicks(ticks, { left, right, toY: y.toPixel, digits, palette }),
    ...stages.map((_, at) =>
      element('path', {
        d: areaBetween(
          course(tops[at] ?? []),
          course(at === 0 ? (tops[0] ?? []).map(() => 0) : (tops[at - 1] ?? [])),
        ),
        fill: lookFill(looks[at] as TermLook, prefix),
        stroke: palette.ink,
        'stroke-width': 0.8,
      }),
    ),
    day === undefined
      ? undefined
      : element('path', {
          d: `M${x.toPixel(Math.min(days, Math.max(0, day))).toFixed(1)} ${TOP}V${bottom}`,
          stroke: palette.vermilion,
          'stroke-width': 1.3,
        }),
    timeAxis(time, bottom),
  ]);
}

function layersOf(stages: readonly StageCourse[]): number[][] {
  const layers: number[][] = [];
  for (const { values } of stages) {
    const below = layers[layers.length - 1];
    layers.push(values.map((value, at) => value + (below?.[at] ?? 0)));
  }
  return layers;
}

/** The title, and below it the pattern of each stage with its name. */
function heading(
  { stages, palette, of = MEDIANS }: StageOptions,
  looks: readonly TermLook[],
  prefix: string,
): SceneNode {
  let x = 0;
  const keys = stages.map(({ name }, at) => {
    const left = x;
    x += 18 + textWidth(name, 13) + 16;
    return group({}, [
      element('rect', {
        x: left + 0.5,
        y: 23.5,
        width: 13,
        height: 11,
        fill: lookFill(looks[at] as TermLook, prefix),
        stroke: palette.ink,
        'stroke-width': 0.9,
      }),
      textAt(left + 18, 34, name, { size: 13, fill: palette.ink }),
    ]);
  });
  return group({ 'data-part': 'key' }, [
    textAt(0, 14, `By stage, ${of}`, { size: 13, fill: palette.softInk }),
    ...keys,
  ]);
}

function sentence({ stages, startDate, of = MEDIANS }: StageOptions, days: number): string {
  const end = stages.map(({ name, values }) => `${numberText(Math.round(values[days] ?? 0))} ${name}`);
  return `By stage until ${dateLabel(startDate, days)}, ${of}: ${end.join(', ')} at the end.`;
}
