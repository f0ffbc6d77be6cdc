import { DISSOLVED_IDS } from '../../plan/water-composition.ts';
import { dissolvingVolume } from '../brine.ts';
import { TOTAL } from './layout.ts';

/** The amounts in the water [mol] that its equilibria depend on. */
export const DISSOLVED_AMOUNTS = [...DISSOLVED_IDS, 'dissolvedInorganicCarbon'] as const;

const POSITION_OF = {
  calcium: TOTAL.calcium,
  magnesium: TOTAL.magnesium,
  sodium: TOTAL.sodium,
  potassium: TOTAL.potassium,
  chloride: TOTAL.chloride,
  sulfate: TOTAL.sulfate,
  ammonium: TOTAL.ammonium,
  nitrite: TOTAL.nitrite,
  nitrate: TOTAL.nitrate,
  phosphate: TOTAL.phosphate,
  dissolvedOrganicCarbon: TOTAL.organic,
  dissolvedInorganicCarbon: TOTAL.carbon,
} as const satisfies Record<(typeof DISSOLVED_AMOUNTS)[number], number>;
const POSITIONS = Int32Array.from(DISSOLVED_AMOUNTS, (id) => POSITION_OF[id]);

/** Where the amounts are found, and the water they are in. */
export interface Amounts {
  readonly values: Float64Array;
  /** Position in `values` of each of `DISSOLVED_AMOUNTS`. */
  readonly amounts: Int32Array;
  /** [m3] */
  readonly volume: number;
}

/**
 * Writes the totals of the amounts in the water into `totals` [mol/kg; organic carbon: mol C/kg, not yet sites] and
 * returns the volume they are spread over [m3]. Amounts below zero count as zero.
 * @source derived: 1 m3 taken as 1000 kg; see `dissolvingVolume`
 */
export function loadAmounts(totals: Float64Array, { values, amounts, volume }: Amounts): number {
  let all = 0;
  for (let i = 0; i < amounts.length; i++) {
    const amount = Math.max(0, values[amounts[i]!]!);
    totals[POSITIONS[i]!] = amount;
    all += amount;
  }
  const spread = dissolvingVolume(volume, all);
  const water = 1000 * spread;
  for (let i = 0; i < POSITIONS.length; i++) totals[POSITIONS[i]!]! /= water;
  return spread;
}
