import { z } from 'zod';
import { entryHead, quantity, share } from './quantity.ts';

/** Shares are per dry mass. */
export const feedSchema = z.strictObject({
  ...entryHead,
  dryMatter: quantity('share', { min: 0.02, max: 1 }),
  carbon: share,
  nitrogen: share,
  phosphorus: share,
});

export type Feed = z.infer<typeof feedSchema>;
