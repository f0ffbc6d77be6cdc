import { lifeOfMatrix, type Matrix, projectionOf, renewalOf, stepOf } from '@shoreglass/engine';
import { developBroods } from '../../packages/engine/src/life/breeding.ts';
import { addBrood } from '../../packages/engine/src/life/brood-train.ts';
import { EXPECTED } from '../../packages/engine/src/life/demography.ts';
import { GRAZER } from '../../packages/engine/src/life/life-test-kit.ts';
import { clearDay, createLivingPopulation } from '../../packages/engine/src/life/living-population.ts';
import { poissonLogProbability } from '../../packages/engine/src/numerics/discrete-densities.ts';
import { factorise, solveFactorised } from '../../packages/engine/src/numerics/linear.ts';
import type { Calculation } from '../harness/check.ts';
import { figuresOf } from './answers.ts';

/** Rates [1/time] at which one of stage j adds to stage i; on the diagonal the rate at which j is left, below 0. */
type Rates = number[][];

const none = (n: number): Rates => Array.from({ length: n }, () => new Array<number>(n).fill(0));

/** As a matrix of short steps, which has the same long run: I + h Q. */
function inSteps(rates: Rates): { matrix: Matrix; step: number } {
  const step = 0.5 / Math.max(...rates.map((row, i) => Math.abs(row[i]!)));
  return {
    step,
    matrix: rates.map((row, i) => row.map((rate, j) => (i === j ? 1 : 0) + step * rate)),
  };
}

/** Growth rate in continuous time [1/time]. */
function rateOf(rates: Rates): number {
  const { matrix, step } = inSteps(rates);
  return (projectionOf(matrix)!.growth - 1) / step;
}

