import type { Plan } from '@shoreglass/engine';
import type { Command } from 'commander';
import { aheadText } from '../print/ahead.ts';
import { widthUpTo } from '../print/width.ts';
import { computeOutlook } from '../run/outlook.ts';
import { wholeNumber } from '../whole-number.ts';

export interface AheadOptions {
  readonly days: number;
  readonly members: number;
  readonly seed: number;
  readonly json: boolean;
}

/** The options that `ahead` and `demo` share. */
export function withAheadOptions(command: Command): Command {
  return command
    .option('--days <days>', 'length of the outlook, 1 to 1500', wholeNumber(1, 1500), 300)
    .option('--members <runs>', 'runs in the ensemble, 2 to 2000', wholeNumber(2, 2000), 200)
    .option('--seed <number>', 'same seed, same outlook', wholeNumber(0, 4294967295), 1)
    .option('--json', 'print one JSON document (docs/schema/ahead.schema.json) and nothing else', false);
}

const WIDEST = 100;

/** Computes and prints an outlook. */
export async function showAhead(plan: Plan, { json, ...options }: AheadOptions): Promise<void> {
  const document = await computeOutlook(plan, options);
  const width = widthUpTo(WIDEST);
  process.stdout.write(json ? `${JSON.stringify(document)}\n` : `${aheadText(document, width)}\n`);
}
