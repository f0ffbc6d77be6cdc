import type { Command } from 'commander';
import { BadInput } from '../exit-codes.ts';
import { wholeNumber } from '../whole-number.ts';
import { type Belonging, both } from './options-given.ts';

/** What `life --counts` is asked. */
export interface CountsChoice {
  readonly counts?: string;
  readonly below?: number;
  readonly within?: number;
  readonly threshold?: string;
}

/** Options that go with --counts only. */
export const WITH_COUNTS: Belonging = {
  options: ['below', 'within', 'threshold'],
  to: 'counts',
  say: both('goes with --counts:'),
  mend: both('name the file of your counts.'),
};

/** What counts are not asked. */
export const NOT_OF_COUNTS: Belonging = {
  options: ['days', 'add', 'hold', 'pest', 'from', 'place', 'at'],
  say: both('cannot go with --counts.'),
  mend: ['Leave it out, or ask it without --counts.', 'Leave them out, or ask them without --counts.'],
};

/** Reads a number of animals above 0. @throws BadInput */
function animals(text: string): number {
  const number = Number(text);
  if (text.trim() !== '' && number > 0 && number <= 1e9) return number;
  throw new BadInput(`--below: '${text}' is no number of animals above 0. Write it like 2.`);
}

/** The options of counts. */
export function withCountsOptions(command: Command): Command {
  return command
    .option(
      '--counts <file>',
      'growth, limit and risk from your counts: lines of date and number (CSV); with --animal beside the species by itself, with a file and --animal beside its computed numbers',
    )
    .option('--below <animals>', 'with --counts: number that must not be undercut; 2 when left out', animals)
    .option(
      '--within <days>',
      'with --counts: within how many days after the last count; as many as were counted when left out',
      wholeNumber(1, 36500),
    )
    .option(
      '--threshold <T>',
      'with --counts that hold coldest and warmest: below this nothing develops, as 10 or "50 °F"; 10 °C when left out',
    );
}
