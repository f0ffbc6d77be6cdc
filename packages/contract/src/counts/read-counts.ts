import type { Count, CountSeries } from '@shoreglass/engine';
import type { Problem } from '../enclosure/read/problem.ts';
import { type CountedColumns, columnsOf, type Fault, plainColumns } from './counted-columns.ts';
import { inCelsius } from './temperature-unit.ts';

const LONGEST_TEXT = 200_000;
const MOST_ROWS = 2000;
const MOST_PROBLEMS = 20;
const MOST_ANIMALS = 1e9;

/** Counts as they were written down. */
export interface WrittenCounts {
  readonly series: CountSeries;
  /** ISO date of day 0, the first count; left out where days were given instead of dates. */
  readonly startDate?: string;
  /** What the file calls the first count's day; left out where dates were given. */
  readonly firstDay?: number;
  /** Line of each count. */
  readonly lines: readonly number[];
}

export type CountsResult =
  | (WrittenCounts & { readonly problems?: undefined })
  | { readonly problems: readonly Problem[]; readonly series?: undefined };

/** Days since 1970 of a date such as 2026-03-01; undefined where there is no such day. */
function dayOfDate(text: string): number | undefined {
  const [, year = 0, month = 0, day = 0] = (/^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? []).map(Number);
  const moment = Date.UTC(year, month - 1, day);
  const read = new Date(moment);
  const isDay = year >= 1900 && read.getUTCMonth() === month - 1 && read.getUTCDate() === day;
  return isDay ? moment / 86_400_000 : undefined;
}

function numberOf(text: string): number {
  return /^\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
}

/** Semicolons, tabs or commas part cells; in a text without them, blanks. */
function separatorOf(line: string): RegExp {
  if (line.includes(';')) return /;/;
  if (line.includes('\t')) return /\t/;
  return line.includes(',') ? /,/ : /\s+/;
}

const cellsOf = (line: string, separator: RegExp): string[] =>
  line
    .trim()
    .split(separator)
    .map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));

interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

interface Counted extends Count {
  readonly line: number;
  readonly byStage: readonly number[];
  readonly warmth?: { readonly coldest: number; readonly warmest: number };
}

const isFault = (read: object): read is Fault => 'message' in read;

function temperaturesOf(
  { coldest, warmest }: CountedColumns,
  cells: readonly string[],
): Counted['warmth'] | Fault {
  if (!coldest || !warmest) return undefined;
  const [low, high] = [coldest, warmest].map(({ at, unit }) => {
    const cell = (cells[at] ?? '').replace(',', '.');
    return /^[+-]?\d+(\.\d+)?$/.test(cell) ? inCelsius(Number(cell), unit) : Number.NaN;
  }) as [number, number];
  const value = `${cells[coldest.at]}, ${cells[warmest.at]}`;
  if (!(low >= -40 && high <= 60))
    return {
      message: 'gives no temperatures from -40 to 60 °C',
      mend: 'Write the coldest and warmest as numbers.',
      value,
    };
  if (low > high) return { message: 'has a coldest above its warmest', mend: 'Exchange the two.', value };
  return { coldest: low, warmest: high };
}

/** One row as a count. */
function countOf(columns: CountedColumns, { line, cells }: Row): Counted | Fault {
  if (cells.length !== columns.count)
    return {
      message: `has ${cells.length} ${cells.length === 1 ? 'cell' : 'cells'} in place of ${columns.count}`,
      mend: 'Write one count a line: a date and a number, and what else the columns are named for.',
      value: cells.join(' '),
    };
  const when = cells[columns.when] ?? '';
  const day = columns.inDays ? numberOf(when) : dayOfDate(when);
  if (day === undefined || Number.isNaN(day))
    return columns.inDays
      ? { message: 'has no day', mend: 'Write days as numbers, such as 0, 7, 14.', value: when }
      : { message: 'has no date', mend: 'Write dates like 2026-03-01: year, month, day.', value: when };
  const byStage = columns.numbers.map(({ at }) => numberOf(cells[at] ?? ''));
  const wrong = byStage.findIndex((number) => !(number <= MOST_ANIMALS));
  if (wrong >= 0) {
    const { at, name } = columns.numbers[wrong]!;
    const mend = 'Write 0 or more as a number, without units; leave the line out where nobody counted.';
    return { message: `has no number under '${name}'`, mend, value: cells[at] ?? '' };
  }
  const above = (at: number | undefined): number | undefined =>
    at === undefined ? 1 : numberOf(cells[at] ?? '');
  const [effort = 1, error = 1] = [above(columns.effort), above(columns.error)];
  if (!(effort > 0))
    return {
      message: 'has no effort above 0',
      mend: 'Write minutes, traps or square metres searched.',
      value: cells[columns.effort!] ?? '',
    };
  if (!(error > 0))
    return {
      message: 'has no error above 0',
      mend: 'Write by how many animals the count may be off.',
      value: cells[columns.error!] ?? '',
    };
  const warmth = temperaturesOf(columns, cells);
  if (warmth && isFault(warmth)) return warmth;
  return {
    line,
    day,
    number: byStage.reduce((sum, number) => sum + number, 0) / effort,
    byStage: byStage.map((number) => number / effort),
    ...(columns.error === undefined ? {} : { error: error / effort }),
    ...(warmth ? { warmth } : {}),
  };
}

