import { z } from 'zod';
import { entryHead, quantity, quantityIn, share } from './quantity.ts';

/** Shares are per dry mass. */
export const feedSchema = z.strictObject({
  ...entryHead,
  dryMatter: quantity('share', { min: 0.02, max: 1 }),
  carbon: share,
  nitrogen: share,
  phosphorus: share,
  /** Loss of what is not eaten, soaked, at 25 degC. */
  decay: quantityIn('1/d', { min: 0.005, max: 5 }),
});

export type Feed = z.infer<typeof feedSchema>;
