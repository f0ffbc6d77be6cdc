import { type Finding, problemLine } from '@shoreglass/contract';
import type { Command } from 'commander';
import colours from 'picocolors';
import { EXIT } from '../exit-codes.ts';
import { readAndCheck } from '../run/read-enclosure.ts';

const HEADINGS = {
  blocking: 'Blocks the plan',
  warning: 'Will probably go wrong',
  note: 'Worth knowing',
} as const;

function section(severity: Finding['severity'], findings: readonly Finding[]): string[] {
  const of = findings.filter((finding) => finding.severity === severity);
  if (of.length === 0) return [];
  const lines = of.map((finding) => {
    const source = finding.source ? colours.dim(`\n    source: ${finding.source}`) : '';
    return `  ${problemLine(finding)}${source}`;
  });
  return [`\n${colours.underline(HEADINGS[severity])}`, ...lines];
}

function summary(findings: readonly Finding[]): string {
  const count = (severity: Finding['severity']): number =>
    findings.filter((finding) => finding.severity === severity).length;
  return `${count('blocking')} blocking, ${count('warning')} warnings, ${count('note')} notes`;
}

/** `shoreglass check FILE`: everything about an enclosure file that needs a look. */
export function addCheck(program: Command): void {
  program
    .command('check')
    .description('say what is wrong with an enclosure file, what may go wrong, and the cautions that apply')
    .argument('<file>', 'enclosure file (YAML), or the name of an example')
    .option('--json', 'print the findings as one JSON document and nothing else', false)
    .action((file: string, { json }: { json: boolean }) => {
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
    });
}
