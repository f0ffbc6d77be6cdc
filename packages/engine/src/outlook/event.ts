import type { SeriesId } from '../run/series.ts';
import type { TurningPointKind } from './document.ts';
import type { Ensemble } from './ensemble.ts';

/** An event that may happen once in a member: its day there, or -1. */
export interface Event {
  readonly id: string;
  readonly subject: SeriesId;
  readonly kind: TurningPointKind;
  readonly owner: string;
  readonly source: string;
  readonly band: { readonly low?: number; readonly high?: number };
  readonly limit?: number;
  /** Position of the population it is about, where it is about one. */
  readonly population?: number;
  /** Position of the planting on land it is about, where it is about one. */
  readonly planting?: number;
  /** Whether it ends the time the enclosure can be left to itself. */
  readonly ends: boolean;
  readonly days: Int32Array;
}

/** An event with its day in every member. `derived`. */
export function eventOf(
  ensemble: Ensemble,
  base: Omit<Event, 'days'>,
  dayIn: (member: number) => number,
): Event {
  return { ...base, days: Int32Array.from({ length: ensemble.count }, (_, member) => dayIn(member)) };
}
