import type { z } from 'zod';
import { feedSchema } from './feed.ts';
import { materialSchema } from './material.ts';
import { organismSchema } from './organism.ts';
import { parametersSchema } from './parameters.ts';
import { plantSchema } from './plant.ts';
import { saltSchema } from './salt.ts';
import { waterSchema } from './water.ts';

/** Folder of data by folder of data, the shape of its files. */
export const ENTRY_SCHEMAS = {
  organisms: organismSchema,
  plants: plantSchema,
  feeds: feedSchema,
  materials: materialSchema,
  waters: waterSchema,
  salts: saltSchema,
  parameters: parametersSchema,
} as const satisfies Record<string, z.ZodType>;

export type EntryKind = keyof typeof ENTRY_SCHEMAS;

/** Everything the bundle holds: by folder, then by the file's name. */
export type LibraryData = {
  readonly [K in EntryKind]: Readonly<Record<string, z.infer<(typeof ENTRY_SCHEMAS)[K]>>>;
} & {
  /** Enclosure files as text, by the file's name. */
  readonly enclosures: Readonly<Record<string, string>>;
  /** Room series as text, by the file's name. */
  readonly series: Readonly<Record<string, string>>;
};
