import { binomialLogProbability, poissonLogProbability } from './discrete-densities.ts';
import { exp, log, log1p, pow } from './elementary.ts';

/** What the draws below are made from. */
export interface DrawSource {
  uniform(): number;
  normal(): number;
}

/** From this expected count on, rejection under a transformed uniform is faster than counting up. */
const MANY = 10;

/**
 * A draw from the gamma distribution of scale 1 [1], >= 0.
 * @param shape >= 0 [1]
 * @throws RangeError when the shape is negative or not finite
 * @source marsaglia-tsang-2000-gamma: cube of a shifted normal, with u^(1/shape) below shape 1
 */
export function gammaDraw(source: DrawSource, shape: number): number {
  if (!(shape >= 0 && shape < Number.POSITIVE_INFINITY)) throw new RangeError(`gamma draw of shape ${shape}`);
  if (shape === 0) return 0;
  if (shape < 1) return gammaDraw(source, shape + 1) * pow(1 - source.uniform(), 1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / (3 * Math.sqrt(d));
  for (;;) {
    const x = source.normal();
    const root = 1 + c * x;
    if (root <= 0) continue;
    const v = root * root * root;
    const u = 1 - source.uniform();
    if (log(u) < 0.5 * x * x + d * (1 - v + log(v))) return d * v;
  }
}

function poissonByCounting(source: DrawSource, mean: number): number {
  let left = source.uniform();
  let chance = exp(-mean);
  let k = 0;
  while (left >= chance && chance > 0) {
    left -= chance;
    k += 1;
    chance *= mean / k;
  }
  return k;
}

/** Transformed rejection with squeeze: Hörmann 1993, algorithm PTRS. */
function poissonByRejection(source: DrawSource, mean: number): number {
  const b = 0.931 + 2.53 * Math.sqrt(mean);
  const a = -0.059 + 0.02483 * b;
  const scale = 1.1239 + 1.1328 / (b - 3.4);
  const squeeze = 0.9277 - 3.6224 / (b - 2);
  for (;;) {
    const u = source.uniform() - 0.5;
    const v = 1 - source.uniform();
    const edge = 0.5 - Math.abs(u);
    const k = Math.floor(((2 * a) / edge + b) * u + mean + 0.43);
    if (edge >= 0.07 && v <= squeeze) return k;
    if (k < 0 || !(k < Number.POSITIVE_INFINITY) || (edge < 0.013 && v > edge)) continue;
    if (log((v * scale) / (a / (edge * edge) + b)) <= poissonLogProbability(k, mean)) return k;
  }
}

/**
 * A draw of the number of events where `mean` are expected [1], whole, >= 0.
 * @param mean >= 0 [1]
 * @throws RangeError when the mean is negative or not finite
 * @source hormann-1993, PTRS; counting up below a mean of 10
 */
export function poissonDraw(source: DrawSource, mean: number): number {
  if (!(mean >= 0 && mean < Number.POSITIVE_INFINITY)) throw new RangeError(`Poisson draw of mean ${mean}`);
  if (mean === 0) return 0;
  return mean < MANY ? poissonByCounting(source, mean) : poissonByRejection(source, mean);
}

function binomialByCounting(source: DrawSource, trials: number, chance: number): number {
  const odds = chance / (1 - chance);
  let left = source.uniform();
  let share = exp(trials * log1p(-chance));
  let k = 0;
  while (left >= share && k < trials) {
    left -= share;
    k += 1;
    share *= (odds * (trials - k + 1)) / k;
    if (share === 0) break;
  }
  return k;
}

/** Transformed rejection with squeeze: Hörmann 1993, algorithm BTRS. */
function binomialByRejection(source: DrawSource, trials: number, chance: number): number {
  const spread = Math.sqrt(trials * chance * (1 - chance));
  const b = 1.15 + 2.53 * spread;
  const a = -0.0873 + 0.0248 * b + 0.01 * chance;
  const centre = trials * chance + 0.5;
  const squeeze = 0.92 - 4.2 / b;
  const scale = (2.83 + 5.1 / b) * spread;
  const top = binomialLogProbability(Math.floor((trials + 1) * chance), trials, chance);
  for (;;) {
    const u = source.uniform() - 0.5;
    const v = 1 - source.uniform();
    const edge = 0.5 - Math.abs(u);
    const k = Math.floor(((2 * a) / edge + b) * u + centre);
    if (edge >= 0.07 && v <= squeeze) return k;
    if (k < 0 || k > trials) continue;
    if (log((v * scale) / (a / (edge * edge) + b)) <= binomialLogProbability(k, trials, chance) - top)
      return k;
  }
}

/**
 * A draw of the number of successes in `trials` [1], whole, 0 to trials.
 * @param trials whole number >= 0 [1]
 * @param chance of each [1], 0 to 1
 * @throws RangeError when the trials are negative or broken, or the chance lies outside 0 to 1
 * @source hormann-1993, BTRS; counting up below 10 expected
 */
export function binomialDraw(source: DrawSource, trials: number, chance: number): number {
  if (!(trials >= 0 && trials < Number.POSITIVE_INFINITY && Math.floor(trials) === trials)) {
    throw new RangeError(`binomial draw of ${trials} trials`);
  }
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`binomial draw of chance ${chance}`);
  if (chance > 0.5) return trials - binomialDraw(source, trials, 1 - chance);
  if (trials === 0 || chance === 0) return 0;
  const byCounting = trials * chance < MANY;
  return byCounting
    ? binomialByCounting(source, trials, chance)
    : binomialByRejection(source, trials, chance);
}
