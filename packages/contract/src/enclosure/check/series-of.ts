import { dayOfYear } from '@shoreglass/engine';
import { type Library, nearest } from '@shoreglass/library';
import { readSeries } from '../../series/read-series.ts';
import type { DatedSeries } from '../plan/room-of.ts';
import type { EnclosureDocument } from '../read/read-enclosure.ts';
import { type Finding, located, type Remark } from './finding.ts';

/** Text of a file beside the enclosure file, or undefined when there is none. */
export type ReadBeside = (path: string) => string | undefined;

export interface FoundSeries {
  readonly series?: DatedSeries;
  readonly findings: readonly Finding[];
}

/** A record of less than a year repeats, and starts with the run whatever its own season was. */
function coverageRemarks(series: DatedSeries, { content }: EnclosureDocument): Remark[] {
  const days = Math.floor(series.temperature.length / 24);
  if (days >= 365) return [];
  const path = ['room', 'series'];
  const apart = Math.abs(dayOfYear(content.start) - dayOfYear(series.firstDay));
  const covers: Remark = {
    severity: 'note',
    path,
    message: `the record of the room covers ${days} days from ${series.firstDay}; a longer run repeats it`,
    mend: 'A record of a whole year also shows the seasons.',
  };
  if (Math.min(apart, 365 - apart) <= 10) return [covers];
  return [
    covers,
    {
      severity: 'warning',
      path,
      message: `the plan starts on ${content.start}, the record of the room on ${series.firstDay}: it is used out of its season`,
      mend: `Start the plan near ${series.firstDay.slice(5)}, or use a record of a whole year.`,
    },
  ];
}

/** A path names a CSV file; anything else is a name of the library. */
const isPath = (reference: string): boolean => /\.csv$/i.test(reference);

/** The measured room a file refers to, or why there is none. */
export function seriesOf(document: EnclosureDocument, library: Library, readBeside: ReadBeside): FoundSeries {
  const { room } = document.content;
  const refuse = (path: readonly string[], message: string, mend: string): FoundSeries => ({
    findings: [located({ severity: 'blocking', path, message, mend }, document)],
  });
  if (room.series === undefined) {
    if (room.temperature && room.humidity) return { findings: [] };
    const missing = room.temperature ? 'humidity' : 'temperature';
    return refuse(
      ['room'],
      `the room has no ${missing}`,
      `Give temperature and humidity, each with its mean, or a series.`,
    );
  }
  const known = Object.keys(library.data.series);
  const path = ['room', 'series'];
  if (!isPath(room.series) && !known.includes(room.series)) {
    const near = nearest(room.series, known);
    return refuse(
      path,
      `the library holds no room series '${room.series}'`,
      near.length > 0
        ? `Did you mean ${near.join(' or ')}?`
        : `Name one of the library (${known.join(', ')}), or the path of a file that ends in .csv.`,
    );
  }
  const text = isPath(room.series) ? readBeside(room.series) : library.series(room.series);
  if (text === undefined)
    return refuse(
      path,
      `there is no file '${room.series}' to read`,
      'Put it beside this file; the path starts from its folder.',
    );
  const { series, problems } = readSeries(text, isPath(room.series) ? room.series : `${room.series}.csv`);
  if (series)
    return { series, findings: coverageRemarks(series, document).map((remark) => located(remark, document)) };
  return { findings: problems.map((problem) => ({ ...problem, severity: 'blocking' })) };
}
