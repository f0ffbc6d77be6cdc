import { z } from 'zod';

/** Largest enclosure file that is read or kept [bytes of UTF-8]. */
export const MAX_ENCLOSURE_BYTES = 256 * 1024;

/** Names a file in the data folder: lower-case words, digits and single hyphens, at most 64 characters. */
export const enclosureId = z
  .string()
  .max(64)
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/)
  .describe('Name of the file without its ending: a-z, 0-9 and single hyphens.');

/** Where a file comes from: an example that ships with the program, or the keeper's own data folder. */
export const enclosureOrigin = z.enum(['example', 'own']);

/** Something the file says that needs a look, with its place in the text. Lines and columns count from 1. */
export const locatedFinding = z.object({
  severity: z.enum(['error', 'warning']),
  message: z.string(),
  mend: z.string().optional(),
  path: z.string().optional(),
  line: z.number().int().positive().optional(),
  column: z.number().int().positive().optional(),
});

export const enclosureEntry = z.object({
  id: enclosureId,
  name: z.string(),
  origin: enclosureOrigin,
  errors: z.number().int().nonnegative(),
  warnings: z.number().int().nonnegative(),
});

export const enclosureList = z.object({
  enclosures: z.array(enclosureEntry),
  leftOut: z
    .array(z.object({ fileName: z.string(), reason: z.string() }))
    .describe('Files in the data folder that cannot be offered, and why.'),
});

export const enclosureFile = z.object({
  id: enclosureId,
  name: z.string(),
  origin: enclosureOrigin,
  text: z.string(),
  version: z.string().describe('Changes whenever the text does.'),
  findings: z.array(locatedFinding),
});

export const enclosureWrite = z.object({
  text: z.string(),
  basedOn: z
    .string()
    .nullable()
    .describe('Version the text was written from; null for a file that must not exist yet.'),
});

/** What every refused request answers. */
export const refusal = z.object({ message: z.string() });
export const refusalWithFindings = refusal.extend({ findings: z.array(locatedFinding) });

export type EnclosureOrigin = z.infer<typeof enclosureOrigin>;
export type LocatedFinding = z.infer<typeof locatedFinding>;
export type EnclosureEntry = z.infer<typeof enclosureEntry>;
export type EnclosureList = z.infer<typeof enclosureList>;
export type EnclosureFile = z.infer<typeof enclosureFile>;
export type EnclosureWrite = z.infer<typeof enclosureWrite>;
export type Refusal = z.infer<typeof refusal>;
export type RefusalWithFindings = z.infer<typeof refusalWithFindings>;
