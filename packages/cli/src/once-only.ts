import type { Command, Option } from 'commander';
import { BadInput } from './exit-codes.ts';

/** Whether an option gathers what it is given; all others would forget the first. */
const gathers = ({ description }: Option): boolean => description.includes('may be given several times');

/** Refuses an option with a value that is given twice, since the first would be passed over in silence. */
export function onceOnly(command: Command): void {
  for (const option of command.options) {
    if (option.isBoolean() || gathers(option)) continue;
    let before: string | undefined;
    command.on(`option:${option.name()}`, (value: string) => {
      if (before !== undefined)
        throw new BadInput(
          `${option.long} is given twice, as ${before} and as ${value}. It can be given once.`,
        );
      before = value;
    });
  }
}
