import { EXTRA_CHARACTERS, type Face, WIDTHS } from './metrics.ts';

const ELLIPSIS = '…';
/** Width taken for characters the table does not hold [1/1000 em]: a wide letter, so that labels err on the roomy side. */
const UNKNOWN_WIDTH = 750;

const EXTRA_INDEX = new Map(Array.from(EXTRA_CHARACTERS, (character, index) => [character, index + 95]));

/** Estimated width of one line of text [px]. */
export function textWidth(text: string, size: number, face: Face = 'text'): number {
  const widths: readonly number[] = WIDTHS[face];
  let sum = 0;
  for (const character of text) sum += widths[characterIndex(character)] ?? UNKNOWN_WIDTH;
  return (sum * size) / 1000;
}

/** The text, shortened with an ellipsis where it would be wider than `width` [px]. */
export function fitText(text: string, width: number, size: number, face: Face = 'text'): string {
  if (textWidth(text, size, face) <= width) return text;
  const characters = Array.from(text);
  while (characters.length > 0) {
    characters.pop();
    const candidate = `${characters.join('').trimEnd()}${ELLIPSIS}`;
    if (textWidth(candidate, size, face) <= width) return candidate;
  }
  return ELLIPSIS;
}

export interface Wrapping {
  readonly width: number;
  /** Width already taken on the first line [px]. */
  readonly firstIndent?: number;
  readonly size: number;
  readonly face?: Face;
  readonly lines: number;
}

/** The text broken at spaces into at most `lines` lines; what does not fit ends in an ellipsis. */
export function wrapText(text: string, wrapping: Wrapping): string[] {
  const { size, face = 'text' } = wrapping;
  const words = text.split(/ +/).filter((word) => word.length > 0);
  const lines: string[] = [];
  for (let index = 0; index < words.length; ) {
    const room = wrapping.width - (lines.length === 0 ? (wrapping.firstIndent ?? 0) : 0);
    if (lines.length === wrapping.lines - 1)
      return [...lines, fitText(words.slice(index).join(' '), room, size, face)];
    const taken = wordsThatFit(words.slice(index), room, { size, face });
    if (taken === 0 && lines.length === 0 && wrapping.firstIndent) {
      lines.push('');
      continue;
    }
    const line = words.slice(index, index + Math.max(1, taken)).join(' ');
    lines.push(fitText(line, room, size, face));
    index += Math.max(1, taken);
  }
  return lines;
}

function wordsThatFit(words: readonly string[], room: number, type: { size: number; face: Face }): number {
  let count = 0;
  while (count < words.length && textWidth(words.slice(0, count + 1).join(' '), type.size, type.face) <= room)
    count++;
  return count;
}

function characterIndex(character: string): number {
  if (character === '\u00a0') return 0;
  const code = character.codePointAt(0) ?? 0;
  if (code >= 32 && code < 127) return code - 32;
  return EXTRA_INDEX.get(character) ?? -1;
}
