import { readFileSync } from 'node:fs';
import type { Kind } from './check.ts';

/** A file that cannot be checked at all; the message names it and what is wrong. */
export class UnreadableFile extends Error {}

export interface ReferenceFile {
  readonly path: string;
  readonly kind: Kind;
  readonly cases: readonly unknown[];
}

const MOST_BYTES = 200e6;

function parsed(path: string): unknown {
  let content: string;
  try {
    content = readFileSync(path, 'utf8');
  } catch (error) {
    throw new UnreadableFile(
      `${path}: cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})`,
    );
  }
  if (content.length > MOST_BYTES) throw new UnreadableFile(`${path}: is larger than ${MOST_BYTES / 1e6} MB`);
  try {
    return JSON.parse(content.replace(/^\uFEFF/, ''));
  } catch (error) {
    throw new UnreadableFile(`${path}: is not JSON (${(error as Error).message})`);
  }
}

/**
 * Reads a reference file and finds its form among the known ones.
 * @throws UnreadableFile naming the file and what is wrong.
 */
export function readDocument(path: string, kinds: readonly Kind[]): ReferenceFile {
  const document = parsed(path);
  for (const kind of kinds) {
    const cases = kind.cases(document);
    if (!cases) continue;
    if (cases.length === 0) throw new UnreadableFile(`${path}: holds no cases`);
    return { path, kind, cases };
  }
  const forms = kinds.map(({ name }) => name).join(', ');
  throw new UnreadableFile(`${path}: has none of the known forms of cases (${forms})`);
}
