import type { Command } from 'commander';
import { DEMO } from '../run/demo.ts';
import { readPlan } from '../run/read-enclosure.ts';
import { type AheadOptions, showAhead, withAheadOptions } from './ahead-options.ts';

/** `shoreglass demo`: the outlook of the invented demo. */
export function addDemo(program: Command): void {
  const command = program.command('demo').description('compute the outlook of the invented demo enclosure');
  withAheadOptions(command).action(async (options: AheadOptions) => {
    await showAhead(readPlan(DEMO), options);
  });
}
