import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import {
  bundledEnclosures,
  type Checked,
  checkEnclosure,
  loadBundledEnclosure,
  MAX_ENCLOSURE_BYTES,
  problemLine,
  readEnclosure,
} from '@shoreglass/contract';
import type { Plan } from '@shoreglass/engine';
import { BadInput, Blocked } from '../exit-codes.ts';

function textOf(path: string): string {
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
  return readFileSync(path, 'utf8');
}

/** A series named in the file lies beside it; only a plain file within reach of the path is read. */
function besides(path: string): (name: string) => string | undefined {
  return (name) => {
    const beside = resolve(dirname(path), name);
    return existsSync(beside) && statSync(beside).isFile() ? readFileSync(beside, 'utf8') : undefined;
  };
}

/**
 * Reads and checks an enclosure file, or an example by name.
 * @throws BadInput with one line per problem when the file cannot be read as an enclosure
 */
export function readAndCheck(file: string): Checked {
  if (!existsSync(file) && bundledEnclosures().includes(file))
    return checkEnclosure(loadBundledEnclosure(file).document);
  const { document, problems } = readEnclosure(textOf(file), basename(file));
  if (!document) throw new BadInput(problems.map(problemLine).join('\n'));
  return checkEnclosure(document, { readBeside: besides(file) });
}

/**
 * The plan of an enclosure file or example.
 * @throws BadInput as `readAndCheck`; Blocked with one line per blocking problem
 */
export function readPlan(file: string): Plan {
  const { plan, findings } = readAndCheck(file);
  if (plan) return plan;
  const blocking = findings.filter(({ severity }) => severity === 'blocking');
  throw new Blocked(blocking.map(problemLine).join('\n'));
}
