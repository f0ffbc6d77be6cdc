import type { Prior, PriorTable } from '@shoreglass/engine';
import type { ProcessParameters } from './schema/parameters.ts';
import type { Quantity } from './schema/quantity.ts';

/** What is believed of a library value, in the unit it is written in; without a distribution it is fixed. */
export function priorOf({ value, distribution, spread, min, max }: Quantity): Prior {
  return {
    kind: distribution ?? 'fixed',
    median: value,
    spread: spread ?? 0,
    min: min ?? value,
    max: max ?? value,
  };
}

/** The priors of every process, by process id and parameter key. */
export function priorTable(files: Readonly<Record<string, ProcessParameters>>): PriorTable {
  return Object.fromEntries(
    Object.values(files).map(({ process, parameters }) => [
      process,
      Object.fromEntries(Object.entries(parameters).map(([key, quantity]) => [key, priorOf(quantity)])),
    ]),
  );
}
