import {
  type Document,
  isCollection,
  isMap,
  isPair,
  isScalar,
  type LineCounter,
  type Node,
  type Pair,
} from 'yaml';
import type { KeyPath } from './problem.ts';

export interface Place {
  readonly line: number;
  readonly column: number;
}

function startOf(node: unknown): number | undefined {
  const range = (node as Node | null | undefined)?.range;
  return range?.[0];
}

function pairAt(node: unknown, key: string | number): Pair | undefined {
  if (!isMap(node)) return undefined;
  return node.items.find((pair) => isScalar(pair.key) && String(pair.key.value) === String(key));
}

/** Where a key path starts in the text: its value, or the nearest enclosing part that is there. */
export function placeOf(document: Document, lines: LineCounter, path: KeyPath): Place {
  let node: unknown = document.contents;
  let offset = startOf(node) ?? 0;
  for (const key of path) {
    const pair = pairAt(node, key);
    const next = pair ? pair.value : isCollection(node) ? node.get(key, true) : undefined;
    if (next === undefined || next === null) {
      offset = startOf(pair?.key) ?? offset;
      break;
    }
    node = isPair(next) ? next.value : next;
    offset = startOf(pair?.key) ?? startOf(node) ?? offset;
  }
  return positionOf(lines, offset);
}

export function positionOf(lines: LineCounter, offset: number): Place {
  const { line, col } = lines.linePos(offset);
  return { line: Math.max(1, line), column: Math.max(1, col) };
}

/** Where the value of a path starts, rather than its key; for problems with the value itself. */
export function valuePlaceOf(document: Document, lines: LineCounter, path: KeyPath): Place {
  const node = document.getIn(path as unknown[], true);
  const offset = startOf(node);
  return offset === undefined ? placeOf(document, lines, path) : positionOf(lines, offset);
}

/** Where a key itself stands in the map at a path. */
export function keyPlaceOf(document: Document, lines: LineCounter, path: KeyPath, key: string): Place {
  const map = path.length === 0 ? document.contents : document.getIn(path as unknown[], true);
  const offset = startOf(pairAt(map, key)?.key);
  return offset === undefined ? placeOf(document, lines, path) : positionOf(lines, offset);
}