/** Rows with something in them; lines that begin with # are remarks. */
function rowsOf(text: string): Row[] {
  const lines = text.split(/\r\n|\n|\r/);
  const first = lines.find((line) => line.trim() !== '' && !line.startsWith('#')) ?? '';
  const separator = separatorOf(first.trim());
  return lines.flatMap((line, at) =>
    line.trim() === '' || line.startsWith('#') ? [] : [{ line: at + 1, cells: cellsOf(line, separator) }],
  );
}

/** Columns by a first row of names, or date and number where the first row is a count already. */
function columnsAndRows(rows: readonly Row[]): readonly [CountedColumns | Fault, readonly Row[]] {
  const [head, ...rest] = rows;
  if (!head)
    return [{ message: 'holds no counts', mend: 'Write one count a line, such as: 2026-03-01, 12' }, []];
  const [when = ''] = head.cells;
  if (/^\d/.test(when)) return [plainColumns(!when.includes('-')), rows];
  return [columnsOf(head.cells), rest];
}

/** What is wrong with counts that can be read one by one. */
function orderFaults(counts: readonly Counted[]): (Fault & { readonly line: number })[] {
  return counts.flatMap(({ day, line }, i) => {
    const before = counts[i - 1];
    if (!before || day > before.day) return [];
    return day === before.day
      ? [
          {
            line,
            message: `has the day of line ${before.line} again`,
            mend: 'Keep one count a day, or their mean.',
          },
        ]
      : [{ line, message: `goes back before line ${before.line}`, mend: 'Sort the lines by date.' }];
  });
}

/**
 * Reads a keeper's counts: CSV or typed lines with a date (or day) and a number, or a number for each stage, and where
 * named in a first row also error, effort, coldest and warmest. Days count from the first. Reports every problem with
 * its line; never throws.
 */
export function readCounts(text: string, fileName: string): CountsResult {
  const problems: Problem[] = [];
  const report = (line: number, fault: Fault): void => {
    if (problems.length < MOST_PROBLEMS)
      problems.push({
        file: fileName,
        column: 1,
        path: '',
        ...fault,
        line,
        ...(fault.value === undefined ? {} : { value: fault.value.slice(0, 40) }),
      });
  };
  if (text.length > LONGEST_TEXT) {
    report(1, { message: 'is longer than 200 kB', mend: `Keep ${MOST_ROWS} counts at most.` });
    return { problems };
  }
  const all = rowsOf(text);
  const [columns, rows] = columnsAndRows(all);
  if (isFault(columns)) report(all[0]?.line ?? 1, columns);
  else if (rows.length === 0)
    report(all[0]?.line ?? 1, {
      message: 'holds no counts',
      mend: 'Write one count a line below the names of the columns.',
    });
  else if (rows.length > MOST_ROWS)
    report(rows[MOST_ROWS]!.line, {
      message: `is more than ${MOST_ROWS} counts`,
      mend: 'Keep the last ones.',
    });
  if (problems.length > 0 || isFault(columns)) return { problems };
  const counts = rows.flatMap((row) => {
    const read = countOf(columns, row);
    if (!isFault(read)) return [read];
    report(row.line, read);
    return [];
  });
  for (const fault of orderFaults(counts)) report(fault.line, fault);
  return problems.length > 0 ? { problems } : writtenCounts(columns, counts);
}

function writtenCounts(columns: CountedColumns, counted: readonly Counted[]): WrittenCounts {
  const first = counted[0]!.day;
  const { inDays, numbers } = columns;
  const stages =
    numbers.length > 1
      ? {
          names: numbers.map(({ name }) => name),
          counts: numbers.map((_, stage) => counted.map(({ byStage }) => byStage[stage]!)),
        }
      : undefined;
  const warmth = counted.flatMap((each) => each.warmth ?? []);
  return {
    series: {
      counts: counted.map(({ day, number, error }) => ({
        day: day - first,
        number,
        ...(error === undefined ? {} : { error }),
      })),
      ...(stages ? { stages } : {}),
      ...(warmth.length > 0 ? { warmth } : {}),
      ...(columns.effort === undefined ? {} : { byEffort: true }),
    },
    ...(inDays
      ? { firstDay: first }
      : { startDate: new Date(first * 86_400_000).toISOString().slice(0, 10) }),
    lines: counted.map(({ line }) => line),
  };
}
