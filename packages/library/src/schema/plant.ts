import { z } from 'zod';
import { entryHead, quantity } from './quantity.ts';
import { tolerances } from './tolerance.ts';

const plantGroups = ['submerged', 'floating', 'moss', 'emersed', 'land'] as const;

export const plantSchema = z.strictObject({
  ...entryHead,
  scientificName: z.string().min(3),
  group: z.enum(plantGroups),
  /** Biomass at full cover, as carbon per ground area. */
  fullCoverBiomass: quantity('carbon per area', { min: 0.05, max: 100 }),
  light: z.strictObject({
    least: quantity('photon flux density', { min: 1, max: 500 }),
    good: quantity('photon flux density', { min: 5, max: 1000 }),
  }),
  tolerances,
});

export type Plant = z.infer<typeof plantSchema>;
