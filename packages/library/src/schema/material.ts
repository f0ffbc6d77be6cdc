import { z } from 'zod';
import { anyQuantity, known, entryHead as nameAndCautions, quantity, quantityIn, share } from './quantity.ts';

const entryHead = {
  ...nameAndCautions,
  /** How well its numbers are known. */
  known: known.optional(),
};

const layerKinds = ['false bottom', 'drainage', 'foam', 'mesh', 'substrate'] as const;

/** Cations that grains or fibres hold and exchange with the water. */
const exchange = z.strictObject({
  /** Sites per dry mass. */
  capacity: quantityIn('meq/g', { min: 0, max: 5 }),
  /** Part of the sites that calcium, magnesium, sodium and potassium fill; hydrogen ions hold the rest. */
  baseSaturation: share,
  /** Shares of these bases. */
  calcium: share,
  magnesium: share,
  sodium: share,
  potassium: share,
  /** Part of the sites that ammonium fills. */
  ammonium: share.optional(),
  /** Hold on hydrogen ions over that on sodium, as a decadic logarithm. */
  acidHold: quantityIn('log10', { min: 0, max: 7 }),
});

/** Phosphate that iron, aluminium and clay of ground bind, as phosphorus, by a Langmuir isotherm. */
const phosphate = z.strictObject({
  /** Most that it binds, per dry mass. */
  maximum: quantityIn('mg P/kg', { min: 1, max: 20_000 }),
  /** Phosphate of the water at which it holds half of that. */
  half: quantityIn('mg P/L', { min: 0.05, max: 50 }),
  /** Phosphate of the water in which it, when new, neither binds nor gives up any. */
  balance: quantityIn('mg P/L', { min: 0.0005, max: 5 }),
});

/** Coloured organic carbon that leaves by and by. */
const leaching = z.strictObject({
  /** Per dry mass. */
  carbon: share,
  /** Part of it that leaves in the first weeks. */
  quick: share,
});

/** What fills a layer of the ground, by the bulk. */
const layerMaterial = z.strictObject({
  ...entryHead,
  use: z.literal('layer'),
  /** Layers it is usually put in. */
  layers: z.array(z.enum(layerKinds)).min(1),
  porosity: quantity('share', { min: 0.05, max: 1 }),
  filmSurface: quantity('area per volume', { min: 0, max: 60_000 }),
  bulkDensity: quantity('density', { min: 5, max: 2500 }),
  /** Water by volume that stays when the layer drains. */
  heldWater: quantity('share', { min: 0, max: 0.95 }).optional(),
  /** Height to which its pores lift water. */
  capillaryRise: quantity('length', { min: 0, max: 1.5 }).optional(),
  exchange: exchange.optional(),
  leaching: leaching.optional(),
  phosphate: phosphate.optional(),
});

const pieceHead = {
  ...entryHead,
  /** Dry mass per displaced volume. */
  density: quantity('density', { min: 50, max: 3500 }),
};

const wood = z.strictObject({
  ...pieceHead,
  use: z.literal('wood'),
  /** Organic carbon that leaches from sawdust of it, per dry mass. */
  extractableCarbon: quantity('share', { min: 0, max: 0.2 }),
  /** Depth from which a piece gives it up. */
  leachingDepth: quantity('length', { min: 1e-5, max: 0.02 }),
  /** Part that leaves in the first weeks. */
  quickShare: share,
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
  /** Breakdown in water over that of oak leaves. */
  pace: quantityIn('1', { min: 0.1, max: 10 }),
  /** Part of the carbon that leaches within days. */
  leachableCarbon: share,
});

/** What box, joints, walls and hoses are made of; values for the builder. */
const build = z.strictObject({
  ...entryHead,
  use: z.literal('build'),
  made: z.enum(['glass', 'plastic', 'sealant', 'resin', 'grid', 'screen', 'tube']),
  /** By plain name, in the unit of the trade. */
  properties: z.record(z.string().min(3), anyQuantity),
});

export const materialSchema = z.discriminatedUnion('use', [
  layerMaterial,
  wood,
  stone,
  carbonate,
  litter,
  build,
]);

export type Material = z.infer<typeof materialSchema>;
export type MaterialUse = Material['use'];
export type MaterialOf<U extends MaterialUse> = Extract<Material, { use: U }>;
