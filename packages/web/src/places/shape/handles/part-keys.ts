import type { KeyPath } from '@shoreglass/contract';
import type { Dimension } from '../desk/lengths.ts';
import type { Choice, Handle, Measure, Option, Saying } from './handle.ts';

export type Fresh = string | number | readonly string[] | Readonly<Record<string, string | number>>;

interface Key {
  /** Below the part, such as `hose.length`. */
  readonly at: string;
  readonly name: string;
  /** What the file gets when the key is added; a key without it is always there. */
  readonly fresh?: Fresh;
}

/** A number, in the plan's unit between these limits. */
export interface NumberKey extends Key {
  readonly dimension: Dimension;
  readonly limits: readonly [low: number, high: number];
}

/** One of a few words, each with what it means. */
export interface WordKey extends Key {
  readonly words: Readonly<Record<string, string>>;
}

export interface SayingKey extends Key {
  readonly said: 'text' | 'time' | 'times';
}

/** Keys that come and go together, such as those of a hose. */
export interface GroupKey extends Key {
  readonly group: true;
}

export type PartKey = NumberKey | WordKey | SayingKey | GroupKey;

type Part = Readonly<Record<string, unknown>>;

function valueAt(part: unknown, at: string): unknown {
  return at.split('.').reduce<unknown>((inner, key) => (inner as Part | undefined)?.[key], part);
}

/** What the file says of one part, as a handle holds it: numbers, words and sayings, and what more it could say. */
export function keysOfPart(
  root: KeyPath,
  part: unknown,
  keys: readonly PartKey[],
): Required<Pick<Handle, 'measures' | 'choices' | 'sayings' | 'more' | 'less'>> {
  const measures: Measure[] = [];
  const choices: Choice[] = [];
  const sayings: Saying[] = [];
  const more: Option[] = [];
  const less: Option[] = [];
  for (const key of keys) {
    const path = [...root, ...key.at.split('.')];
    const parent = key.at.includes('.') ? valueAt(part, key.at.slice(0, key.at.lastIndexOf('.'))) : part;
    if (parent === undefined) continue;
    const value = valueAt(part, key.at);
    if (value === undefined) {
      if (key.fresh !== undefined) more.push({ name: key.name, edit: { path, value: key.fresh } });
      continue;
    }
    if (key.fresh !== undefined) less.push({ name: key.name, edit: { path, value: undefined } });
    if ('dimension' in key) measures.push(measureOf(key, path, value as number));
    else if ('words' in key) choices.push(choiceOf(key, path, value as string));
    else if ('said' in key) sayings.push(sayingOf(key, path, value));
  }
  return { measures, choices, sayings, more, less };
}

function measureOf(
  { at, name, dimension, limits: [low, high] }: NumberKey,
  path: KeyPath,
  value: number,
): Measure {
  return {
    id: at.replace('.', '-'),
    name,
    dimension,
    value,
    low,
    high,
    path,
    edits: (wanted, write) => [
      { path, value: dimension === 'count' ? Math.round(wanted) : write(wanted, dimension) },
    ],
  };
}

function choiceOf({ at, name, words }: WordKey, path: KeyPath, value: string): Choice {
  return {
    id: at.replace('.', '-'),
    name,
    value,
    options: Object.entries(words).map(([word, meaning]) => ({ value: word, name: meaning })),
    path,
  };
}

const HINTS: Readonly<Record<SayingKey['said'], string>> = {
  text: '',
  time: 'such as 09:30',
  times: 'such as 08:30, 20:30',
};

function sayingOf({ at, name, said }: SayingKey, path: KeyPath, value: unknown): Saying {
  return {
    id: at.replace('.', '-'),
    name,
    value:
      said === 'text'
        ? String(value)
        : [value]
            .flat()
            .map((hours) => clock(Number(hours)))
            .join(', '),
    hint: HINTS[said],
    path,
    written: (typed) =>
      said === 'times' ? typed.split(/[,;\s]+/).filter((each) => each !== '') : typed.trim(),
  };
}

/** Hours after midnight as a time of day: "09:30". */
function clock(hours: number): string {
  const minutes = Math.round(hours * 60);
  const two = (number: number) => String(number).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** A length that is typed [m]. */
export const lengthKey = (at: string, name: string, limits: readonly [number, number]) =>
  ({ at, name, dimension: 'length', limits }) as const satisfies NumberKey;

/** What people call it. */
export const label = {
  at: 'name',
  name: 'Name',
  said: 'text',
  fresh: 'Its name',
} as const satisfies SayingKey;
