import { createHash } from 'node:crypto';
import { lstat, mkdir, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type EnclosureOrigin, isEnclosureId, MAX_ENCLOSURE_BYTES } from '@shoreglass/contract';
import { writeAtomically } from './atomic-write.ts';

export interface StoredEnclosure {
  readonly id: string;
  readonly fileName: string;
  readonly origin: EnclosureOrigin;
  readonly text: string;
  readonly version: string;
}

export interface LeftOut {
  readonly fileName: string;
  readonly reason: string;
}

export type WriteResult =
  | { readonly kind: 'written'; readonly enclosure: StoredEnclosure }
  | { readonly kind: 'is an example' }
  | { readonly kind: 'exists already' }
  | { readonly kind: 'changed meanwhile' };

/** Enclosure texts: examples that ship with the program and are only read, and the keeper's own files. */
export interface EnclosureStore {
  list(): Promise<{ readonly enclosures: readonly StoredEnclosure[]; readonly leftOut: readonly LeftOut[] }>;
  get(id: string): Promise<StoredEnclosure | undefined>;
  /** Keeps a text under an id, when the file is still what the text was written from (null: not there yet). */
  write(id: string, text: string, basedOn: string | null): Promise<WriteResult>;
}

const ENDING = '.yaml';

export interface StoreOptions {
  /** Made at the first write. A file here comes before an example of the same id. */
  readonly folder: string;
  /** Texts by id. */
  readonly examples: Readonly<Record<string, string>>;
}

export function enclosureStore({ folder, examples }: StoreOptions): EnclosureStore {
  let queue: Promise<unknown> = Promise.resolve();

  const example = (id: string): StoredEnclosure | undefined =>
    Object.hasOwn(examples, id) ? stored(id, 'example', examples[id] ?? '') : undefined;
  const get = async (id: string): Promise<StoredEnclosure | undefined> =>
    (await readOwn(folder, id)) ?? example(id);

  const writeNow = async (id: string, text: string, basedOn: string | null): Promise<WriteResult> => {
    const present = await get(id);
    if (present?.origin === 'example') return { kind: 'is an example' };
    if (present && basedOn === null) return { kind: 'exists already' };
    if (basedOn !== null && present?.version !== basedOn) return { kind: 'changed meanwhile' };
    await mkdir(folder, { recursive: true });
    await writeAtomically(pathOf(folder, id), text);
    return { kind: 'written', enclosure: stored(id, 'own', text) };
  };

  return {
    get,
    async list() {
      const own = await readAllOwn(folder);
      const taken = new Set(own.enclosures.map(({ id }) => id));
      const others = Object.keys(examples).filter((id) => !taken.has(id));
      return {
        enclosures: [...own.enclosures, ...others.flatMap((id) => example(id) ?? [])],
        leftOut: own.leftOut,
      };
    },
    write(id, text, basedOn) {
      const turn = queue.then(() => writeNow(id, text, basedOn));
      queue = turn.catch(() => undefined);
      return turn;
    },
  };
}

async function readAllOwn(folder: string) {
  const enclosures: StoredEnclosure[] = [];
  const leftOut: LeftOut[] = [];
  for (const fileName of await fileNames(folder)) {
    const id = fileName.slice(0, -ENDING.length);
    if (!isEnclosureId(id)) {
      leftOut.push({
        fileName,
        reason: 'Its name holds more than a-z, 0-9 and single hyphens; rename the file.',
      });
      continue;
    }
    const enclosure = await readOwn(folder, id);
    if (enclosure) enclosures.push(enclosure);
    else leftOut.push({ fileName, reason: 'It is not a plain file of at most 256 kB.' });
  }
  return { enclosures, leftOut };
}

async function fileNames(folder: string): Promise<string[]> {
  try {
    const names = await readdir(folder);
    return names.filter((name) => name.endsWith(ENDING) && !name.startsWith('.')).sort();
  } catch (error) {
    if (isMissing(error)) return [];
    throw error;
  }
}

async function readOwn(folder: string, id: string): Promise<StoredEnclosure | undefined> {
  if (!isEnclosureId(id)) return undefined;
  const path = pathOf(folder, id);
  try {
    const facts = await lstat(path);
    if (!facts.isFile() || facts.size > MAX_ENCLOSURE_BYTES) return undefined;
    return stored(id, 'own', await readFile(path, 'utf8'));
  } catch (error) {
    if (isMissing(error)) return undefined;
    throw error;
  }
}

function stored(id: string, origin: EnclosureOrigin, text: string): StoredEnclosure {
  const version = createHash('sha256').update(text, 'utf8').digest('hex').slice(0, 24);
  return { id, fileName: id + ENDING, origin, text, version };
}

function pathOf(folder: string, id: string): string {
  return join(folder, id + ENDING);
}

function isMissing(error: unknown): boolean {
  return (error as NodeJS.ErrnoException).code === 'ENOENT';
}