/** Numbers after a time: the mean over a Poisson number of short steps, which is exact. */
function after(rates: Rates, start: readonly number[], time: number): number[] {
  const { matrix, step } = inSteps(rates);
  const mean = time / step;
  let numbers: number[] = [...start];
  let sum = start.map(() => 0);
  for (let k = 0; k < mean + 12 * Math.sqrt(mean) + 60; k += 1) {
    const weight = Math.exp(poissonLogProbability(k, mean));
    sum = sum.map((each, i) => each + weight * numbers[i]!);
    numbers = stepOf(matrix, numbers);
  }
  return sum;
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

function chain(stages: number, duration: number, mortality: number): Rates {
  const rates = none(stages);
  const pace = stages / duration;
  for (let i = 0; i < stages; i += 1) {
    rates[i]![i] = -(pace + mortality);
    if (i > 0) rates[i]![i - 1] = pace;
  }
  return rates;
}

/** Part that gets through a chain of stages: young borne on leaving the last, by one that enters the first. */
function partThrough(rates: Rates, pace: number): number {
  const { matrix, step } = inSteps(rates);
  const n = matrix.length;
  const births = [0, ...matrix.map((_, j) => (j === n - 1 ? pace * step : 0))];
  return lifeOfMatrix([births, ...matrix.map((row, i) => [i === 0 ? 1 : 0, ...row])]).netReproduction;
}

const SLICE = 0.1;

/** Mean and variance of the time spent in a chain, by Simpson's rule over who is still in it. */
function timesIn(rates: Rates, duration: number): { mean: number; variance: number } {
  const slice = SLICE * (duration / 10);
  const step = Array.from({ length: rates.length }, (_, j) =>
    after(
      rates,
      rates.map((_row, i) => (i === j ? 1 : 0)),
      slice,
    ),
  );
  const advance: Matrix = rates.map((_, i) => step.map((column) => column[i]!));
  let numbers = rates.map((_, i): number => (i === 0 ? 1 : 0));
  let mean = 0;
  let second = 0;
  const slices = 4000;
  for (let k = 0; k <= slices; k += 1) {
    const weight = (slice / 3) * (k === 0 || k === slices ? 1 : k % 2 === 1 ? 4 : 2);
    mean += weight * total(numbers);
    second += weight * 2 * k * slice * total(numbers);
    numbers = stepOf(advance, numbers);
  }
  return { mean, variance: second - mean * mean };
}

/** Part that eggs of one fixed time let through, on the code of an enclosure's broods, which moves them by whole days. */
function partHatched(duration: number, mortality: number): number {
  const population = createLivingPopulation(
    { id: 'eggs', traits: { mating: 'self-fertile', brood: 'laid' } },
    { ...GRAZER, broodTime: duration, broodLoss: mortality },
  );
  addBrood(population.broods, LAID, 0);
  let born = 0;
  for (let day = 0; day < 2 * duration + 2; day += 1) {
    clearDay(population.day);
    developBroods(population, { temperature: 20, rate: 1, outside: 0, adultsLost: 0 }, EXPECTED);
    born += population.day.born;
  }
  return born / LAID;
}

const LAID = 1000;

/** A stage of k sub-stages by the stage matrices of life tables, and of fixed length by the code of broods. */
export const chainFigures: Calculation = (inputs, wanted) => {
  const stages = inputs.number('substages', '-');
  const duration = inputs.number('mean_duration', '-');
  const mortality = inputs.number('mortality', '-');
  const bare = chain(stages, duration, 0);
  const { mean, variance } = timesIn(bare, duration);
  const start = bare.map((_, i) => (i === 0 ? 1 : 0));
  const done = [...wanted.keys()].flatMap((name) => {
    const by = /^P_done_by_(\d+(?:\.\d+)?)$/.exec(name)?.[1];
    return by === undefined ? [] : [[name, 1 - total(after(bare, start, Number(by)))] as const];
  });
  return figuresOf({
    variance,
    cv: Math.sqrt(variance) / mean,
    fixed_delay_limit: partHatched(duration, mortality),
    survival_through_stage: partThrough(chain(stages, duration, mortality), stages / duration),
    ...Object.fromEntries(done),
  });
};

/** Growth with a delay of fixed length before breeding, from a life table in slices of a fiftieth of a day. */
function delayed(birth: number, delay: number, { young, adult }: { young: number; adult: number }): number {
  const slice = 0.02;
  const slices = Math.ceil(30 / adult / slice);
  const ages = Array.from({ length: slices }, (_, i) => delay + (i + 0.5) * slice);
  const births = ages.map((age) => birth * slice * Math.exp(-young * delay - adult * (age - delay)));
  return renewalOf({ ages, births })!.growthRate;
}

/** Growth of a population whose young ripen through k sub-stages. */
export const ripeningFigures: Calculation = (inputs) => {
  const birth = inputs.number('birth', '-');
  const young = inputs.number('juvenile_mortality', '-');
  const adult = inputs.number('adult_mortality', '-');
  const duration = inputs.number('maturation_mean', '-');
  const byStages = inputs.numbers('substages', '-').map((stages) => {
    const rates = chain(stages, duration, young).map((row) => [...row, 0]);
    rates[0]![stages] = birth;
    rates.push([...new Array<number>(stages - 1).fill(0), stages / duration, -adult]);
    return [`r.${stages}`, rateOf(rates)] as const;
  });
  return figuresOf({
    ...Object.fromEntries(byStages),
    'r.delay': delayed(birth, duration, { young, adult }),
  });
};

/** Rates between numbers 1 … cap of a logistic birth-death population; none is left out, it is the end. */
function logisticRates(birth: number, death: number, { K, cap }: { K: number; cap: number }): Rates {
  const rates = none(cap);
  for (let n = 1; n <= cap; n += 1) {
    const born = n < cap ? birth * n : 0;
    const died = (death + ((birth - death) * n) / K) * n;
    rates[n - 1]![n - 1] = -(born + died);
    if (n < cap) rates[n]![n - 1] = born;
    if (n > 1) rates[n - 2]![n - 1] = died;
  }
  return rates;
}

/** Mean times to extinction by number at the start: the rates, turned over, applied to the times give -1. */
function meanTimes(rates: Rates): Float64Array {
  const n = rates.length;
  const matrix = Float64Array.from({ length: n * n }, (_, at) => rates[at % n]![Math.floor(at / n)]!);
  const pivots = new Int32Array(n);
  factorise(matrix, pivots, n);
  const times = new Float64Array(n).fill(-1);
  solveFactorised(matrix, pivots, times, n);
  return times;
}

/** Extinction of a small population in a limited place. */
export const smallPopulationFigures: Calculation = (inputs, wanted) => {
  const rates = logisticRates(inputs.number('birth_per_capita', '-'), inputs.number('d', '-'), {
    K: inputs.number('K', '-'),
    cap: inputs.number('state_cap', '-'),
  });
  const times = meanTimes(rates);
  const answers = [...wanted.keys()].map((name) => {
    const [, what, by, start] = /^(mean_time_to_extinction|P_extinct_by_(\d+))\.(\d+)$/.exec(name) ?? [];
    if (what === undefined)
      return [name, name === 'quasi_stationary_decay_rate' ? -rateOf(rates) : undefined];
    const first = Number(start);
    if (by === undefined) return [name, times[first - 1]];
    const living = after(
      rates,
      rates.map((_, i) => (i === first - 1 ? 1 : 0)),
      Number(by),
    );
    return [name, 1 - total(living)];
  });
  return figuresOf(Object.fromEntries(answers) as Record<string, number | undefined>);
};
