import { relative, resolve } from 'node:path';
import type { Kind, Verdict } from './check.ts';
import { judge } from './judge.ts';
import { type ReferenceFile, readDocument, UnreadableFile } from './read-document.ts';
import { caseLines, count, familyLines, totalLine } from './table.ts';

const HELP = `npm run validate -- [--file FILE] [--json]
Compares the engine with outside references and prints every figure as pass or miss.
  --file FILE  check this JSON file instead of the registered references (may be repeated)
  --json       print one JSON document instead of the table
Ends with 0 when all built checks pass, 1 on a miss, 2 when an argument, a file or a case cannot be read.`;

interface Arguments {
  readonly files: readonly string[];
  readonly json: boolean;
  readonly help: boolean;
}

function readArguments(words: readonly string[]): Arguments {
  const files: string[] = [];
  let json = false;
  let help = false;
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    const next = words[i + 1];
    if (word === '--json') json = true;
    else if (word === '--help' || word === '-h') help = true;
    else if (word.startsWith('--file=')) files.push(word.slice('--file='.length));
    else if (word === '--file' && next !== undefined) {
      files.push(next);
      i++;
    } else
      throw new UnreadableFile(word === '--file' ? '--file needs a file name' : `unknown argument '${word}'`);
  }
  return { files, json, help };
}

/** All cases of a file, judged. */
export function judgeFile({ kind, cases }: ReferenceFile): Verdict[] {
  return cases.map((raw, position) => judge(kind, raw, position));
}

export interface Surroundings {
  readonly kinds: readonly Kind[];
  /** Paths of the files checked when none is named. */
  readonly references: readonly string[];
  /** Why a case of a registered reference is known to miss, by path and case. */
  readonly knownMisses: ReadonlyMap<string, Readonly<Record<string, string>>>;
  /** Folder that relative file names start from. */
  readonly folder: string;
  out(line: string): void;
  error(line: string): void;
}

function printTable(
  around: Surroundings,
  judged: readonly (readonly [ReferenceFile, readonly Verdict[]])[],
): void {
  for (const [file, verdicts] of judged) {
    around.out(relative(around.folder, file.path));
    const reasons = around.knownMisses.get(file.path) ?? {};
    for (const verdict of verdicts)
      for (const line of caseLines(verdict, reasons[verdict.id])) around.out(line);
  }
  for (const [file, verdicts] of judged) {
    around.out('');
    around.out(`${file.kind.name}, ${relative(around.folder, file.path)}`);
    for (const line of familyLines(file.kind, verdicts)) around.out(line);
  }
  around.out('');
  around.out(totalLine(judged.flatMap(([, verdicts]) => verdicts)));
}

function printDocument(around: Surroundings, verdicts: readonly Verdict[]): void {
  const cases = verdicts.map(({ id, family, status, figures, message }) => ({
    id,
    family,
    status,
    ...(message === undefined ? {} : { message }),
    figures,
  }));
  around.out(JSON.stringify({ ...count(verdicts), cases }, null, 2));
}

/** Runs the command and returns its exit code. Never throws. */
export function validate(words: readonly string[], around: Surroundings): 0 | 1 | 2 {
  try {
    const { files, json, help } = readArguments(words);
    if (help) {
      around.out(HELP);
      return 0;
    }
    const paths = files.length > 0 ? files.map((file) => resolve(around.folder, file)) : around.references;
    const judged = paths.map((path) => {
      const file = readDocument(path, around.kinds);
      return [file, judgeFile(file)] as const;
    });
    const verdicts = judged.flatMap(([, list]) => list);
    if (json) printDocument(around, verdicts);
    else printTable(around, judged);
    for (const [file, list] of judged) {
      for (const { id, message } of list.filter(({ unreadable }) => unreadable))
        around.error(`${file.path}: ${id}: ${message}`);
    }
    if (verdicts.some(({ unreadable }) => unreadable)) return 2;
    return verdicts.some(({ status }) => status === 'miss') ? 1 : 0;
  } catch (error) {
    around.error((error as Error).message);
    return 2;
  }
}
