import colours from 'picocolors';
import { terminalWidth } from './width.ts';

/** Marks that colour text and take no room. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the escape sign is what begins them
const COLOUR = /\u001b\[\d+m/g;

/** Characters across that a text takes on a terminal. */
export const across = (text: string): number => [...text.replace(COLOUR, '')].length;

/** Text broken into lines of at most `width` characters, each after an indent; the first after `first`. */
export function wrapped(text: string, width: number, indent: string, first = indent): string {
  const lines: string[] = [];
  let line = '';
  // A share stays beside its sign.
  for (const word of text.split(/ (?!%)/)) {
    if (line && across(line) + 1 + across(word) > width - indent.length) {
      lines.push(line);
      line = word;
    } else line = line ? `${line} ${word}` : word;
  }
  return [...lines, line].map((part, at) => (at === 0 ? first : indent) + part).join('\n');
}

/** Lines broken where they are wider than the terminal, each after its own indent; left alone where nothing tells a width. */
export function fitted(text: string): string {
  const width = terminalWidth();
  if (width === undefined) return text;
  return text
    .split('\n')
    .map((line) => {
      const indent = /^ */.exec(line)?.[0] ?? '';
      return wrapped(line.slice(indent.length), width, `${indent}  `, indent);
    })
    .join('\n');
}

/** A heading, underlined line by line. */
export const underlined = (text: string, width: number): string =>
  wrapped(text, width, '').split('\n').map(colours.underline).join('\n');
