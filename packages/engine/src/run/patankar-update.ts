import type { PatankarNetwork, PatankarStage } from './patankar-network.ts';

const MOST_REPAIRS = 20;
const EPSILON = 2.220446049250313e-16;
/** What a repair leaves in a pool, as a share of what passed through it. */
const MARGIN = 1e-12;

/** By state: content after the step, and everything that came, went or was there. */
export interface UpdateWorkspace {
  readonly content: Float64Array;
  readonly throughput: Float64Array;
}

/** y = y^n + S (h R phi), every reaction scaled as a whole; true when no pool is negative. */
function sumUp(network: PatankarNetwork, stage: PatankarStage, work: UpdateWorkspace): boolean {
  const { stateCount, reactionCount, start, index, coefficient } = network;
  const { content, throughput } = work;
  for (let state = 0; state < stateCount; state += 1) {
    content[state] = stage.begin[state]!;
    throughput[state] = stage.begin[state]!;
  }
  for (let reaction = 0; reaction < reactionCount; reaction += 1) {
    const extent = stage.extent[reaction]!;
    if (extent === 0) continue;
    for (let e = start[reaction]!; e < start[reaction + 1]!; e += 1) {
      const state = index[e]!;
      const amount = coefficient[e]! * extent;
      content[state] = content[state]! + amount;
      throughput[state] = throughput[state]! + Math.abs(amount);
    }
  }
  return settleRounding(network, stage, work);
}

/**
 * Where almost all that passes through a pool leaves it again, the sum keeps few digits of the rest; the solved
 * weight keeps them all. It is taken where both agree to the rounding of the sum, so that the balance is as exact.
 */
function settleRounding(network: PatankarNetwork, stage: PatankarStage, work: UpdateWorkspace): boolean {
  const { drawn, consumerStart, producerStart } = network;
  const { content, throughput } = work;
  let isPositive = true;
  for (let p = 0; p < drawn.length; p += 1) {
    const state = drawn[p]!;
    if (content[state]! < 1e-4 * throughput[state]!) {
      const solved = stage.weight[state]! * stage.reference[state]!;
      const terms = consumerStart[p + 1]! - consumerStart[p]! + producerStart[p + 1]! - producerStart[p]!;
      const rounding = EPSILON * (terms + 2) * throughput[state]!;
      if (Math.abs(solved - content[state]!) <= rounding) content[state] = solved;
    }
    if (content[state]! < 0) isPositive = false;
  }
  return isPositive;
}

/** Scales down every reaction that overdraws a pool, so far that the pool would keep a rest. */
function scaleDown(network: PatankarNetwork, stage: PatankarStage, work: UpdateWorkspace): void {
  const { drawn, consumerStart, consumer, consumed } = network;
  for (let p = 0; p < drawn.length; p += 1) {
    const left = work.content[drawn[p]!]!;
    if (left >= 0) continue;
    let taken = 0;
    for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1) {
      taken += consumed[e]! * stage.extent[consumer[e]!]!;
    }
    const share = Math.max(0, (1 + left / taken) * (1 - MARGIN) - MARGIN);
    for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1) {
      const reaction = consumer[e]!;
      stage.extent[reaction] = stage.extent[reaction]! * share;
    }
  }
}

/** Lets no reaction take more than its share of what each pool held at the start: nothing can be overdrawn. */
function rationStart(network: PatankarNetwork, stage: PatankarStage): void {
  const { drawn, consumerStart, consumer, consumed } = network;
  for (let p = 0; p < drawn.length; p += 1) {
    let taken = 0;
    for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1) {
      taken += consumed[e]! * stage.extent[consumer[e]!]!;
    }
    const held = stage.begin[drawn[p]!]! * (1 - MARGIN);
    if (taken <= held) continue;
    for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1) {
      const reaction = consumer[e]!;
      stage.extent[reaction] = stage.extent[reaction]! * (held / taken);
    }
  }
}

/**
 * Forms the state after the step in `work.content` from the stage's extents, and returns how often reactions had
 * to be scaled down further to keep every pool >= 0; 0 when the weights were solved.
 * @source derived
 */
export function formUpdate(network: PatankarNetwork, stage: PatankarStage, work: UpdateWorkspace): number {
  for (let repairs = 0; repairs < MOST_REPAIRS; repairs += 1) {
    if (sumUp(network, stage, work)) return repairs;
    scaleDown(network, stage, work);
  }
  rationStart(network, stage);
  sumUp(network, stage, work);
  return MOST_REPAIRS;
}
