import type { PatankarNetwork, PatankarStage } from './patankar-network.ts';

const MOST_REPAIRS = 20;
const EPSILON = 2.220446049250313e-16;
/** What a repair leaves in a pool, as a share of what passed through it. */
const MARGIN = 1e-12;

/**
 * Sets all factors to 1, forms the explicit content y^n + S (h R), and lists the pools to be weighted: those of
 * which more than the share `explicitShare` of y^n would be taken. The rest keep at least 1 - explicitShare of
 * y^n whatever else happens, since factors of reactions that take from them never exceed 1.
 * @source derived
 */
export function startStage(network: PatankarNetwork, stage: PatankarStage, explicitShare: number): void {
  const { drawn, consumerStart, consumer, consumed, stateCount, reactionCount } = network;
  const { begin, nominal, weight, factor, extent, weighted } = stage;
  for (let state = 0; state < stateCount; state += 1) weight[state] = 1;
  for (let reaction = 0; reaction < reactionCount; reaction += 1) {
    factor[reaction] = 1;
    extent[reaction] = nominal[reaction]!;
  }
  let count = 0;
  let e = 0;
  for (let p = 0; p < drawn.length; p += 1) {
    let taken = 0;
    for (const end = consumerStart[p + 1]!; e < end; e += 1) taken += consumed[e]! * nominal[consumer[e]!]!;
    if (taken > explicitShare * begin[drawn[p]!]!) {
      weighted[count] = p;
      count += 1;
    }
  }
  stage.weightedCount = count;
}

/** y = y^n + S (h R phi): every reaction is scaled as a whole, so what it moves stays in balance. */
export function sumUp(network: PatankarNetwork, stage: PatankarStage): void {
  const { stateCount, reactionCount, start, index, coefficient } = network;
  const { begin, extent, content } = stage;
  for (let state = 0; state < stateCount; state += 1) content[state] = begin[state]!;
  let e = 0;
  for (let reaction = 0; reaction < reactionCount; reaction += 1) {
    const amount = extent[reaction]!;
    for (const end = start[reaction + 1]!; e < end; e += 1) {
      const state = index[e]!;
      content[state] = content[state]! + coefficient[e]! * amount;
    }
  }
}

/** What the pool at position p loses to all its consumers. */
function takenFrom(
  { consumerStart, consumer, consumed }: PatankarNetwork,
  extent: Float64Array,
  p: number,
): number {
  let taken = 0;
  for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1)
    taken += consumed[e]! * extent[consumer[e]!]!;
  return taken;
}

function scaleConsumers(
  { consumerStart, consumer }: PatankarNetwork,
  extent: Float64Array,
  p: number,
  share: number,
): void {
  for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1) {
    const reaction = consumer[e]!;
    extent[reaction] = extent[reaction]! * share;
  }
}

/**
 * Where almost all that passes through a pool leaves it again, the sum keeps few digits of the rest; the solved
 * weight keeps them all. It is taken where both agree to the rounding of the sum, so that the balance is as exact.
 * Returns true when no pool is negative.
 */
function settleRounding(network: PatankarNetwork, stage: PatankarStage): boolean {
  const { drawn } = network;
  const { content, extent, weighted, weightedCount } = stage;
  let isPositive = true;
  for (let k = 0; k < weightedCount; k += 1) {
    const p = weighted[k]!;
    const state = drawn[p]!;
    const taken = takenFrom(network, extent, p);
    if (content[state]! < 1e-4 * taken) {
      const solved = stage.weight[state]! * stage.reference[state]!;
      if (Math.abs(solved - content[state]!) <= 4 * EPSILON * taken) content[state] = solved;
    }
    if (content[state]! < 0) isPositive = false;
  }
  return isPositive;
}

/** Scales down every reaction that overdraws a pool, so far that the pool would keep a rest. */
function scaleDown(network: PatankarNetwork, stage: PatankarStage): void {
  for (let k = 0; k < stage.weightedCount; k += 1) {
    const p = stage.weighted[k]!;
    const left = stage.content[network.drawn[p]!]!;
    if (left >= 0) continue;
    const taken = takenFrom(network, stage.extent, p);
    scaleConsumers(network, stage.extent, p, Math.max(0, (1 + left / taken) * (1 - MARGIN) - MARGIN));
  }
}

/** Lets no reaction take more than its share of what each pool held at the start: nothing can be overdrawn. */
function rationStart(network: PatankarNetwork, stage: PatankarStage): void {
  for (let k = 0; k < stage.weightedCount; k += 1) {
    const p = stage.weighted[k]!;
    const taken = takenFrom(network, stage.extent, p);
    const held = stage.begin[network.drawn[p]!]! * (1 - MARGIN);
    if (taken > held) scaleConsumers(network, stage.extent, p, held / taken);
  }
}

/**
 * Forms the state after the step in `stage.content` from the stage's extents, and returns how often reactions had
 * to be scaled down further to keep every pool >= 0; 0 when the weights were solved.
 * @source derived
 */
export function formUpdate(network: PatankarNetwork, stage: PatankarStage): number {
  for (let repairs = 0; repairs < MOST_REPAIRS; repairs += 1) {
    sumUp(network, stage);
    if (settleRounding(network, stage)) return repairs;
    scaleDown(network, stage);
  }
  rationStart(network, stage);
  sumUp(network, stage);
  return MOST_REPAIRS;
}
