import type { AheadDocument, QuantileSeries, TurningPoint } from '@shoreglass/engine';
import colours from 'picocolors';
import { type Course, courseLines } from './course.ts';
import { calendarDay } from './dates.ts';
import { figure } from './number.ts';
import { roomWithin } from './width.ts';
import { underlined, wrapped } from './wrapped.ts';

const INDENT = '  ';
const SPARK_WIDTH = 36;
const CHARTED = [
  'pH',
  'KH',
  'GH',
  'conductivity',
  'totalAmmonia',
  'nitrite',
  'nitrate',
  'copper',
  'oxygen',
  'waterTemperature',
  'airTemperature',
  'relativeHumidity',
  'glassFog',
  'waterVolume',
  'attachedAlgae',
  'suspendedAlgae',
  'plantCover',
  'floatingCover',
  'emersedCover',
  'transpiration',
] as const;

const percent = (share: number): string => `${Math.round(share * 100)} %`;

function horizonLines({ handsOffHorizon: horizon, run, series }: AheadDocument, width: number): string[] {
  const [first] = horizon.limitedBy;
  const days = Math.round(horizon.q50);
  const head =
    horizon.unbroken > 0.5
      ? `${run.days} days and more left to itself`
      : `${days} ${days === 1 ? 'day' : 'days'} left to itself`;
  const spread = `${Math.round(horizon.q10)} to ${Math.round(horizon.q90)} days in 4 runs of 5; ${percent(horizon.unbroken)} of runs stay within every band for all ${run.days} days.`;
  if (!first) return [colours.bold(head), wrapped(spread, width, '')];
  const name = series[first.subject]?.name ?? first.subject;
  return [
    colours.bold(head),
    wrapped(spread, width, ''),
    wrapped(
      `Most often ${name} ${first.kind === 'dies out' ? 'dies out' : `${first.kind} the limit of ${first.owner}`} first (${percent(first.share)} of runs).`,
      width,
      '',
    ),
  ];
}

function turningLines(
  point: TurningPoint,
  { enclosure: { startDate } }: AheadDocument,
  width: number,
): string {
  const { early, median, late } = point.window;
  const when = `${calendarDay(startDate, median)} (${calendarDay(startDate, early)} to ${calendarDay(startDate, late)})`;
  const owner =
    point.kind === 'first young' || point.kind === 'dies out' ? '' : ` Band of ${point.band.owner}.`;
  return `${INDENT}${colours.bold(when)}\n${wrapped(point.sentence + owner, width, INDENT + INDENT)}`;
}

function courseOf({ name, unit, q05, q50, q95 }: QuantileSeries): Course {
  const last = q50.length - 1;
  return {
    name,
    values: q50,
    range: `${figure(q50[0] ?? 0)} to ${figure(q50[last] ?? 0)} ${unit}`.trim(),
    spread: `(${figure(q05[last] ?? 0)} to ${figure(q95[last] ?? 0)})`,
  };
}

/** Told only where there is some of it in some run. */
const ONLY_WHERE_SOME: readonly string[] = ['copper', 'plantCover', 'floatingCover', 'emersedCover'];

function seriesLines({ series }: AheadDocument, width: number): string[] {
  const populations = Object.keys(series).filter((id) => /^population:[^:]+$/.test(id));
  const plantings = Object.keys(series).filter((id) => id.startsWith('planting:'));
  const shown = [...CHARTED, ...plantings, ...populations].flatMap((id) => {
    const one = series[id];
    const isNone = ONLY_WHERE_SOME.includes(id) && one?.q95.every((value) => value === 0);
    return one && !isNone ? [one] : [];
  });
  return courseLines(shown.map(courseOf), { width: roomWithin(width), longest: SPARK_WIDTH });
}

function closureLine({ closure }: AheadDocument): string {
  const worst = Object.entries(closure).reduce((a, b) => (Math.abs(b[1]) > Math.abs(a[1]) ? b : a));
  return `Budgets close over the whole run: worst ${worst[0]}, relative error ${Math.abs(worst[1]).toExponential(1)}.`;
}

/** The outlook for people, as text for a terminal `width` characters wide. */
export function aheadText(document: AheadDocument, width: number): string {
  const { enclosure, run, turningPoints, notModelled } = document;
  const title = (text: string): string => `\n${underlined(text, width)}`;
  return [
    `\n${colours.bold(enclosure.name)}, ${run.days} days from ${calendarDay(enclosure.startDate, 0)}, ${run.members} runs, seed ${run.seed}`,
    '',
    ...horizonLines(document, width),
    title('What turns, and when'),
    ...(turningPoints.length > 0
      ? turningPoints.map((point) => turningLines(point, document, width))
      : [`${INDENT}Nothing leaves its band in 5 % of the runs or more.`]),
    title('The course, median of the runs: first to last day (5 to 95 % on the last day)'),
    ...seriesLines(document, width),
    title('Not yet modelled'),
    ...notModelled.map((sentence) => wrapped(sentence, width, INDENT)),
    '',
    colours.dim(wrapped(closureLine(document), width, '')),
  ].join('\n');
}
