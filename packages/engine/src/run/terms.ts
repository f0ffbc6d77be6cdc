/** Kinds of care that change pools, and nutrients that water carries to and from the ground; booked apart. */
export const CARE_TERMS = [
  'feeding',
  'top-off',
  'misting',
  'water change',
  'trimming',
  'animals added or taken',
  'carbonate added',
  'litter added',
  'drawn up by the ground',
] as const;
export type CareTerm = (typeof CARE_TERMS)[number];

/** Water moved [m3], positive into the pool. */
export const WATER_TERMS = [
  'evaporation',
  'dripping back and mist',
  'drawn up by the ground',
  'top-off',
] as const;
export type WaterTerm = (typeof WATER_TERMS)[number];
