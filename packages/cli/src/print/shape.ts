import colours from 'picocolors';
import type { SheetPart } from './shape-lines.ts';
import { table } from './table.ts';
import { wrapped } from './wrapped.ts';

const INDENT = '  ';

/** The sheet for people, as text for a terminal `width` characters wide. */
export function shapeText(name: string, parts: readonly SheetPart[], width: number): string {
  const lines = parts.flatMap(({ heading, rows, hasHead = false, sentences }) => [
    `\n${colours.underline(heading)}`,
    ...(rows.length > 0 ? [table(rows, { hasHead })] : []),
    ...sentences.map((sentence) => wrapped(sentence, width, INDENT + INDENT, INDENT)),
  ]);
  return [`\n${colours.bold(name)}`, ...lines].join('\n');
}
