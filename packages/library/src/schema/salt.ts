import { z } from 'zod';
import { entryHead, known, quantity, share } from './quantity.ts';

/** A mineral salt to mix water with, as it is sold. */
export const saltSchema = z.strictObject({
  ...entryHead,
  /** How well its numbers are known. */
  known: known.optional(),
  /** Other names under which it can be asked for. */
  alsoCalled: z.array(z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/)).optional(),
  /** With its water of crystallisation, such as 'MgSO4.7H2O'. */
  formula: z.string().min(2),
  /** Mass of the formula in the mass of the pack. */
  purity: share,
  /** That dissolves in a litre of pure water at 20 degrees C, as the formula. */
  solubility: quantity('mass concentration', { min: 0.005, max: 5000 }),
  /** Of the loose powder or grain as spooned. */
  bulkDensity: quantity('density', { min: 200, max: 2000 }),
  dissolving: z.enum(['quick', 'slow', 'with carbon dioxide']),
  /** What it is used for in keeping water, and what it is sold as. */
  use: z.string().min(10),
});

export type Salt = z.infer<typeof saltSchema>;
