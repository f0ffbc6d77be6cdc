import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import {
  bundledEnclosures,
  type Checked,
  checkEnclosure,
  type EnclosureContent,
  type EnclosureDocument,
  loadBundledEnclosure,
  MAX_ENCLOSURE_BYTES,
  problemLine,
  readEnclosure,
} from '@shoreglass/contract';
import type { Plan } from '@shoreglass/engine';
import { BadInput, Blocked, reasonOf } from '../exit-codes.ts';

/** Text of a file of the user's. @throws BadInput when it is not there, no file, or too long */
export function textOf(path: string): string {
  if (!existsSync(path)) {
    throw new BadInput(
      `There is no file ${path}. Give the path of an enclosure file, or an example: ${bundledEnclosures().join(', ')}.`,
    );
  }
  const about = statSync(path);
  if (!about.isFile())
    throw new BadInput(`${path} is not a file. Give the path of an enclosure file (YAML).`);
  if (about.size > MAX_ENCLOSURE_BYTES) {
    throw new BadInput(
      `${path} holds ${about.size} bytes; an enclosure file has at most ${MAX_ENCLOSURE_BYTES}. Is it the right file?`,
    );
  }
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new BadInput(`${path} cannot be read: ${reasonOf(error)}. Check that you may read it.`);
  }
}

/** Text of a file that is an entry of the library; undefined for all else. */
export function entryTextAt(
  path: string,
  isEntry: (text: string, fileName: string) => boolean,
): string | undefined {
  if (!existsSync(path) || !statSync(path).isFile()) return undefined;
  const text = textOf(path);
  return isEntry(text, basename(path)) ? text : undefined;
}

/** Bytes of a record of a room above which it is not even opened; its text may have 12 MB. */
const MOST_SERIES_BYTES = 50_000_000;

/** A series named in the file lies beside it; only a plain file within reach of the path is read. */
function besides(path: string): (name: string) => string | undefined {
  return (name) => {
    const beside = resolve(dirname(path), name);
    if (!existsSync(beside) || !statSync(beside).isFile()) return undefined;
    if (statSync(beside).size > MOST_SERIES_BYTES)
      throw new BadInput(
        `${beside} holds ${statSync(beside).size} bytes; a room's record has at most ${MOST_SERIES_BYTES}. Is it the right file?`,
      );
    try {
      return readFileSync(beside, 'utf8');
    } catch (error) {
      throw new BadInput(`${beside} cannot be read: ${reasonOf(error)}. Check that you may read it.`);
    }
  };
}

interface Read {
  readonly document: EnclosureDocument;
  readonly checked: Checked;
}

function readFile(file: string): Read {
  if (!existsSync(file) && bundledEnclosures().includes(file)) {
    const { document } = loadBundledEnclosure(file);
    return { document, checked: checkEnclosure(document) };
  }
  const { document, problems } = readEnclosure(textOf(file), basename(file));
  if (!document) throw new BadInput(problems.map(problemLine).join('\n'), problems);
  return { document, checked: checkEnclosure(document, { readBeside: besides(file) }) };
}

/**
 * Reads and checks an enclosure file, or an example by name.
 * @throws BadInput with one line per problem when the file cannot be read as an enclosure
 */
export function readAndCheck(file: string): Checked {
  return readFile(file).checked;
}

/**
 * The plan of an enclosure file or example, with what the file says.
 * @throws BadInput as `readAndCheck`; Blocked with one line per blocking problem
 */
export function readPlanAndContent(file: string): {
  readonly plan: Plan;
  readonly content: EnclosureContent;
} {
  const { document, checked } = readFile(file);
  const { plan, findings } = checked;
  if (plan) return { plan, content: document.content };
  const blocking = findings.filter(({ severity }) => severity === 'blocking');
  throw new Blocked(blocking.map(problemLine).join('\n'));
}

/** The plan alone. @throws as `readPlanAndContent` */
export function readPlan(file: string): Plan {
  return readPlanAndContent(file).plan;
}
