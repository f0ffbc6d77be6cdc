import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { create } from 'zustand';
import { recall, remember } from '../../../app/kept.ts';
import { dayOfRun } from '../../../outlook/today.ts';

/** What was measured on one day, in the units of the series. */
export interface ReadingEntry {
  /** ISO date. */
  readonly on: string;
  readonly values: Readonly<Partial<Record<SeriesId, number>>>;
}

export interface ReadingPoint {
  readonly day: number;
  readonly value: number;
}

interface Readings {
  readonly byEnclosure: Readonly<Record<string, readonly ReadingEntry[]>>;
  keep(id: string, entry: ReadingEntry): void;
  remove(id: string, on: string): void;
}

const keyOf = (id: string) => `readings.${id}`;
const NONE: readonly ReadingEntry[] = [];

/** Readings kept in this browser, by enclosure; one entry a day, later values of a day replace earlier ones. */
const useStore = create<Readings>((set, get) => {
  const write = (id: string, entries: readonly ReadingEntry[]) => {
    remember(keyOf(id), JSON.stringify(entries));
    set({ byEnclosure: { ...get().byEnclosure, [id]: entries } });
  };
  const entriesOf = (id: string) => get().byEnclosure[id] ?? recalled(id);
  return {
    byEnclosure: {},
    keep(id, entry) {
      const before = entriesOf(id).find(({ on }) => on === entry.on);
      const merged = { on: entry.on, values: { ...before?.values, ...entry.values } };
      const others = entriesOf(id).filter(({ on }) => on !== entry.on);
      write(
        id,
        [...others, merged].sort((a, b) => (a.on < b.on ? 1 : -1)),
      );
    },
    remove: (id, on) =>
      write(
        id,
        entriesOf(id).filter((entry) => entry.on !== on),
      ),
  };
});

/** Entries of an enclosure, the latest first. */
export function useReadings(id: string): readonly ReadingEntry[] {
  const kept = useStore((state) => state.byEnclosure[id]);
  return kept ?? cachedRecall(id);
}

export function useReadingsDesk(): Pick<Readings, 'keep' | 'remove'> {
  return { keep: useStore((state) => state.keep), remove: useStore((state) => state.remove) };
}

/** Points of each series on the days of the run; dates outside the run are left out. */
export function readingsBySeries(
  entries: readonly ReadingEntry[],
  { enclosure, run }: Pick<AheadDocument, 'enclosure' | 'run'>,
): ReadonlyMap<string, readonly ReadingPoint[]> {
  const points = new Map<string, ReadingPoint[]>();
  for (const { on, values } of entries) {
    const day = dayOfRun(enclosure.startDate, run.days, localDate(on));
    if (day === undefined) continue;
    for (const [id, value] of Object.entries(values)) {
      if (value === undefined) continue;
      const found = points.get(id) ?? [];
      found.push({ day, value });
      points.set(id, found);
    }
  }
  return points;
}

/** Midday of an ISO date on this device's calendar. */
export function localDate(on: string): Date {
  const [year = 1970, month = 1, day = 1] = on.split('-').map(Number);
  return new Date(year, month - 1, day, 12);
}

/** ISO date of a moment on this device's calendar. */
export function isoDate(moment: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}

const cache = new Map<string, readonly ReadingEntry[]>();

function cachedRecall(id: string): readonly ReadingEntry[] {
  const found = cache.get(id) ?? recalled(id);
  cache.set(id, found);
  return found;
}

/** What this browser kept; anything that is not an entry is left out. */
function recalled(id: string): readonly ReadingEntry[] {
  try {
    const kept: unknown = JSON.parse(recall(keyOf(id)) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isEntry) : NONE;
  } catch {
    return NONE;
  }
}

function isEntry(entry: unknown): entry is ReadingEntry {
  if (typeof entry !== 'object' || entry === null) return false;
  const { on, values } = entry as Partial<ReadingEntry>;
  return (
    typeof on === 'string' &&
    /^\d{4}-\d{2}-\d{2}$/.test(on) &&
    typeof values === 'object' &&
    values !== null &&
    Object.values(values).every((value) => typeof value === 'number' && Number.isFinite(value))
  );
}
