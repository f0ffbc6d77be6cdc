import { toPlanUnit, unitsOf } from '@shoreglass/engine';
import type { DatedSeries } from '../enclosure/plan/room-of.ts';
import type { Problem } from '../enclosure/read/problem.ts';
import { type Sample, toHours } from './hours.ts';

const LONGEST_TEXT = 12_000_000;
const MOST_ROWS = 300_000;
const MOST_PROBLEMS = 20;

export type SeriesResult =
  | { readonly series: DatedSeries; readonly problems?: undefined }
  | { readonly problems: readonly Problem[]; readonly series?: undefined };

interface Columns {
  readonly time: number;
  readonly temperature: { readonly index: number; readonly unit: string };
  readonly humidity: { readonly index: number; readonly unit: string };
  readonly count: number;
  readonly separator: string;
}

type Report = (line: number, column: number, message: string, mend: string, value?: string) => void;

const HEADING = /^(.*?)\s*\[(.+)\]$/;

/** Columns by their headings: time, temperature [°C or °F], humidity [%]. */
function columnsOf(heading: string, line: number, report: Report): Columns | undefined {
  const separator = heading.includes(';') ? ';' : heading.includes('\t') ? '\t' : ',';
  const names = heading.split(separator).map((name) => name.trim().replaceAll('"', ''));
  const find = (name: string, dimension: 'temperature' | 'share') => {
    const index = names.findIndex((each) => each.toLowerCase().startsWith(name));
    const unit = HEADING.exec(names[index] ?? '')?.[2];
    if (index < 0) {
      report(line, 1, `has no column '${name}'`, 'Name the columns: time, temperature [°C], humidity [%].');
      return undefined;
    }
    if (unit === undefined || !unitsOf(dimension).some((each) => each === unit)) {
      const allowed = unitsOf(dimension).join(', ');
      report(
        line,
        1,
        `the column '${name}' has no unit of ${dimension}`,
        `Put one of ${allowed} in square brackets after the name.`,
      );
      return undefined;
    }
    return { index, unit };
  };
  const temperature = find('temperature', 'temperature');
  const humidity = find('humidity', 'share');
  if (!temperature || !humidity) return undefined;
  const time = names.findIndex((each) => each.toLowerCase().startsWith('time'));
  return { time, temperature, humidity, count: names.length, separator };
}

/** Minutes since 1970 of '2013-01-01 06:30', read as it stands, without time zones. */
function minutesOf(text: string): number | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{1,2}):(\d{2})(?::\d{2})?$/.exec(text.trim());
  if (!match) return undefined;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = match.slice(1).map(Number);
  if (month < 1 || month > 12 || day < 1 || day > 31 || hour > 23 || minute > 59) return undefined;
  const time = Date.UTC(year, month - 1, day, hour, minute);
  // A day that its month does not have would be counted on into the next one.
  return new Date(time).getUTCDate() === day ? time / 60_000 : undefined;
}

interface Head {
  readonly facts: ReadonlyMap<string, string>;
  /** Index of the line with the column names. */
  readonly heading: number;
}

/** The lines '# key: value' before the column names. */
function headOf(lines: readonly string[]): Head {
  const facts = new Map<string, string>();
  let heading = 0;
  for (; heading < lines.length; heading++) {
    const line = lines[heading] ?? '';
    if (line.trim() === '') continue;
    if (!line.startsWith('#')) break;
    const fact = /^#\s*([a-z]+):\s*(.*)$/.exec(line);
    if (fact?.[1] && !facts.has(fact[1])) facts.set(fact[1], fact[2]?.trim() ?? '');
  }
  return { facts, heading };
}

function number(text: string): number {
  const trimmed = text.trim().replaceAll('"', '');
  return /^[+-]?\d+(?:[.,]\d+)?$/.test(trimmed) ? Number(trimmed.replace(',', '.')) : Number.NaN;
}

const STEP = /^(\d+)\s*(h|min)$/;

/** Start and step of a file without a time column. */
function clockOf({ facts, heading }: Head, report: Report): { first: number; step: number } | undefined {
  const first = minutesOf(facts.get('start') ?? '');
  const step = STEP.exec(facts.get('step') ?? '');
  if (first !== undefined && step) {
    const minutes = Number(step[1]) * (step[2] === 'h' ? 60 : 1);
    if (minutes >= 1 && minutes <= 180) return { first, step: minutes };
  }
  report(
    heading + 1,
    1,
    'says neither times nor start and step',
    "Add a column 'time', or the lines '# start: 2013-01-01 00:00' and '# step: 1 h'.",
  );
  return undefined;
}

