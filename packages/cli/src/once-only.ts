import type { Command } from 'commander';
import { BadInput } from './exit-codes.ts';

/** Refuses an option with a value that is given twice, since the first would be passed over in silence; lists gather all. */
export function onceOnly(command: Command): void {
  for (const option of command.options) {
    if (option.isBoolean()) continue;
    let before: string | undefined;
    command.on(`option:${option.name()}`, (value: string) => {
      if (Array.isArray(command.getOptionValue(option.attributeName()))) return;
      if (before !== undefined)
        throw new BadInput(
          `${option.long} is given twice, as ${before} and as ${value}. It can be given once.`,
        );
      before = value;
    });
  }
}
