import type { PatankarNetwork, PatankarStage } from './patankar-network.ts';

/** Sweeps after which the equations are solved together instead. */
const MOST_SWEEPS = 10;
/** Losses per step, relative to the content, beyond which sweeps may stand still short of the solution. */
const STIFF = 1e3;

interface SweepResult {
  /** Largest relative change of a weight [1]. */
  change: number;
  /** Largest loss per step, relative to the content [1]. */
  loss: number;
}

/**
 * Goes through the weighted pools once. Notes the largest relative change of a weight and the largest loss per step
 * relative to the content. For each pool in turn it takes one Newton step, all other weights
 * held, towards the root of
 *   sigma w + sum over consumers c h R min(w, others) = y^n + supply.
 * The left side is concave and rises, so the step never passes the root from below; where it would leave the
 * positive range, the step starts from w = 0 instead, where the slope is steepest. One function, since calls would
 * cost as much as the work.
 */
function sweep(network: PatankarNetwork, stage: PatankarStage, result: SweepResult): void {
  const { drawn, consumerStart, consumer, consumed, producerStart, producer, produced } = network;
  const { reactantStart, reactant } = network;
  const { begin, reference, nominal, weight, factor, extent, weighted, weightedCount } = stage;
  let largest = 0;
  let fastest = 0;
  for (let q = 0; q < weightedCount; q += 1) {
    const p = weighted[q]!;
    const pool = drawn[p]!;
    const before = weight[pool]!;
    const firstConsumer = consumerStart[p]!;
    const endConsumer = consumerStart[p + 1]!;
    const endProducer = producerStart[p + 1]!;

    let supply = begin[pool]!;
    for (let e = producerStart[p]!; e < endProducer; e += 1) supply += produced[e]! * extent[producer[e]!]!;
    let slope = reference[pool]!;
    let fixed = 0;
    for (let e = firstConsumer; e < endConsumer; e += 1) {
      const reaction = consumer[e]!;
      if (factor[reaction]! >= before) slope += consumed[e]! * nominal[reaction]!;
      else fixed += consumed[e]! * extent[reaction]!;
    }
    if (slope > (1 + fastest) * reference[pool]!) fastest = slope / reference[pool]! - 1;
    let after = (supply - fixed) / slope;
    if (!(after > 0)) {
      slope = reference[pool]!;
      for (let e = firstConsumer; e < endConsumer; e += 1) slope += consumed[e]! * nominal[consumer[e]!]!;
      after = supply / slope;
    }
    if (after === before) continue;

    const change = Math.abs(after - before);
    if (change > largest * after) largest = change / after;
    weight[pool] = after;
    for (let e = firstConsumer; e < endConsumer; e += 1) {
      const reaction = consumer[e]!;
      let least = factor[reaction]!;
      if (after < least) least = after;
      else if (least < before) continue;
      else {
        least = after;
        for (let k = reactantStart[reaction]!; k < reactantStart[reaction + 1]!; k += 1) {
          const candidate = weight[reactant[k]!]!;
          if (candidate < least) least = candidate;
        }
      }
      factor[reaction] = least;
      extent[reaction] = nominal[reaction]! * least;
    }
  }
  result.change = largest;
  result.loss = fastest;
}

const swept: SweepResult = { change: 0, loss: 0 };

/**
 * Solves the weights of a stage by sweeps, starting from 1; true when the error left, judged by how fast the
 * changes shrink, is within `tolerance` [1, relative]. After the first sweep they are taken to shrink as the
 * implicit step damps the fastest pool.
 * @source derived: nonlinear Gauss-Seidel, one Newton step per pool
 */
export function solveBySweeps(network: PatankarNetwork, stage: PatankarStage, tolerance: number): boolean {
  let previous = 0;
  for (let k = 0; k < MOST_SWEEPS; k += 1) {
    sweep(network, stage, swept);
    const { change, loss } = swept;
    if (loss > STIFF) return false;
    const shrinking = k === 0 ? loss / (1 + loss) : change / previous;
    if (shrinking < 1 && change * shrinking <= tolerance * (1 - shrinking)) return true;
    previous = change;
  }
  return false;
}
