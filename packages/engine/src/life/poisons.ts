import { pow } from '../numerics/elementary.ts';
import type { TraitId, TraitValues } from './traits.ts';
import type { WaterConditions } from './water-stress.ts';

/** Chloride at which the nitrite traits hold [mg/L]. @source assumed: usual of the dilution waters of tests, 19 to 28 mg/L */
export const REFERENCE_CHLORIDE = 20;
/** Hardness at which the copper traits hold [mg/L as calcium carbonate]. @source us-epa-copper-1985 */
export const REFERENCE_HARDNESS = 50;
/** Rise of lethal copper with hardness: power of it. @source us-epa-copper-1996, acute slope */
const COPPER_SLOPE = 0.9422;
/** Softest water to which that power is carried on [mg/L as calcium carbonate]. @source assumed */
const SOFTEST = 5;
/** Calcium carbonate per degree of general hardness [mg/L]. */
const CARBONATE_PER_DEGREE = 17.85;

/**
 * Nitrite as it acts [mg N/L]: its concentration in water of 20 mg/L chloride that is taken up as fast.
 *   N (1 + 20/K) / (1 + Cl/K)
 * Gills take nitrite up in the place of chloride, so that what is borne rises in a line with chloride.
 * @param nitrite N [mg N/L]; chloride Cl [mg/L]; both none when left out
 * @param doubling K [mg/L], chloride that doubles what is borne in water without any
 * @source jensen-2003 (uptake by the exchange of chloride), lewis-morris-1986 (lines of lethal nitrite over chloride)
 */
export function actingNitrite({ nitrite = 0, chloride = 0 }: WaterConditions, doubling: number): number {
  return (nitrite * (doubling + REFERENCE_CHLORIDE)) / (doubling + chloride);
}

/**
 * Copper as it acts [µg/L]: its concentration in water of 50 mg/L hardness that harms as much, Cu (50/H)^0.9422.
 * All copper counts as free; what leaves, peat and wood give off binds part of it, so that harm is rather told too high.
 * @param hardness general hardness [degrees dGH]
 * @validity 25 to 400 mg/L; carried on down to 5 mg/L (0.3 degrees dGH), below which it stays as there
 * @source us-epa-copper-1996
 */
export function actingCopper({ copper = 0, hardness }: WaterConditions): number {
  if (copper <= 0) return 0;
  const asCarbonate = Math.max(SOFTEST, hardness * CARBONATE_PER_DEGREE);
  return copper * pow(REFERENCE_HARDNESS / asCarbonate, COPPER_SLOPE);
}

/** One poison of the water: the traits that tell how it acts on a species, and the concentration it acts with. */
export interface Poison {
  readonly id: 'ammonia' | 'nitrite' | 'copper';
  readonly noEffect: TraitId;
  readonly medianLethal: TraitId;
  readonly recovery: TraitId;
  /** How much more it harms the young. */
  readonly young: TraitId;
  acting(water: WaterConditions, traits: TraitValues): number;
}

/** The poisons of the water, in the order of the burdens of a population. */
export const POISONS = [
  {
    id: 'ammonia',
    noEffect: 'ammoniaNoEffect',
    medianLethal: 'ammoniaMedianLethal',
    recovery: 'ammoniaRecovery',
    young: 'ammoniaYoung',
    acting: ({ unionisedAmmonia }) => unionisedAmmonia,
  },
  {
    id: 'nitrite',
    noEffect: 'nitriteNoEffect',
    medianLethal: 'nitriteMedianLethal',
    recovery: 'nitriteRecovery',
    young: 'nitriteYoung',
    acting: (water, { nitriteChloride }) => actingNitrite(water, nitriteChloride),
  },
  {
    id: 'copper',
    noEffect: 'copperNoEffect',
    medianLethal: 'copperMedianLethal',
    recovery: 'copperRecovery',
    young: 'copperYoung',
    acting: (water) => actingCopper(water),
  },
] as const satisfies readonly Poison[];
