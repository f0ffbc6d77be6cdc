import { type PatankarNetwork, type PatankarStage, refreshReaction } from './patankar-network.ts';

/** Sweeps after which the equations are taken to be stiff and solved together. */
const MOST_SWEEPS = 12;

/** Sets every weight and factor to 1, every extent to its nominal one. */
function reset(stage: PatankarStage): void {
  stage.weight.fill(1);
  stage.factor.fill(1);
  stage.extent.set(stage.nominal);
}

/**
 * One Newton step for the weight of a single pool, all others held:
 *   sigma w + sum over consumers c h R min(w, others) = y^n + supply.
 * The left side is concave and rises, so the step never passes the root from below.
 */
function poolWeight(network: PatankarNetwork, stage: PatankarStage, p: number): number {
  const { consumerStart, consumer, consumed, producerStart, producer, produced, drawn } = network;
  const { nominal, extent, factor } = stage;
  const state = drawn[p]!;
  const weight = stage.weight[state]!;
  let supply = stage.begin[state]!;
  for (let e = producerStart[p]!; e < producerStart[p + 1]!; e += 1) {
    supply += produced[e]! * extent[producer[e]!]!;
  }
  let slope = stage.reference[state]!;
  let fixed = 0;
  for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1) {
    const reaction = consumer[e]!;
    if (factor[reaction]! >= weight) slope += consumed[e]! * nominal[reaction]!;
    else fixed += consumed[e]! * extent[reaction]!;
  }
  if (supply > fixed) return (supply - fixed) / slope;
  if (fixed === 0) return 0;
  let steepest = stage.reference[state]!;
  for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1)
    steepest += consumed[e]! * nominal[consumer[e]!]!;
  return supply / steepest;
}

/** Goes through the drawn pools once; true when no weight moved by more than its share `tolerance`. */
function sweep(network: PatankarNetwork, stage: PatankarStage, tolerance: number): boolean {
  const { drawn, consumerStart, consumer } = network;
  const { weight } = stage;
  let isSettled = true;
  for (let p = 0; p < drawn.length; p += 1) {
    const state = drawn[p]!;
    const before = weight[state]!;
    const after = poolWeight(network, stage, p);
    if (after === before) continue;
    if (Math.abs(after - before) > tolerance * after) isSettled = false;
    weight[state] = after;
    for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1) {
      refreshReaction(network, stage, consumer[e]!);
    }
  }
  return isSettled;
}

/**
 * Solves the weights of a stage by sweeps; true when they settled within `tolerance` [1, relative].
 * @source derived: nonlinear Gauss-Seidel, one Newton step per pool
 */
export function solveBySweeps(network: PatankarNetwork, stage: PatankarStage, tolerance: number): boolean {
  reset(stage);
  for (let k = 0; k < MOST_SWEEPS; k += 1) {
    if (sweep(network, stage, tolerance)) return true;
  }
  return false;
}
