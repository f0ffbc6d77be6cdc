import { type Document, isCollection, isMap, isScalar, isSeq, type Node, type Pair } from 'yaml';
import type { KeyPath } from './read/problem.ts';

/** What may be written into a file: a scalar, or lists and maps of them. */
export type EditValue = string | number | boolean | readonly unknown[] | Readonly<Record<string, unknown>>;

/** A stretch of a text and what takes its place. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Signs a plain scalar may hold without quotes, in any place of the file. */
const PLAIN = /^[A-Za-z0-9][A-Za-z0-9 .%°µ²³/+-]*$/;

/** A value as it is written on one line. */
export function written(value: unknown): string {
  if (Array.isArray(value)) return value.length === 0 ? '[]' : `[ ${value.map(written).join(', ')} ]`;
  if (typeof value === 'object' && value !== null) {
    const pairs = Object.entries(value).map(([key, each]) => `${written(key)}: ${written(each)}`);
    return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
  }
  if (typeof value !== 'string') return String(value);
  return PLAIN.test(value) && value.trim() === value ? value : JSON.stringify(value);
}

/** The texts with the splices in place, or undefined where two of them overlap. */
export function spliced(text: string, splices: readonly Splice[]): string | undefined {
  let edited = text;
  let before = text.length + 1;
  for (const { from, to, text: put } of [...splices].sort((a, b) => b.from - a.from)) {
    if (to > before) return undefined;
    edited = edited.slice(0, from) + put + edited.slice(to);
    before = from;
  }
  return edited;
}

/**
 * The smallest change of a text that gives a path a value, or takes it away: a scalar is replaced where it stands, a
 * key or list item is added after the last one or cut out with its lines. Undefined where that cannot be done so.
 */
export function spliceFor(
  text: string,
  document: Document,
  path: KeyPath,
  value: EditValue | undefined,
): Splice | undefined {
  const old = document.getIn(path as unknown[], true);
  if (value === undefined) return old === undefined ? undefined : cut(text, document, path);
  if (isScalar(old) && old.range && !old.type?.startsWith('BLOCK'))
    return { from: old.range[0], to: old.range[1], text: written(value) };
  if (isCollection(old) && old.flow && old.range)
    return { from: old.range[0], to: old.range[1], text: written(value) };
  if (isSeq(old) && Array.isArray(value) && value.length > 0) return listRewritten(text, old, value);
  return old === undefined ? added(text, document, path, value) : undefined;
}

/** A list whose items stand on lines of their own, written anew in the same place. */
function listRewritten(
  text: string,
  old: { readonly items: readonly unknown[]; readonly range?: readonly number[] | null | undefined },
  value: readonly unknown[],
): Splice | undefined {
  const end = endOf(old);
  const start = old.range?.[0];
  if (start === undefined || end === undefined || text[start] !== '-') return undefined;
  const indent = indentOf(text, old);
  return { from: start, to: end, text: value.map((item) => `- ${written(item)}`).join(`\n${indent}`) };
}

function added(text: string, document: Document, path: KeyPath, value: EditValue): Splice | undefined {
  const key = path.at(-1) as string | number;
  const parent = parentOf(document, path);
  const item = isMap(parent) ? `${written(String(key))}: ${written(value)}` : written(value);
  if (isSeq(parent) && key !== parent.items.length) return undefined;
  if (!isCollection(parent) || !parent.range || parent.items.length === 0) return undefined;
  const end = endOf(parent);
  if (end === undefined) return undefined;
  if (parent.flow) {
    const last = endOf(lastValue(parent));
    return last === undefined ? undefined : { from: last, to: last, text: `, ${item}` };
  }
  const at = lineEnd(text, end - 1);
  const indent = indentOf(text, parent);
  return { from: at, to: at, text: `\n${indent}${isSeq(parent) ? '- ' : ''}${item}` };
}

function cut(text: string, document: Document, path: KeyPath): Splice | undefined {
  const parent = parentOf(document, path);
  if (!isCollection(parent) || parent.flow || parent.items.length < 2) return undefined;
  const key = path.at(-1);
  const start = isMap(parent)
    ? startOf(parent.items.find((pair) => isScalar(pair.key) && pair.key.value === key)?.key)
    : startOf(parent.items[key as number]);
  const end = endOf(document.getIn(path as unknown[], true));
  if (start === undefined || end === undefined) return undefined;
  const from = text.lastIndexOf('\n', start - 1) + 1;
  const lead = text.slice(from, start);
  if (!(isSeq(parent) ? /^ *- +$/ : /^ *$/).test(lead)) return undefined;
  return { from, to: Math.min(text.length, lineEnd(text, end - 1) + 1), text: '' };
}

function parentOf(document: Document, path: KeyPath): unknown {
  return path.length === 1 ? document.contents : document.getIn(path.slice(0, -1) as unknown[], true);
}

function startOf(node: unknown): number | undefined {
  return (node as Node | null | undefined)?.range?.[0];
}

/** Where the last sign of a node stands; comments after it are not part of it. */
function endOf(node: unknown): number | undefined {
  if (isCollection(node) && !node.flow && node.items.length > 0) return endOf(lastValue(node));
  return (node as Node | null | undefined)?.range?.[1];
}

function lastValue(node: { readonly items: readonly unknown[] }): unknown {
  const last = node.items.at(-1);
  if (!isMap(node)) return last;
  const { key, value } = last as Pair;
  return value ?? key;
}

function lineEnd(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  return end < 0 ? text.length : end;
}

/** Blanks before the first key, or before the first hyphen, of a block. */
function indentOf(text: string, parent: { readonly items: readonly unknown[] }): string {
  const first = isMap(parent) ? startOf(parent.items[0]?.key) : startOf(parent.items[0]);
  const line = text.lastIndexOf('\n', (first ?? 0) - 1) + 1;
  const lead = text.slice(line, first ?? 0);
  return isSeq(parent) ? lead.slice(0, lead.indexOf('-')) : ' '.repeat(lead.length);
}
