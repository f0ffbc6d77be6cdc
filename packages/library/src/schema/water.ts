import { DISSOLVED_IDS, type Dimension, type DissolvedId } from '@shoreglass/engine';
import { z } from 'zod';
import { entryHead, known, quantity } from './quantity.ts';

const ANY: readonly Dimension[] = [
  'mass concentration',
  'nitrogen concentration',
  'phosphorus concentration',
];
const concentration = quantity('amount concentration', { min: 0, max: 100 }, ANY);

const ions = Object.fromEntries(DISSOLVED_IDS.map((id) => [id, concentration])) as Record<
  DissolvedId,
  typeof concentration
>;

/** An analysis. mg/L is of the ion itself (NO3, PO4), of carbon for dissolvedOrganicCarbon; mg N/L and mg P/L of the element. */
export const waterSchema = z.strictObject({
  ...entryHead,
  /** How well its numbers are known. */
  known: known.optional(),
  /** Where it comes from: tap water gets the cautions on chlorine and copper. */
  origin: z.enum(['pure', 'rain', 'tap']),
  ions: z.strictObject(ions),
  /** Dissolved copper, where an analysis tells it. */
  copper: quantity('mass concentration', { min: 0, max: 0.005 }).optional(),
  /** As measured; the check of the ions' charges against it must hold. Absent for waters without buffer. */
  alkalinity: quantity('charge concentration', { min: -2, max: 50 }).optional(),
  /** As measured, at 25 degrees C. */
  conductivity: quantity('conductivity', { min: 0, max: 10_000 }).optional(),
});

export type Water = z.infer<typeof waterSchema>;
