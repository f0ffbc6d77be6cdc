import { z } from 'zod';
import { anyQuantity, entryHead, known, quantity, quantityIn, share } from './quantity.ts';

/** Shares are per dry mass. */
export const feedSchema = z.strictObject({
  ...entryHead,
  dryMatter: quantity('share', { min: 0.02, max: 1 }),
  carbon: share,
  nitrogen: share,
  phosphorus: share,
  /** What it is made of: hunters refuse what is of plants. */
  kind: z.enum(['plants', 'animals', 'mixed']).optional(),
  /** Loss of what is not eaten, soaked, at 25 degC. */
  decay: quantityIn('1/d', { min: 0.005, max: 5 }),
  calcium: share.optional(),
  energy: quantityIn('kJ/g', { min: 0, max: 40 }).optional(),
  /** Dry matter that leaves an uneaten piece in still water at about 25 degC. */
  leached: z.strictObject({ hour: share, day: share }).optional(),
  /** What usual portions weigh, as fed. */
  portions: z.record(z.string().min(3), anyQuantity).optional(),
  known: known.optional(),
});

export type Feed = z.infer<typeof feedSchema>;
