import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { ParameterTable } from '../process/compose.ts';

const FOLDER = new URL('../../../library/data/parameters/', import.meta.url);

interface File {
  readonly process: string;
  readonly parameters: Readonly<Record<string, { readonly value: number }>>;
}

/** The library's medians of every process, read from its files. */
export const LIBRARY_MEDIANS: ParameterTable = Object.fromEntries(
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => parse(readFileSync(new URL(name, FOLDER), 'utf8')) as File)
    .map(({ process, parameters }) => [
      process,
      Object.fromEntries(Object.entries(parameters).map(([key, { value }]) => [key, value])),
    ]),
);
