import { recall, remember } from '../../../app/kept.ts';

/** Counts of one species as they were last asked about. */
export interface KeptCounts {
  readonly text: string;
  readonly below: string;
  /** Empty for as many days as were counted. */
  readonly within: string;
}

export const NO_COUNTS: KeptCounts = { text: '', below: '2', within: '' };

const keyOf = (enclosure: string, species: string) => `counts.${enclosure}.${species}`;
const FIELDS = ['text', 'below', 'within'] as const;

/** What this browser kept of a species in an enclosure; nothing where something else lies there. */
export function recallCounts(enclosure: string, species: string): KeptCounts {
  try {
    const kept: unknown = JSON.parse(recall(keyOf(enclosure, species)) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return NO_COUNTS;
    const fields = kept as Partial<Record<(typeof FIELDS)[number], unknown>>;
    return FIELDS.every((field) => typeof fields[field] === 'string') ? (kept as KeptCounts) : NO_COUNTS;
  } catch {
    return NO_COUNTS;
  }
}

export function rememberCounts(enclosure: string, species: string, counts: KeptCounts): void {
  remember(keyOf(enclosure, species), JSON.stringify(counts));
}
