/** Moss lies on the ground; taller plants stand above it and shade it. */
export type LandLayer = 'moss' | 'tall';

/** One planting on land as the growth of plants needs it; fixed all run. */
export interface LandStand {
  readonly id: string;
  readonly layer: LandLayer;
  /** Stands of one zone share its ground and shade each other. */
  readonly zone: string;
  /** Ground, wall or wood it can cover [m2], > 0. */
  readonly area: number;
  /** Biomass at full cover [mol C/m2], and part of the area covered at the start [0..1]. */
  readonly fullCoverBiomass: number;
  readonly cover: number;
  /** Light on it while the lamps are on, shade of plants left out [umol/(m2 s)], and hours lit. */
  readonly light: number;
  readonly hoursLit: number;
  /** Light below which it does not last, and with which it grows at `growth` [umol/(m2 s)]. */
  readonly least: number;
  readonly good: number;
  /** Growth in good light [1/s]; the usual one of its layer when left out. */
  readonly growth?: number;
  /** Warmth it is said to bear [degC] and the driest air [%]. */
  readonly warmest: number;
  readonly driest: number;
  /** On a wall or above the ground: only air and mist wet it. */
  readonly offGround: boolean;
  /** Mist that falls on it [kg/(m2 d)]. */
  readonly mist: number;
  /** Part of it that animals take as food [0..1]; all of it when left out. */
  readonly edible?: number;
  /** Sprinkled or painted on: it settles before it grows. */
  readonly fragments: boolean;
  /** Shore of its zone along open water [m]. */
  readonly shore: number;
}

/**
 * What keeps a planting from growing at its best, in the order of a run's book: growth that did not happen, and what
 * dried up or was eaten [mol C].
 */
export const LAND_PLANT_CAUSES = [
  'too little light',
  'shade of taller plants',
  'cold or heat',
  'dry air and ground',
  'too little nitrogen or phosphorus',
  'eaten by animals',
] as const;

/** Entries of a stand's book: the causes, then the growth that good light alone would have given [mol C]. */
export const LAND_PLANT_ENTRIES = LAND_PLANT_CAUSES.length + 1;
