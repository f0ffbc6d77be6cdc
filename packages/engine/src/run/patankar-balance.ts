import type { PatankarNetwork, PatankarStage } from './patankar-network.ts';

const MOST_REPAIRS = 20;
const EPSILON = 2.220446049250313e-16;
/** What a repair leaves in a pool, as a share of what passed through it. */
const MARGIN = 1e-12;

/** Below this a reference content is not divided by [unit of the states]. */
const LEAST_REFERENCE = 1e-200;

/** What the weights of a stage refer to. */
export interface StageReference {
  /** Contents by pool, of the start or of an earlier stage. */
  readonly contents: Float64Array;
  /** Sets sigma = y^2 / y^n, what contents at half the step point to at its end, no more than this times y; 0: sigma = y. */
  readonly mostGrowth: number;
}

function referenceOf({ contents, mostGrowth }: StageReference, begin: Float64Array, pool: number): number {
  const content = Math.max(contents[pool]!, LEAST_REFERENCE);
  if (mostGrowth === 0) return content;
  const start = begin[pool]!;
  return content < mostGrowth * start
    ? Math.max((content / start) * content, LEAST_REFERENCE)
    : mostGrowth * content;
}

/** Sets weights and factors back to 1 where the last stage moved them. */
function forgetWeights({ drawn, consumerStart, consumer }: PatankarNetwork, stage: PatankarStage): void {
  const { weight, factor, weighted, weightedCount } = stage;
  for (let k = 0; k < weightedCount; k += 1) {
    const p = weighted[k]!;
    weight[drawn[p]!] = 1;
    for (let e = consumerStart[p]!; e < consumerStart[p + 1]!; e += 1) factor[consumer[e]!] = 1;
  }
}

/**
 * Lists the pools to be weighted: those of which h R takes more than the share `explicitShare` of y^n. The rest keep
 * at least 1 - explicitShare of y^n whatever else happens, since the factors of reactions that take from them never
 * exceed 1. All factors and weights start from 1, extents from h R as they were proposed.
 * @source derived
 */
export function startStage(
  network: PatankarNetwork,
  stage: PatankarStage,
  explicitShare: number,
  reference: StageReference,
): void {
  const { drawn, consumerStart, consumer, consumed } = network;
  const { begin, nominal, weighted } = stage;
  forgetWeights(network, stage);
  let count = 0;
  for (let p = 0, e = 0; p < drawn.length; p += 1) {
    const end = consumerStart[p + 1]!;
    let loss = 0;
    for (; e < end; e += 1) loss += consumed[e]! * nominal[consumer[e]!]!;
    const pool = drawn[p]!;
    if (loss <= explicitShare * begin[pool]!) continue;
    weighted[count] = p;
    stage.reference[pool] = referenceOf(reference, begin, pool);
    count += 1;
  }
  stage.weightedCount = count;
}

/** y = y^n + S (h R phi) into `result`: every reaction is scaled as a whole, so what it moves stays in balance. */
export function sumUp(
  network: PatankarNetwork,
  { begin, extent }: PatankarStage,
  result: Float64Array,
): void {
  const { poolStart, reaction, coefficient } = network;
  for (let i = 0, e = 0; i < begin.length; i += 1) {
    const end = poolStart[i + 1]!;
    let content = begin[i]!;
    for (; e < end; e += 1) content += coefficient[e]! * extent[reaction[e]!]!;
    result[i] = content;
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
    const pool = drawn[p]!;
    const taken = takenFrom(network, extent, p);
    if (content[pool]! < 1e-4 * taken) {
      const solved = stage.weight[pool]! * stage.reference[pool]!;
      if (Math.abs(solved - content[pool]!) <= 4 * EPSILON * taken) content[pool] = solved;
    }
    if (content[pool]! < 0) isPositive = false;
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
    sumUp(network, stage, stage.content);
    if (settleRounding(network, stage)) return repairs;
    scaleDown(network, stage);
  }
  rationStart(network, stage);
  sumUp(network, stage, stage.content);
  return MOST_REPAIRS;
}
