import { factorise, solveFactorised } from '../numerics/linear.ts';
import { type PatankarNetwork, type PatankarStage, refreshReaction } from './patankar-network.ts';

const MOST_ROUNDS = 20;

/** Workspace of the joint solution of all weights. */
export interface PolicyWorkspace {
  readonly matrix: Float64Array;
  readonly right: Float64Array;
  readonly pivots: Int32Array;
  /** By reaction: position of its limiting pool among the drawn ones, -1 without reactants. */
  readonly limiting: Int32Array;
  /** By state: position among the drawn pools, -1 for others. */
  readonly position: Int32Array;
}

/** Workspace for a network. `derived`. */
export function policyWorkspace(network: PatankarNetwork): PolicyWorkspace {
  const n = network.drawn.length;
  const position = new Int32Array(network.stateCount).fill(-1);
  network.drawn.forEach((state, p) => {
    position[state] = p;
  });
  return {
    matrix: new Float64Array(n * n),
    right: new Float64Array(n),
    pivots: new Int32Array(n),
    limiting: new Int32Array(network.reactionCount),
    position,
  };
}

/** Notes the limiting pool of every reaction; true when none changed. */
function chooseLimiting(network: PatankarNetwork, stage: PatankarStage, work: PolicyWorkspace): boolean {
  const { reactantStart, reactant, reactionCount } = network;
  const { weight, nominal } = stage;
  let isSame = true;
  for (let reaction = 0; reaction < reactionCount; reaction += 1) {
    const from = reactantStart[reaction]!;
    const end = reactantStart[reaction + 1]!;
    if (from === end) {
      work.limiting[reaction] = -1;
      continue;
    }
    let least = reactant[from]!;
    for (let e = from + 1; e < end; e += 1) {
      if (weight[reactant[e]!]! < weight[least]!) least = reactant[e]!;
    }
    const chosen = work.position[least]!;
    if (work.limiting[reaction] !== chosen && nominal[reaction]! > 0) isSame = false;
    work.limiting[reaction] = chosen;
  }
  return isSame;
}

/** The linear equations of the pools' contents y for the limiting pools chosen. */
function assemble(network: PatankarNetwork, stage: PatankarStage, work: PolicyWorkspace): void {
  const { drawn, reactionCount, start, index, coefficient } = network;
  const { matrix, right, limiting, position } = work;
  const n = drawn.length;
  matrix.fill(0);
  for (let p = 0; p < n; p += 1) {
    matrix[p * n + p] = 1;
    right[p] = stage.begin[drawn[p]!]!;
  }
  for (let reaction = 0; reaction < reactionCount; reaction += 1) {
    const nominal = stage.nominal[reaction]!;
    if (nominal === 0) continue;
    const column = limiting[reaction]!;
    const share = column < 0 ? nominal : nominal / stage.reference[drawn[column]!]!;
    for (let e = start[reaction]!; e < start[reaction + 1]!; e += 1) {
      const row = position[index[e]!]!;
      if (row < 0) continue;
      if (column < 0) right[row] = right[row]! + coefficient[e]! * share;
      else matrix[row * n + column] = matrix[row * n + column]! - coefficient[e]! * share;
    }
  }
}

/** Takes over the contents found; a pool that came out negative is kept, much smaller, so that it limits next time. */
function takeOver(network: PatankarNetwork, stage: PatankarStage, work: PolicyWorkspace): boolean {
  const { drawn, reactantStart, reactionCount } = network;
  let isPositive = true;
  for (let p = 0; p < drawn.length; p += 1) {
    const state = drawn[p]!;
    const content = work.right[p]!;
    if (content >= 0) {
      stage.weight[state] = content / stage.reference[state]!;
    } else {
      stage.weight[state] = stage.weight[state]! * 1e-3;
      isPositive = false;
    }
  }
  for (let reaction = 0; reaction < reactionCount; reaction += 1) {
    if (reactantStart[reaction]! < reactantStart[reaction + 1]!) refreshReaction(network, stage, reaction);
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
  chooseLimiting(network, stage, work);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    assemble(network, stage, work);
    factorise(work.matrix, work.pivots, network.drawn.length);
    solveFactorised(work.matrix, work.pivots, work.right);
    const isPositive = takeOver(network, stage, work);
    const isSame = chooseLimiting(network, stage, work);
    if (isSame && isPositive) return true;
  }
  return false;
}
