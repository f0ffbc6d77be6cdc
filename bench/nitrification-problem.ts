import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Order in which the peers read the parameters. */
export const PARAMETER_NAMES = 'muA KA KOA YA bA muN KN KON YN bN load kLa O2sat'.split(' ');

/** Two-step nitrification over 90 days, with its reference solution (validation/integrators/SOURCE.md). */
export interface NitrificationProblem {
  readonly parameters: Readonly<Record<string, number>>;
  readonly y0: readonly number[];
  readonly times: readonly number[];
  /** By time, then state. */
  readonly reference: readonly (readonly number[])[];
}

interface Item {
  readonly id: string;
  readonly parameters: Readonly<Record<string, number>>;
  readonly y0: readonly number[];
  readonly solution: readonly { readonly t: number; readonly y: readonly number[] }[];
}

export function nitrificationProblem(root: string): NitrificationProblem {
  const file = join(root, 'validation/integrators/integrators.json');
  const { items } = JSON.parse(readFileSync(file, 'utf8')) as { readonly items: readonly Item[] };
  const item = items.find(({ id }) => id === 'nitrification');
  if (!item) throw new Error(`${file} holds no nitrification`);
  const { parameters, y0, solution } = item;
  return { parameters, y0, times: solution.map(({ t }) => t), reference: solution.map(({ y }) => y) };
}
