import type { Command } from 'commander';
import { readPlan } from '../run/read-enclosure.ts';
import { type AheadOptions, showAhead, withAheadOptions } from './ahead-options.ts';

/** `shoreglass ahead FILE`: the outlook of an enclosure file. */
export function addAhead(program: Command): void {
  const command = program
    .command('ahead')
    .description('compute what an enclosure will need, and when: an ensemble of runs over the coming days')
    .argument('<file>', 'enclosure file (YAML), or the name of an example');
  withAheadOptions(command).action(async (file: string, options: AheadOptions) => {
    await showAhead(readPlan(file), options);
  });
}
