import { POISONS } from './poisons.ts';
import type { TraitValues } from './traits.ts';

/**
 * How much of each poison counts for the young and for the grown, over what it counts where its lethal concentration was
 * tested [1]; in the order of POISONS.
 */
export interface PoisonByStage {
  readonly young: readonly number[];
  readonly grown: readonly number[];
  /** Whether young and grown bear the same of all. */
  readonly isAlike: boolean;
}

/**
 * Stages apart by the lethal concentration of the grown over that of the young, F: where the young were tested it counts
 * once for them and 1/F for the grown, else F for the young and once for the grown.
 * @source derived
 */
export function poisonByStage(traits: TraitValues): PoisonByStage {
  const factors = POISONS.map(({ young }) => traits[young]);
  const testedYoung = traits.testedYoung >= 0.5;
  return {
    young: factors.map((factor) => (testedYoung ? 1 : factor)),
    grown: factors.map((factor) => (testedYoung ? 1 / factor : 1)),
    isAlike: factors.every((factor) => factor === 1),
  };
}
