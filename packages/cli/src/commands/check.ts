import { basename } from 'node:path';
import { checkEntry, type Finding, isLibraryEntry, problemLine } from '@shoreglass/contract';
import type { Command } from 'commander';
import colours from 'picocolors';
import { BadInput, EXIT } from '../exit-codes.ts';
import { animalText, entryText } from '../print/entry.ts';
import { findingLines } from '../print/findings.ts';
import { entryTextAt, readAndCheck } from '../run/read-enclosure.ts';

const HEADINGS = {
  blocking: 'Blocks the plan',
  warning: 'Will probably go wrong',
  note: 'Worth knowing',
} as const;

function section(severity: Finding['severity'], findings: readonly Finding[]): string[] {
  const of = findings.filter((finding) => finding.severity === severity);
  if (of.length === 0) return [];
  return [`\n${colours.underline(HEADINGS[severity])}`, ...findingLines(of)];
}

function summary(findings: readonly Finding[]): string {
  const count = (severity: Finding['severity']): number =>
    findings.filter((finding) => finding.severity === severity).length;
  return `${count('blocking')} blocking, ${count('warning')} warnings, ${count('note')} notes`;
}

/** Checks a file of one animal, plant, feed, material, salt or water. @throws BadInput with one line per problem */
function checkEntryFile(text: string, file: string, json: boolean): void {
  const checked = checkEntry(text, basename(file));
  if (checked.problems) throw new BadInput(checked.problems.map(problemLine).join('\n'), checked.problems);
  if (json) {
    process.stdout.write(`${JSON.stringify(checked, leaveCoursesOut)}\n`);
    return;
  }
  process.stdout.write(`${'animal' in checked ? animalText(checked.animal) : entryText(checked.page)}\n`);
}

const leaveCoursesOut = (key: string, value: unknown): unknown => (key === 'courses' ? undefined : value);

/** Prints the problems of a file that cannot be read as one document, and passes them on. */
function problemsAsJson(work: () => void): void {
  try {
    work();
  } catch (error) {
    if (error instanceof BadInput && error.problems.length > 0) {
      const findings = error.problems.map((problem) => ({ ...problem, severity: 'blocking' }));
      process.stdout.write(`${JSON.stringify({ canBeRun: false, findings })}\n`);
    }
    throw error;
  }
}

/** Checks an enclosure file and prints what is found. @throws BadInput with one line per problem */
function checkEnclosureFile(file: string, json: boolean): void {
  const { plan, findings } = readAndCheck(file);
  if (!plan) process.exitCode = EXIT.blocked;
  if (json) {
    process.stdout.write(`${JSON.stringify({ canBeRun: plan !== undefined, findings })}\n`);
    return;
  }
  const sections = (['blocking', 'warning', 'note'] as const).flatMap((severity) =>
    section(severity, findings),
  );
  process.stdout.write(`${[...sections, '', summary(findings)].join('\n')}\n`);
}

/** `shoreglass check FILE`: everything about an enclosure file, or a file of the library, that needs a look. */
export function addCheck(program: Command): void {
  program
    .command('check')
    .description('say what is wrong with an enclosure file or a file of the library, and what may go wrong')
    .argument(
      '<file>',
      'enclosure file, file of one animal, plant or other entry (YAML), or the name of an example',
    )
    .option('--json', 'print the findings as one JSON document and nothing else', false)
    .action((file: string, { json }: { json: boolean }) => {
      const entry = entryTextAt(file, isLibraryEntry);
      const work = (): void =>
        entry === undefined ? checkEnclosureFile(file, json) : checkEntryFile(entry, file, json);
      if (json) problemsAsJson(work);
      else work();
    });
}
