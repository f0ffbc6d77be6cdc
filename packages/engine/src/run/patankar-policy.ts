import { factorise, solveFactorised } from '../numerics/linear.ts';
import type { PatankarNetwork, PatankarStage } from './patankar-network.ts';

const MOST_ROUNDS = 20;

/** Workspace of the joint solution of all weights. */
export interface PolicyWorkspace {
  readonly matrix: Float64Array;
  readonly right: Float64Array;
  readonly pivots: Int32Array;
  /** By reaction: the pool that limits it, -1 without reactants. */
  readonly limiting: Int32Array;
  /** By pool: its row among the weighted pools, -1 for others. */
  readonly row: Int32Array;
}

/** Workspace for a network. `derived`. */
export function policyWorkspace(network: PatankarNetwork): PolicyWorkspace {
  const n = network.drawn.length;
  return {
    matrix: new Float64Array(n * n),
    right: new Float64Array(n),
    pivots: new Int32Array(n),
    limiting: new Int32Array(network.reactionCount),
    row: new Int32Array(network.poolCount),
  };
}

/** Notes the limiting pool, factor and extent of every reaction; true when no limiting pool changed. */
function chooseLimiting(network: PatankarNetwork, stage: PatankarStage, work: PolicyWorkspace): boolean {
  const { reactantStart, reactant, reactionCount } = network;
  const { weight, nominal, factor, extent } = stage;
  let isSame = true;
  for (let reaction = 0; reaction < reactionCount; reaction += 1) {
    let limiting = -1;
    let least = 1;
    for (let e = reactantStart[reaction]!; e < reactantStart[reaction + 1]!; e += 1) {
      const candidate = weight[reactant[e]!]!;
      if (limiting >= 0 && candidate >= least) continue;
      limiting = reactant[e]!;
      least = candidate;
    }
    if (work.limiting[reaction] !== limiting && nominal[reaction]! > 0) isSame = false;
    work.limiting[reaction] = limiting;
    factor[reaction] = least;
    extent[reaction] = nominal[reaction]! * least;
  }
  return isSame;
}

/** The linear equations of the weighted pools' contents y for the limiting pools chosen. */
function assemble(network: PatankarNetwork, stage: PatankarStage, work: PolicyWorkspace): void {
  const { drawn, poolStart, reaction, coefficient } = network;
  const { matrix, right, limiting, row } = work;
  const n = stage.weightedCount;
  matrix.fill(0, 0, n * n);
  for (let k = 0; k < n; k += 1) {
    const pool = drawn[stage.weighted[k]!]!;
    matrix[k * n + k] = 1;
    right[k] = stage.begin[pool]!;
    for (let e = poolStart[pool]!; e < poolStart[pool + 1]!; e += 1) {
      const r = reaction[e]!;
      const amount = coefficient[e]! * stage.nominal[r]!;
      if (amount === 0) continue;
      const limit = limiting[r]!;
      const column = limit < 0 ? -1 : row[limit]!;
      if (column < 0) right[k] = right[k]! + amount;
      else matrix[k * n + column] = matrix[k * n + column]! - amount / stage.reference[limit]!;
    }
  }
}

/** Takes over the contents found; a pool that came out negative is kept, much smaller, so that it limits next time. */
function takeOver(network: PatankarNetwork, stage: PatankarStage, work: PolicyWorkspace): boolean {
  let isPositive = true;
  for (let k = 0; k < stage.weightedCount; k += 1) {
    const pool = network.drawn[stage.weighted[k]!]!;
    const content = work.right[k]!;
    if (content >= 0) {
      stage.weight[pool] = content / stage.reference[pool]!;
    } else {
      stage.weight[pool] = stage.weight[pool]! * 1e-3;
      isPositive = false;
    }
  }
  return isPositive;
}

/**
 * Solves the weights of a stage together, starting from those present: guess each reaction's limiting pool, solve
 * the linear equations, guess again. True when the guess held and every pool came out >= 0.
 * @source derived: policy iteration on the least weight
 */
export function solveTogether(
  network: PatankarNetwork,
  stage: PatankarStage,
  work: PolicyWorkspace,
): boolean {
  const n = stage.weightedCount;
  work.row.fill(-1);
  for (let k = 0; k < n; k += 1) work.row[network.drawn[stage.weighted[k]!]!] = k;
  chooseLimiting(network, stage, work);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    assemble(network, stage, work);
    factorise(work.matrix, work.pivots, n);
    solveFactorised(work.matrix, work.pivots, work.right, n);
    const isPositive = takeOver(network, stage, work);
    const isSame = chooseLimiting(network, stage, work);
    if (isSame && isPositive) return true;
  }
  return false;
}
