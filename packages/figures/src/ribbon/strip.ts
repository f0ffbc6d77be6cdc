import type { QuantileSeries } from '@shoreglass/engine';
import { type Estimate, estimateOf } from '../day/day-state.ts';
import { band } from '../scale/band.ts';
import { fan } from '../scale/fan.ts';
import { type ValueAxis, valueAxis } from '../scale/value-axis.ts';
import { remembered } from '../scene/remembered.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { seriesText } from '../type/series-text.ts';
import { textAt, textRun } from '../type/text.ts';
import { fitText, textWidth, wrapText } from '../type/text-width.ts';
import type { RibbonLayout, RibbonRow } from './ribbon-layout.ts';
import type { RibbonOptions, RibbonReading } from './ribbon-options.ts';

/** Band, fan and scale of a strip: all that the chosen day does not change. */
interface StripGround {
  readonly axis: ValueAxis;
  readonly ground: readonly (SceneNode | undefined)[];
}

const groundOnce = remembered<QuantileSeries, StripGround>();

/** One strip: band, fan, readings, its scale at the right and its name and value of the chosen day at the left. */
export function strip(options: RibbonOptions, layout: RibbonLayout, row: RibbonRow): SceneNode | undefined {
  const { document, palette, readings = [], day } = options;
  const series = document.series[row.id];
  if (!series) return undefined;
  const own = readings.filter((reading) => reading.series === row.id);
  const { left, right, toX } = layout.scale;
  const also = own.flatMap(({ value, low, high }) => [value, low ?? value, high ?? value]);
  const { top, stripTop, stripBottom } = row;
  const key = [
    palette.name,
    row.id,
    left,
    right,
    layout.scale.days,
    top,
    stripTop,
    stripBottom,
    ...also,
  ].join(' ');
  const { axis, ground } = groundOnce(series, key, () => {
    const axis = valueAxis({
      id: row.id,
      series,
      range: [stripBottom - 3, stripTop + 3],
      tickSpacing: 13,
      also,
    });
    const toY = axis.scale.toPixel;
    const ground = [
      element('title', {}, stripTitle(series)),
      band(series.band, { left, right, top: stripTop, bottom: stripBottom, toY, palette }),
      element('path', { d: `M${left} ${stripBottom}H${right}`, stroke: palette.rule, 'stroke-width': 0.8 }),
      fan(series, { toX, toY, width: right - left, palette }),
      ...axisFigures(options, layout, axis),
    ];
    return { axis, ground };
  });
  const toY = axis.scale.toPixel;
  return group({ 'data-strip': row.id }, [
    ...ground,
    ...own.map((reading) => readingMark(options, { reading, x: toX(reading.day), toY })),
    stripLabel(options, { layout, row, series, estimate: estimateOf(series, day) }),
  ]);
}

function stripTitle(series: QuantileSeries): string {
  const { low, high, lowOwner, highOwner } = series.band ?? {};
  const limits = [
    low === undefined ? '' : `at least ${low} ${series.unit} for ${lowOwner ?? 'those who live there'}`,
    high === undefined ? '' : `at most ${high} ${series.unit} for ${highOwner ?? 'those who live there'}`,
  ].filter((limit) => limit !== '');
  return limits.length === 0 ? series.name : `${series.name}: ${limits.join(', ')}`;
}

function readingMark(
  { palette }: RibbonOptions,
  { reading, x, toY }: { reading: RibbonReading; x: number; toY: (value: number) => number },
): SceneNode {
  const { value, low, high } = reading;
  const whisker =
    low !== undefined && high !== undefined
      ? element('path', {
          d: `M${x.toFixed(1)} ${toY(low).toFixed(1)}V${toY(high).toFixed(1)}`,
          stroke: palette.ink,
          'stroke-width': 0.9,
        })
      : undefined;
  return group({ 'data-part': 'reading' }, [
    whisker,
    element('circle', {
      cx: x,
      cy: toY(value),
      r: 2.8,
      fill: palette.paper,
      stroke: palette.ink,
      'stroke-width': 1.1,
    }),
  ]);
}

function axisFigures(
  { palette }: RibbonOptions,
  { scale, narrow }: RibbonLayout,
  axis: ValueAxis,
): SceneNode[] {
  const size = narrow ? 11 : 11.5;
  return axis.ticks.map((tick) =>
    textAt(scale.right + 6, axis.scale.toPixel(tick.value) + size * 0.34, tick.text, {
      size,
      fill: tick.limit ? palette.ink : palette.softInk,
    }),
  );
}

interface Labelled {
  readonly layout: RibbonLayout;
  readonly row: RibbonRow;
  readonly series: QuantileSeries;
  readonly estimate: Estimate | undefined;
}

function stripLabel(options: RibbonOptions, labelled: Labelled): SceneNode {
  return labelled.layout.narrow ? labelAbove(options, labelled) : labelBeside(options, labelled);
}

function labelAbove({ palette }: RibbonOptions, { layout, row, series, estimate }: Labelled): SceneNode {
  const { value, unit, alarm } = seriesText(row.id, series, estimate);
  const ink = alarm ? palette.vermilion : palette.ink;
  const { left, right } = layout.scale;
  const y = row.top + 14;
  const shown = `${value}${unit === '' ? '' : `\u00a0${unit}`}${alarm ? ` · ${alarm}` : ''}`;
  const room = right - left - textWidth(shown, 14, 'strong') - 12;
  return group({}, [
    textAt(left, y, fitText(series.name, room, 14), { size: 14, fill: palette.ink }),
    textAt(right, y, shown, { size: 14, face: 'strong', fill: ink, anchor: 'end' }),
  ]);
}

function labelBeside({ palette }: RibbonOptions, { layout, row, series, estimate }: Labelled): SceneNode {
  const { value, unit, alarm } = seriesText(row.id, series, estimate);
  const ink = alarm ? palette.vermilion : palette.ink;
  const x = layout.scale.left - 16;
  const room = row.stripBottom - row.stripTop;
  const nameLines = room >= (alarm ? 64 : 48) ? 2 : 1;
  const names = wrapText(series.name, { width: x - 2, size: 13.5, lines: nameLines });
  const lines = names.length + (alarm ? 2 : 1);
  const first = (row.stripTop + row.stripBottom) / 2 - (lines - 1) * 8.2 + 4.5;
  const at = (line: number) => first + line * 16.4;
  const soft = { size: 12, fill: palette.softInk } as const;
  return group({}, [
    ...names.map((name, line) => textAt(x, at(line), name, { size: 13.5, fill: palette.ink, anchor: 'end' })),
    textRun({ x, y: at(names.length) + 1 }, [
      { content: value, style: { size: 15, face: 'strong', fill: ink, anchor: 'end' } },
      ...(unit === '' ? [] : [{ content: `\u00a0${unit}`, style: soft }]),
    ]),
    alarm ? textAt(x, at(names.length + 1), alarm, { size: 12, fill: ink, anchor: 'end' }) : undefined,
  ]);
}
