import { type SeriesId, seriesSpec } from '../run/series.ts';
import { capital } from './capital.ts';
import type { TurningPointKind } from './document.ts';

/** A number as a keeper reads it: the series' digits, no trailing noise, and its unit. `derived`. */
export function shown(id: SeriesId, value: number): string {
  const { unit, digits } = seriesSpec(id);
  const text = value.toFixed(digits);
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return unit && unit !== 'animals' ? `${trimmed} ${unit}` : trimmed;
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;

function reasons(because: readonly { readonly term: string; readonly share: number }[]): string {
  const named = because.slice(0, 3).map(({ term, share }) => `${term} ${percent(share)}`);
  return named.length > 0 ? ` Pushed by ${named.join(', ')}.` : '';
}

/** One sentence or two for people: what happens, how likely, and why. `derived`. */
export function turningSentence(point: {
  readonly subject: SeriesId;
  readonly subjectName: string;
  readonly kind: TurningPointKind;
  readonly limit?: number;
  readonly probability: number;
  readonly because: readonly { readonly term: string; readonly share: number }[];
  /** What slowed the animals it is about. */
  readonly slowed?: string;
  /** It is so on the first day, before anything has happened. */
  readonly fromStart?: boolean;
}): string {
  const { subject, subjectName, kind, limit, probability, because, slowed, fromStart } = point;
  const slow = slowed === undefined ? '' : ` ${slowed}`;
  const likely = `likely in ${percent(probability)} of runs.`;
  const name = capital(subjectName);
  switch (kind) {
    case 'first young':
      return `${name} have their first young, ${likely}${slow}`;
    case 'dies out':
      return `${name} die out, ${likely}${reasons(because)}${slow}`;
    default: {
      const edge = limit === undefined ? 'its band' : shown(subject, limit);
      if (fromStart && kind !== 'returns')
        return `${name} is ${kind === 'falls below' ? 'below' : 'above'} ${edge} from the first day, ${likely}`;
      return `${name} ${kind} ${edge}, ${likely}${reasons(because)}${slow}`;
    }
  }
}
