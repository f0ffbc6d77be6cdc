import { binomialDraw, gammaDraw, poissonDraw } from './draws.ts';
import { log } from './elementary.ts';
import { keyOfSeed, keyOfStream, nextBits, stateOfKey } from './xoshiro.ts';
import { standardNormal } from './ziggurat.ts';

/** A stream of random numbers; the same seed and stream give the same draws in every JavaScript engine. */
export interface Random {
  /** Uniform [1], 0 <= u < 1, in steps of 2^-53. */
  uniform(): number;
  /** Standard normal [1]. */
  normal(): number;
  /** Exponential with mean 1 [1], >= 0. */
  exponential(): number;
  /** Gamma with the given shape >= 0 and scale 1 [1]. @throws RangeError */
  gamma(shape: number): number;
  /** Number of events where `mean` >= 0 are expected. @throws RangeError */
  poisson(mean: number): number;
  /** Number of successes in `trials` (whole, >= 0) of chance 0 to 1 each. @throws RangeError */
  binomial(trials: number, chance: number): number;
  /** The stream of that name below this one; it does not depend on what was drawn from this one. */
  split(name: string): Random;
}

function streamOf(key: Int32Array): Random {
  const state = stateOfKey(key);
  const uniform = (): number => {
    const high = nextBits(state) >>> 5;
    return (high * 67108864 + (nextBits(state) >>> 6)) * (1 / 9007199254740992);
  };
  const normal = (): number => standardNormal(state);
  const source = { uniform, normal };
  return {
    uniform,
    normal,
    exponential: () => -log(1 - uniform()),
    gamma: (shape) => gammaDraw(source, shape),
    poisson: (mean) => poissonDraw(source, mean),
    binomial: (trials, chance) => binomialDraw(source, trials, chance),
    split: (name) => streamOf(keyOfStream(key, name)),
  };
}

/**
 * A stream of random numbers [1], independent of every stream of another seed or name.
 * @param seed finite number [1]
 * @param stream name of the stream
 * @throws RangeError when the seed is not finite
 * @source blackman-vigna-2021, xoshiro128**; the key hashed from seed and name
 */
export function createRandom(seed: number, stream: string): Random {
  if (!Number.isFinite(seed)) throw new RangeError(`seed ${seed} is not a number`);
  return streamOf(keyOfStream(keyOfSeed(seed), stream));
}
