import type { AheadDocument, Plan, SeriesId } from '@shoreglass/engine';
import { create } from 'zustand';
import { lookAhead, startFrom } from '../../../engine-client.ts';
import type { ReadingEntry } from './readings-store.ts';

/** The year once more, started with the water as it was read on a day. */
export interface MeasuredYear {
  /** Enclosure and date it belongs to. */
  readonly of: string;
  readonly done: number;
  readonly inferred: readonly string[];
  readonly document?: AheadDocument;
  readonly complete: boolean;
  readonly failure?: string;
}

/** Fewer runs than the outlook: enough for a band of nine in ten. */
export const MEASURED_RUNS = 60;

/** What the engine's reader calls each series, and the unit it is kept in. */
const NAMES: readonly (readonly [series: SeriesId, name: string, unit: string])[] = [
  ['pH', 'pH', ''],
  ['KH', 'KH', '°dKH'],
  ['GH', 'GH', '°dGH'],
  ['conductivity', 'EC', 'µS/cm'],
  ['totalAmmonia', 'NH4', 'mg N/L'],
  ['nitrite', 'NO2', 'mg N/L'],
  ['nitrate', 'NO3', 'mg N/L'],
  ['phosphate', 'PO4', 'mg P/L'],
];

/** A day's readings in one line, as the engine reads them; what is no part of the water is left out. */
export function readingsLine({ values }: ReadingEntry): string {
  const parts = NAMES.flatMap(([series, name, unit]) => {
    const value = values[series];
    return value === undefined ? [] : [`${name} ${Number(value.toPrecision(6))} ${unit}`.trim()];
  });
  return parts.join(', ');
}

export const useMeasuredYear = create<{ readonly year: MeasuredYear | undefined }>(() => ({
  year: undefined,
}));

let stop: () => void = () => undefined;

/** Starts the year on the day of the readings with the water as read; an earlier start is dropped. */
export async function startMeasuredYear(id: string, plan: Plan, entry: ReadingEntry, days: number) {
  stop();
  const of = measuredKey(id, entry);
  const put = (part: Partial<MeasuredYear>) =>
    useMeasuredYear.setState(({ year }) => (year?.of === of ? { year: { ...year, ...part } } : { year }));
  useMeasuredYear.setState({ year: { of, done: 0, inferred: [], complete: false } });
  try {
    const started = await startFrom(plan, readingsLine(entry));
    if ('wrong' in started) return put({ failure: `${started.wrong}. ${started.mend}` });
    put({ inferred: started.inferred });
    const measured = { ...started.plan, startDate: entry.on };
    stop = lookAhead({ plan: measured, days, members: MEASURED_RUNS, seed: 1 }, (event) => {
      if (event.kind === 'expected') put({ document: event.document });
      else if (event.kind === 'progress') put({ done: event.done });
      else if (event.kind === 'complete') put({ document: event.document, complete: true });
      else if (event.kind === 'failed') put({ failure: event.message });
    });
  } catch (error) {
    put({ failure: error instanceof Error ? error.message : String(error) });
  }
}

export function measuredKey(id: string, { on, values }: ReadingEntry): string {
  return `${id} ${on} ${JSON.stringify(values)}`;
}
