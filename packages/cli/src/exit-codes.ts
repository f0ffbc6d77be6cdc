import type { Problem } from '@shoreglass/contract';

/** Exit codes of every command. */
export const EXIT = { done: 0, blocked: 1, badInput: 2, failed: 3 } as const;

/** What the user gave cannot be used; the message says what, where and the mend. */
export class BadInput extends Error {
  /** What is wrong with a file, each with its place; empty for all other input. */
  readonly problems: readonly Problem[];

  constructor(message: string, problems: readonly Problem[] = []) {
    super(message);
    this.problems = problems;
  }
}

/** What an error says, without the call that made it: 'permission denied'. */
export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return error.message.replace(/^E[A-Z]+: /, '').replace(/, \w+( '.*')?$/, '');
}

/** The enclosure has problems that keep it from being run. */
export class Blocked extends Error {}
