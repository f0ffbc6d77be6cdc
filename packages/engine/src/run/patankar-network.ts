import type { ReactionSystem } from '../process/compose.ts';

/** What the integrator needs of a reaction system. */
export type ReactionRows = Pick<ReactionSystem, 'start' | 'index' | 'coefficient'>;

/**
 * The stoichiometry of a reaction system, sorted for sweeps over pools. Only states that some reaction changes take part;
 * they are numbered in their order as pools. "Drawn" pools are consumed by some reaction.
 */
export interface PatankarNetwork {
  /** The pools' state indices, ascending. */
  readonly pools: Int32Array;
  readonly poolCount: number;
  readonly reactionCount: number;
  /** By pool: the reactions that change it, in their order, and by how much per unit of extent. */
  readonly poolStart: Int32Array;
  readonly reaction: Int32Array;
  readonly coefficient: Float64Array;
  /** By reaction: the pools it consumes. */
  readonly reactantStart: Int32Array;
  readonly reactant: Int32Array;
  /** Drawn pools; the rows below are in their order. */
  readonly drawn: Int32Array;
  /** Reactions that consume the pool, and how much per unit of extent, > 0. */
  readonly consumerStart: Int32Array;
  readonly consumer: Int32Array;
  readonly consumed: Float64Array;
  /** Reactions that produce the pool, and how much per unit of extent, > 0. */
  readonly producerStart: Int32Array;
  readonly producer: Int32Array;
  readonly produced: Float64Array;
}

interface Entry {
  readonly reaction: number;
  readonly pool: number;
  readonly coefficient: number;
}

function poolsOf({ start, index }: ReactionRows, stateCount: number): number[] {
  const changed = index.subarray(0, start[start.length - 1]);
  for (const state of changed) {
    if (!(state >= 0 && state < stateCount))
      throw new RangeError(`a reaction changes value ${state}, not a state`);
  }
  return [...new Set(changed)].sort((a, b) => a - b);
}

function entriesOf({ start, index, coefficient }: ReactionRows, pools: readonly number[]): Entry[] {
  const entries: Entry[] = [];
  const place = new Map(pools.map((state, pool) => [state, pool]));
  for (let reaction = 0; reaction + 1 < start.length; reaction += 1) {
    for (let e = start[reaction]!; e < start[reaction + 1]!; e += 1) {
      entries.push({ reaction, pool: place.get(index[e]!)!, coefficient: coefficient[e]! });
    }
  }
  return entries;
}

/** Entries by a key from 0 to below `count`, in their order. */
function grouped(entries: readonly Entry[], count: number, key: (entry: Entry) => number): Entry[][] {
  const groups = Array.from({ length: count }, (): Entry[] => []);
  for (const entry of entries) groups[key(entry)]!.push(entry);
  return groups;
}

/** Compressed rows: the entries of each key in turn. */
function rows<T>(count: number, groups: readonly (readonly T[])[]): { start: Int32Array; items: T[] } {
  const start = new Int32Array(count + 1);
  groups.forEach((group, k) => {
    start[k + 1] = start[k]! + group.length;
  });
  return { start, items: groups.flat() };
}

/**
 * The network of a reaction system.
 * @param system reactions in compressed rows
 * @param stateCount number of states at the head of the value array
 * @throws RangeError when a reaction changes something that is not a state
 * @source derived
 */
export function patankarNetwork(system: ReactionRows, stateCount: number): PatankarNetwork {
  const pools = poolsOf(system, stateCount);
  const entries = entriesOf(system, pools);
  const reactionCount = system.start.length - 1;
  const consuming = entries.filter((entry) => entry.coefficient < 0);
  const producing = entries.filter((entry) => entry.coefficient > 0);
  const drawn = [...new Set(consuming.map((entry) => entry.pool))].sort((a, b) => a - b);
  const byPool = (some: readonly Entry[]): Entry[][] => grouped(some, pools.length, ({ pool }) => pool);
  const reactants = rows(
    reactionCount,
    grouped(consuming, reactionCount, ({ reaction }) => reaction),
  );
  const changes = rows(pools.length, byPool(entries));
  const ofDrawn = (groups: readonly Entry[][]): Entry[][] => drawn.map((pool) => groups[pool]!);
  const consumers = rows(drawn.length, ofDrawn(byPool(consuming)));
  const producers = rows(drawn.length, ofDrawn(byPool(producing)));
  return {
    pools: Int32Array.from(pools),
    poolCount: pools.length,
    reactionCount,
    poolStart: changes.start,
    reaction: Int32Array.from(changes.items, (entry) => entry.reaction),
    coefficient: Float64Array.from(changes.items, (entry) => entry.coefficient),
    reactantStart: reactants.start,
    reactant: Int32Array.from(reactants.items, (entry) => entry.pool),
    drawn: Int32Array.from(drawn),
    consumerStart: consumers.start,
    consumer: Int32Array.from(consumers.items, (entry) => entry.reaction),
    consumed: Float64Array.from(consumers.items, (entry) => -entry.coefficient),
    producerStart: producers.start,
    producer: Int32Array.from(producers.items, (entry) => entry.reaction),
    produced: Float64Array.from(producers.items, (entry) => entry.coefficient),
  };
}

/** The numbers of one stage; arrays by pool or by reaction, reused in every step. */
export interface PatankarStage {
  /** Contents at the start of the step, y^n. */
  readonly begin: Float64Array;
  /** What the weights refer to, sigma, > 0; set for pools that are weighted. */
  readonly reference: Float64Array;
  /** Unweighted extents h R. */
  readonly nominal: Float64Array;
  /** Positions, among the drawn pools, of those whose weight is solved for; `weightedCount` of them hold. */
  readonly weighted: Int32Array;
  weightedCount: number;
  /** Weights w = y / sigma by pool; 1 for pools that are not weighted. */
  readonly weight: Float64Array;
  /** Factors phi by reaction: the least weight among its reactants, 1 without reactants. */
  readonly factor: Float64Array;
  /** Weighted extents h R phi. */
  readonly extent: Float64Array;
  /** y^n + S (h R phi). */
  readonly content: Float64Array;
}

/** Room for the stages of a network. `derived`. */
export function patankarStage({ poolCount, reactionCount, drawn }: PatankarNetwork): PatankarStage {
  return {
    begin: new Float64Array(poolCount),
    reference: new Float64Array(poolCount),
    nominal: new Float64Array(reactionCount),
    weighted: new Int32Array(drawn.length),
    weightedCount: 0,
    weight: new Float64Array(poolCount).fill(1),
    factor: new Float64Array(reactionCount).fill(1),
    extent: new Float64Array(reactionCount),
    content: new Float64Array(poolCount),
  };
}
