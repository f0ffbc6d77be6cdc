import type { Process, Reaction } from '../process/contract.ts';
import { COMPOSITIONS, type Composition } from '../variables/compositions.ts';
import type { VariableId } from '../variables/variables.ts';
import { eatenWhole } from './eaten-whole.ts';

export type GrazedFood =
  | 'algae'
  | 'plants'
  | 'detritus'
  | 'litter'
  | 'feed'
  | 'biofilm'
  | 'suspended algae'
  | 'floating plants'
  | 'carrion'
  | 'dead plants';

/** Names of the reactions by which a food is eaten: one for a living pool, carbon, nitrogen, phosphorus otherwise. */
export interface EatenReactions {
  /** Process they stand under; `grazing` when left out. A process left out of a plan eats nothing. */
  readonly process?: string;
  readonly carbon: string;
  /** Absent where the food has a fixed composition and the reaction named under `carbon` moves all of it. */
  readonly nitrogen?: string;
  readonly phosphorus?: string;
  readonly composition?: Composition;
  /** What is eaten with it, of fixed composition: its reaction moves all of it. */
  readonly alongside?: { readonly carbon: string; readonly composition: Composition };
}

/** Where to read how much of each food was eaten [mol, extent of the reaction]. */
export const EATEN_BY_FOOD: Readonly<Record<GrazedFood, EatenReactions>> = {
  algae: { carbon: 'attached algae eaten', composition: COMPOSITIONS.algae },
  plants: { carbon: 'submerged plants eaten', composition: COMPOSITIONS.submergedPlants },
  biofilm: { carbon: 'bacterial film eaten', composition: COMPOSITIONS.bacteria },
  'suspended algae': { carbon: 'suspended algae eaten', composition: COMPOSITIONS.algae },
  'floating plants': { carbon: 'floating plants eaten', composition: COMPOSITIONS.floatingPlants },
  carrion: {
    carbon: 'dead animals eaten, carbon',
    nitrogen: 'dead animals eaten, nitrogen',
    phosphorus: 'dead animals eaten, phosphorus',
  },
  'dead plants': {
    process: 'plant-remains',
    carbon: 'dead water plants eaten',
    composition: COMPOSITIONS.submergedPlants,
  },
  detritus: {
    carbon: 'detritus carbon eaten',
    nitrogen: 'detritus nitrogen eaten',
    phosphorus: 'detritus phosphorus eaten',
  },
  litter: {
    carbon: 'litter carbon eaten',
    nitrogen: 'litter nitrogen eaten',
    phosphorus: 'litter phosphorus eaten',
    alongside: { carbon: 'litter fungi eaten', composition: COMPOSITIONS.fungi },
  },
  feed: { carbon: 'feed carbon eaten', nitrogen: 'feed nitrogen eaten', phosphorus: 'feed phosphorus eaten' },
};

interface Bite extends Reaction {
  readonly pool: VariableId;
  readonly clearance: VariableId;
}

function living(name: string, pool: VariableId, clearance: VariableId, composition: Composition): Bite {
  return { name, pool, clearance, stoichiometry: eatenWhole(pool, composition) };
}

function dead(name: string, pool: VariableId, clearance: VariableId, eaten: VariableId): Bite {
  return { name, pool, clearance, stoichiometry: { [pool]: -1, [eaten]: 1 } };
}

const BITES: readonly Bite[] = [
  living('attached algae eaten', 'attachedAlgae', 'grazingOnAlgae', COMPOSITIONS.algae),
  living('submerged plants eaten', 'submergedPlants', 'grazingOnPlants', COMPOSITIONS.submergedPlants),
  living('bacterial film eaten', 'biofilm', 'grazingOnBiofilm', COMPOSITIONS.bacteria),
  living('suspended algae eaten', 'suspendedAlgae', 'grazingOnSuspended', COMPOSITIONS.algae),
  living('floating plants eaten', 'floatingPlants', 'grazingOnFloating', COMPOSITIONS.floatingPlants),
  dead('dead animals eaten, carbon', 'carcassCarbon', 'grazingOnCarrion', 'eatenCarbon'),
  dead('dead animals eaten, nitrogen', 'carcassNitrogen', 'grazingOnCarrion', 'eatenNitrogen'),
  dead('dead animals eaten, phosphorus', 'carcassPhosphorus', 'grazingOnCarrion', 'eatenPhosphorus'),
  dead('detritus carbon eaten', 'detritusCarbon', 'grazingOnDetritus', 'eatenCarbon'),
  dead('detritus nitrogen eaten', 'detritusNitrogen', 'grazingOnDetritus', 'eatenNitrogen'),
  dead('detritus phosphorus eaten', 'detritusPhosphorus', 'grazingOnDetritus', 'eatenPhosphorus'),
  dead('litter carbon eaten', 'litterCarbon', 'grazingOnLitter', 'eatenCarbon'),
  dead('litter nitrogen eaten', 'litterNitrogen', 'grazingOnLitter', 'eatenNitrogen'),
  dead('litter phosphorus eaten', 'litterPhosphorus', 'grazingOnLitter', 'eatenPhosphorus'),
  living('litter fungi eaten', 'litterFungi', 'grazingOnLitter', COMPOSITIONS.fungi),
  dead('feed carbon eaten', 'feedCarbon', 'grazingOnFeed', 'eatenCarbon'),
  dead('feed nitrogen eaten', 'feedNitrogen', 'grazingOnFeed', 'eatenNitrogen'),
  dead('feed phosphorus eaten', 'feedPhosphorus', 'grazingOnFeed', 'eatenPhosphorus'),
];

/**
 * Food taken by all animals together: clearance [1/s] times pool, for each food; fungi are eaten with their leaves.
 * The clearance is set once a day by the animals' appetite, so a food that dwindles within the day is eaten ever more
 * slowly and never below nothing.
 * @source holling-1959 (clearance is the functional response divided by the food; set outside this process)
 */
export const grazing: Process<Readonly<Record<string, never>>> = {
  id: 'grazing',
  parameters: {},
  reads: [...new Set(BITES.flatMap((bite) => [bite.pool, bite.clearance]))],
  changes: [...new Set(BITES.map((bite) => bite.pool)), 'eatenCarbon', 'eatenNitrogen', 'eatenPhosphorus'],
  prepare(_parameters, setting) {
    const pools = Int32Array.from(BITES, (bite) => setting.index(bite.pool));
    const clearances = Int32Array.from(BITES, (bite) => setting.index(bite.clearance));
    return {
      reactions: BITES.map(({ name, stoichiometry }) => ({ name, stoichiometry })),
      evaluate(values, rates, offset) {
        for (let i = 0; i < pools.length; i += 1) {
          rates[offset + i] = values[clearances[i]!]! * values[pools[i]!]!;
        }
      },
    };
  },
};
