import type { z } from 'zod';
import { type EnclosureContent, enclosureSchema } from '../schema/enclosure.ts';
import { oneOf, toldApart } from '../schema/say.ts';
import { type ParsedYaml, parseYaml } from './parse-yaml.ts';
import { keyPlaceOf, type Place, placeOf, valuePlaceOf } from './places.ts';
import { type KeyPath, type Problem, pathText, valueText } from './problem.ts';

/** A file that says what an enclosure file must say. Whether its names exist and fit is a matter of checking. */
export interface EnclosureDocument {
  /** File name without folders and ending, as a plain name. */
  readonly id: string;
  readonly fileName: string;
  readonly content: EnclosureContent;
  /** Where a key path stands in the text. */
  readonly placeOf: (path: KeyPath) => Place;
}

export type ReadResult =
  | { readonly document: EnclosureDocument; readonly problems?: undefined }
  | { readonly problems: readonly Problem[]; readonly document?: undefined };

const MOST_PROBLEMS = 50;

/** 'My Bank.yaml' and 'C:\\files\\my-bank.yml' are both my-bank. */
export function idOf(fileName: string): string {
  const last = fileName.split(/[\\/]/).pop() ?? fileName;
  const plain = last
    .replace(/\.ya?ml$/i, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 64);
  return plain === '' ? 'enclosure' : plain;
}

function valueAt(value: unknown, path: KeyPath): unknown {
  return path.reduce<unknown>(
    (part, key) =>
      part !== null && typeof part === 'object' && Object.hasOwn(part, key)
        ? (part as Record<string | number, unknown>)[key]
        : undefined,
    value,
  );
}

/** The issues of the branch of a union that fits the written value best, or the issue itself. */
function unfolded(issue: z.core.$ZodIssue, value: unknown): z.core.$ZodIssue[] {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return [issue];
  const written = valueAt(value, issue.path as KeyPath);
  const branch = issue.errors.find(([first]) => first?.code !== 'invalid_type' || first.path.length > 0);
  if (written === undefined || branch === undefined) return [issue];
  return branch.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }));
}

/** The schema's sentence and its mend; a choice that has no words of its own names what it may be. */
function saidOf(issue: z.core.$ZodIssue, isWritten: boolean): { message: string; mend: string } {
  const told = toldApart(issue.message);
  if (issue.code !== 'invalid_value' || told.mend !== '') return told;
  return {
    message: isWritten ? 'is not one of the words allowed here' : 'is missing',
    mend: `Write ${oneOf(issue.values.map(String))}.`,
  };
}

function problemOf(issue: z.core.$ZodIssue, { document, lines, value }: ParsedYaml, file: string): Problem {
  const path = issue.path as KeyPath;
  const written = valueAt(value, path);
  const { message, mend } = saidOf(issue, written !== undefined);
  const shown = valueText(written);
  if (issue.code === 'unrecognized_keys') {
    const [key = ''] = issue.keys;
    return { file, ...keyPlaceOf(document, lines, path, key), path: pathText([...path, key]), message, mend };
  }
  const place = written === undefined ? placeOf(document, lines, path) : valuePlaceOf(document, lines, path);
  return {
    file,
    ...place,
    path: pathText(path),
    ...(shown === undefined ? {} : { value: shown }),
    message,
    mend,
  };
}

/** What a schema found wrong with a text, each with its place, from top to bottom. */
export function problemsOf(error: z.ZodError, parsed: ParsedYaml, fileName: string): Problem[] {
  return error.issues
    .flatMap((issue) => unfolded(issue, parsed.value))
    .map((issue) => problemOf(issue, parsed, fileName))
    .sort((a, b) => a.line - b.line || a.column - b.column)
    .slice(0, MOST_PROBLEMS);
}

/**
 * Reads an enclosure file. Either the document, or every problem found with file, line, column, key path, value and
 * mend. Never throws, whatever the text holds.
 */
export function readEnclosure(text: string, fileName: string): ReadResult {
  const parsed = parseYaml(text, fileName);
  if ('problems' in parsed) return { problems: parsed.problems };
  const result = enclosureSchema.safeParse(parsed.value);
  if (!result.success) return { problems: problemsOf(result.error, parsed, fileName) };
  return {
    document: {
      id: idOf(fileName),
      fileName,
      content: result.data,
      placeOf: (path) => placeOf(parsed.document, parsed.lines, path),
    },
  };
}
