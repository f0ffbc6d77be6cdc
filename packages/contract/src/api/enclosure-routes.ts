import { z } from 'zod';
import { ENCLOSURE_ID, LONGEST_ENCLOSURE_ID } from './enclosure-id.ts';

export const enclosureId = z
  .string()
  .max(LONGEST_ENCLOSURE_ID)
  .regex(ENCLOSURE_ID)
  .describe('Name of the file without its ending: a-z, 0-9 and single hyphens.');

/** Where a file comes from: an example that ships with the program, or the keeper's own data folder. */
export const enclosureOrigin = z.enum(['example', 'own']);

/** Something the file says that needs a look, with its place in the text. Lines and columns count from 1. */
export const locatedFinding = z.object({
  severity: z
    .enum(['blocking', 'warning', 'note'])
    .describe('blocking: it cannot be run; warning: it will probably go wrong; note: worth knowing.'),
  line: z.number().int().positive(),
  column: z.number().int().positive(),
  path: z.string().describe('Keys from the top, such as zones[1].from; empty for the file as a whole.'),
  value: z.string().optional().describe('What stands there, shortened.'),
  message: z.string(),
  mend: z.string(),
  source: z.string().optional().describe('Where the statement comes from.'),
});

export const enclosureEntry = z.object({
  id: enclosureId,
  name: z.string(),
  origin: enclosureOrigin,
  errors: z.number().int().nonnegative().describe('Findings that keep it from being run.'),
  remarks: z.number().int().nonnegative(),
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