const LIMITS = { temperature: [-40, 55], humidity: [0, 1] } as const;

/**
 * Reads a room series: CSV with the columns temperature [°C] and humidity [%], and either a column time or the head
 * lines start and step. Finer steps are averaged to hours, gaps of up to six hours are filled in a straight line.
 * Reports every problem with line and column; never throws.
 */
export function readSeries(text: string, fileName: string): SeriesResult {
  const problems: Problem[] = [];
  const report: Report = (line, column, message, mend, value) => {
    if (problems.length < MOST_PROBLEMS)
      problems.push({
        file: fileName,
        line,
        column,
        path: '',
        message,
        mend,
        ...(value === undefined ? {} : { value }),
      });
  };
  if (text.length > LONGEST_TEXT) {
    report(1, 1, 'is longer than 12 MB', 'Keep one year at steps of ten minutes or more.');
    return { problems };
  }
  if (text.trim() === '') {
    report(
      1,
      1,
      'is empty',
      'Write a line with the columns time, temperature [°C], humidity [%], and the readings below it.',
    );
    return { problems };
  }
  const lines = text.split(/\r\n|\n|\r/);
  const head = headOf(lines);
  const columns = columnsOf(lines[head.heading] ?? '', head.heading + 1, report);
  const clock = columns && columns.time < 0 ? clockOf(head, report) : undefined;
  if (!columns || problems.length > 0) return { problems };
  const samples = samplesOf(lines, head.heading + 1, columns, clock, report);
  if (problems.length > 0) return { problems };
  const hours = toHours(samples);
  if ('gap' in hours) {
    report(hours.gap, 1, hours.message, hours.mend);
    return { problems };
  }
  return {
    series: {
      name: head.facts.get('name') ?? fileName,
      source: head.facts.get('source') ?? fileName,
      ...hours,
    },
  };
}

function samplesOf(
  lines: readonly string[],
  from: number,
  columns: Columns,
  clock: { first: number; step: number } | undefined,
  report: Report,
): Sample[] {
  const samples: Sample[] = [];
  for (let index = from; index < lines.length; index++) {
    const row = lines[index] ?? '';
    if (row.trim() === '') continue;
    if (samples.length >= MOST_ROWS) {
      report(index + 1, 1, `has more than ${MOST_ROWS} rows`, 'Average it to coarser steps.');
      break;
    }
    const cells = row.split(columns.separator);
    if (cells.length !== columns.count) {
      report(
        index + 1,
        1,
        `has ${cells.length} cells in place of ${columns.count}`,
        'Give each column a cell in every row.',
        row.slice(0, 60),
      );
      continue;
    }
    const time = clock ? clock.first + samples.length * clock.step : minutesOf(cells[columns.time] ?? '');
    if (time === undefined) {
      report(
        index + 1,
        1,
        'has no time',
        'Write times like 2013-01-01 06:00.',
        (cells[columns.time] ?? '').slice(0, 40),
      );
      continue;
    }
    const before = samples[samples.length - 1];
    if (before && time <= before.minute)
      report(
        index + 1,
        1,
        'goes back in time',
        'Sort the rows by time and remove doubles.',
        (cells[columns.time] ?? '').slice(0, 40),
      );
    const value = (name: 'temperature' | 'humidity', dimension: 'temperature' | 'share'): number => {
      const { index: cell, unit } = columns[name];
      const read = number(cells[cell] ?? '');
      const [low, high] = LIMITS[name];
      const plain = Number.isFinite(read) ? toPlanUnit(read, unit, dimension) : Number.NaN;
      if (!(plain >= low && plain <= high)) {
        const column = cells.slice(0, cell).reduce((sum, each) => sum + each.length + 1, 1);
        report(
          index + 1,
          column,
          `${name} is not a number in ${unit} within reason`,
          'Correct it, or leave the whole row out.',
          (cells[cell] ?? '').trim().slice(0, 40),
        );
      }
      return plain;
    };
    samples.push({
      line: index + 1,
      minute: time,
      temperature: value('temperature', 'temperature'),
      humidity: value('humidity', 'share'),
    });
  }
  return samples;
}
