import type { Command } from 'commander';
import { BadInput } from '../exit-codes.ts';

/** Whether an option was written, not left at its usual value. */
export const isGiven = (command: Command, option: string): boolean =>
  command.getOptionValueSource(attributeOf(option)) === 'cli';

/** 'change-to' as commander names it. */
const attributeOf = (option: string): string => option.replaceAll(/-(\w)/g, (_, sign) => sign.toUpperCase());

/** '--days', '--days and --members', '--days, --members and --seed'. */
const named = (options: readonly string[]): string => {
  const all = options.map((option) => `--${option}`);
  return all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
};

/** The same words of one option and of several. */
export const both = (text: string): readonly [string, string] => [text, text];

/** Options that say more about another one, or about one kind of question, and why. */
export interface Belonging {
  readonly options: readonly string[];
  /** The option they say more about; nothing where the kind of question decides. */
  readonly to?: string;
  /** What is said of one that stands alone, and of several, after their names. */
  readonly say: readonly [one: string, several: string];
  /** The same for what to do. */
  readonly mend: readonly [one: string, several: string];
}

/**
 * Refuses options that would be passed over in silence.
 * @throws BadInput naming those given astray, what they belong to, and the mend
 */
export function refuseAstray(command: Command, { options, to, say, mend }: Belonging): void {
  if (to !== undefined && isGiven(command, to)) return;
  const astray = options.filter((option) => isGiven(command, option));
  if (astray.length === 0) return;
  const which = astray.length > 1 ? 1 : 0;
  throw new BadInput(`${named(astray)} ${say[which]} ${mend[which]}`);
}
