/** One thing wrong with a file, with its place in it. Lines and columns count from 1. */
export interface Problem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** Keys from the top, such as `zones[1].layers[0].thickness`; empty for the file as a whole. */
  readonly path: string;
  /** What stands there, shortened. */
  readonly value?: string;
  readonly message: string;
  readonly mend: string;
}

export type KeyPath = readonly (string | number)[];

/** `zones[1].from` */
export function pathText(path: KeyPath): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`;
    return text === '' ? part : `${text}.${part}`;
  }, '');
}

/** What a value looks like, on one line and short. */
export function valueText(value: unknown): string | undefined {
  if (value === undefined) return undefined;
  let text: string | undefined;
  try {
    // JSON knows neither infinity nor what is no number.
    text = typeof value === 'string' || typeof value === 'number' ? String(value) : JSON.stringify(value);
  } catch {
    return undefined;
  }
  if (text === undefined) return undefined;
  const line = text.replaceAll(/\s+/g, ' ').trim();
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}

/** One line for people: file:line:column key: what is wrong (value). What to do. */
export function problemLine({ file, line, column, path, value, message, mend }: Problem): string {
  const shown = value === undefined || value === '' ? '' : ` (it says: ${value})`;
  return `${file}:${line}:${column} ${path === '' ? '' : `${path} `}${message}${shown}. ${mend}`.trimEnd();
}
