import { PAGE_KINDS } from '@shoreglass/library';
import { z } from 'zod';

export const libraryKind = z.enum(PAGE_KINDS).describe('List of the library.');

const basis = z.enum(['published', 'page', 'common practice', 'memory', 'derived', 'assumed']);

const value = z.object({
  label: z.string(),
  text: z.string().describe('Value with unit.'),
  range: z.string().optional().describe('Plausible range with unit.'),
  basis,
  source: z.string(),
  note: z.string().optional(),
});

const bounds = z.object({ low: z.number().optional(), high: z.number().optional() });

/** A page of the library: what an entry is, what it needs, every value with its source. */
export const libraryEntry = z.object({
  kind: libraryKind,
  id: z.string(),
  name: z.string(),
  scientificName: z.string().optional(),
  group: z.string(),
  about: z.string().optional(),
  known: z.object({ level: z.enum(['well', 'fairly', 'poorly']), note: z.string() }).optional(),
  ways: z.array(z.string()),
  alone: z.string().optional().describe('For animals: what becomes of it by itself with ample food.'),
  ranges: z.array(
    z.object({
      label: z.string(),
      unit: z.string(),
      fine: bounds.optional(),
      survives: bounds.optional(),
      sources: z.array(value),
    }),
  ),
  sections: z.array(z.object({ title: z.string(), values: z.array(value) })),
  cautions: z.array(z.string()),
  risks: z.array(z.object({ kind: z.string(), text: z.string(), basis, source: z.string() })),
  unsaid: z.string().optional().describe('Of what law, welfare and health ask nothing particular is known.'),
  bases: z.array(z.object({ basis, count: z.number().int() })),
});

export type LibraryEntry = z.infer<typeof libraryEntry>;
