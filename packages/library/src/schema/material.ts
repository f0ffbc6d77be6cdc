import { z } from 'zod';
import { entryHead, quantity, share } from './quantity.ts';

const layerKinds = ['false bottom', 'drainage', 'foam', 'mesh', 'substrate'] as const;

/** What fills a layer of the ground, by the bulk. */
const layerMaterial = z.strictObject({
  ...entryHead,
  use: z.literal('layer'),
  /** Layers it is usually put in. */
  layers: z.array(z.enum(layerKinds)).min(1),
  porosity: quantity('share', { min: 0.05, max: 1 }),
  filmSurface: quantity('area per volume', { min: 0, max: 20_000 }),
  bulkDensity: quantity('density', { min: 5, max: 2500 }),
  /** Water by volume that stays when the layer drains. */
  heldWater: quantity('share', { min: 0, max: 0.95 }).optional(),
  /** Height to which its pores lift water. */
  capillaryRise: quantity('length', { min: 0, max: 1.5 }).optional(),
});

const pieceHead = {
  ...entryHead,
  /** Dry mass per displaced volume. */
  density: quantity('density', { min: 50, max: 3500 }),
};

const wood = z.strictObject({
  ...pieceHead,
  use: z.literal('wood'),
  /** Organic carbon that can leach, per dry mass. */
  leachableCarbon: quantity('share', { min: 0, max: 0.2 }),
});

const stone = z.strictObject({ ...pieceHead, use: z.literal('stone') });

const carbonate = z.strictObject({
  ...pieceHead,
  use: z.literal('carbonate'),
  /** CaCO3 per dry mass; the rest is taken as inert. */
  carbonate: share,
  mineral: z.enum(['calcite', 'aragonite']),
  grain: quantity('length', { min: 1e-5, max: 0.2 }),
});

const litter = z.strictObject({
  ...pieceHead,
  use: z.literal('litter'),
  carbon: share,
  nitrogen: share,
  phosphorus: share,
  /** Part of the carbon that leaches within days. */
  leachableCarbon: share,
});

export const materialSchema = z.discriminatedUnion('use', [layerMaterial, wood, stone, carbonate, litter]);

export type Material = z.infer<typeof materialSchema>;
export type MaterialUse = Material['use'];
export type MaterialOf<U extends MaterialUse> = Extract<Material, { use: U }>;
