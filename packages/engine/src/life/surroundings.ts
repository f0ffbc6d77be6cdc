import type { Shore } from './drowning.ts';
import type { WaterConditions } from './water-stress.ts';

/** The air above the land as animals meet it, mean of the day. */
export interface AirConditions {
  /** [degC] */
  readonly temperature: number;
  /** Relative humidity [%]. */
  readonly humidity: number;
  /** Moisture in the upper ground over what it can hold [0..1]. */
  readonly groundWetness: number;
}

/** Mild and moist; for rearings in which the air does not matter. */
export const MILD_AIR: AirConditions = { temperature: 20, humidity: 95, groundWetness: 1 };

/** Where animals can hide, as parts of full cover [0..1]. */
export interface Cover {
  readonly inWater: number;
  readonly onLand: number;
  /** On land without what lies between leaves, for small animals whose leaves count as ground they are spread over. */
  readonly besideLeaves: number;
}

/** What surrounds a population today. */
export interface Surroundings {
  readonly water: WaterConditions;
  /** Left out: mild and moist. */
  readonly air?: AirConditions;
  /** Water [m3] and land [m2]; no land when left out. */
  readonly volume: number;
  readonly landArea?: number;
  /** Surface of the pool, on which those that hold ground in water claim theirs [m2]; room without end when left out. */
  readonly waterArea?: number;
  /** Part of the cover of the glass that is open [0..1]; closed when left out. */
  readonly openCover?: number;
  /** Where water and land meet; a gentle bank when left out. */
  readonly shore?: Shore;
}
