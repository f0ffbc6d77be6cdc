import { z } from 'zod';
import { entryHead, known, quantity, risk, share } from './quantity.ts';
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
    /** Above it plants are stressed or algae take over. */
    most: quantity('photon flux density', { min: 10, max: 2000 }).optional(),
  }),
  /**
   * Relative growth in good light, moist, fed and uncrowded, at 20 degC. Plants on land and moss are computed by it; a
   * plant of land, moss or margin without it takes the usual one of its group.
   */
  growth: quantity('rate', { min: 0.0003 / 86_400, max: 0.6 / 86_400 }).optional(),
  /** Whether it uses bicarbonate beside carbon dioxide under water: 0 no, 1 yes. */
  bicarbonate: quantity('share', { min: 0, max: 1 }).optional(),
  /** Breakdown of its dead parts in water over that of soft shoots; the usual one of its group when left out. */
  breakdown: quantity('share', { min: 0.01, max: 5 }).optional(),
  /** Shares of dry mass; dry matter of fresh mass. */
  tissue: z.strictObject({ nitrogen: share, phosphorus: share, dryMatter: share }).optional(),
  /** Part of it that animals without special taste eat; by how dry and how well defended its leaves are when left out. */
  edible: share.optional(),
  tolerances,
  /** How well its numbers are known. */
  known: known.optional(),
  /** Law, poison, invasion: sentences with a source. */
  risks: z.array(risk).optional(),
});

export type Plant = z.infer<typeof plantSchema>;
