import type { Stoichiometry } from '../process/stoichiometry.ts';
import type { Composition } from '../variables/compositions.ts';
import type { VariableId } from '../variables/variables.ts';

/** A pool of fixed composition that animals eat, per mol C. `derived`: element balance. */
export function eatenWhole(pool: VariableId, composition: Composition): Stoichiometry {
  return {
    [pool]: -1,
    eatenCarbon: 1,
    eatenNitrogen: composition.nitrogenPerCarbon,
    eatenPhosphorus: composition.phosphorusPerCarbon,
  };
}
