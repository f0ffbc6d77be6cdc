import { projectionOf } from '@shoreglass/engine';
import { degreeDays } from '../../packages/engine/src/counting/degree-days.ts';
import { delayedNumbers, restOf } from '../../packages/engine/src/counting/delayed-growth.ts';
import { diffusionGrowth } from '../../packages/engine/src/counting/diffusion-growth.ts';
import { chanceOfEverFalling, chanceOfFalling } from '../../packages/engine/src/counting/falling-below.ts';
import { logisticGrowth } from '../../packages/engine/src/counting/logistic-growth.ts';
import {
  type Element,
  stageMatrixFromCounts,
} from '../../packages/engine/src/counting/stage-matrix-from-counts.ts';
import type { Calculation } from '../harness/check.ts';
import { Inputs, isRecord } from '../harness/inputs.ts';
import { figuresOf, square } from './answers.ts';

/** Growth and scatter of yearly counts and the chance of falling to a number. */
export const extinctionFigures: Calculation = (inputs, wanted) => {
  const numbers = inputs.numbers('counts', '-');
  const days = inputs.has('years') ? inputs.numbers('years', '-') : numbers.map((_, year) => year);
  const growth = diffusionGrowth(numbers.map((number, i) => ({ day: days[i]!, number })));
  if (!growth?.variance) return {};
  const walk = { rate: growth.rate, variance: growth.variance.value };
  const fall = {
    from: inputs.numberOr('current', '-', numbers.at(-1)!),
    below: inputs.numberOr('quasi_extinction', '-', 1),
  };
  const chances = [...wanted.keys()].flatMap((name) => {
    const years = /^P_hit_(\d+)/.exec(name)?.[1];
    return years === undefined ? [] : [[name, chanceOfFalling(walk, fall, Number(years))] as const];
  });
  return figuresOf({
    mu: growth.rate,
    sigma2: growth.variance.value,
    P_ultimate: chanceOfEverFalling(walk, fall),
    ...Object.fromEntries(chances),
  });
};

/** The two lists of a case: when it was counted, and how many. */
function timesAndNumbers(inputs: Inputs): readonly [times: number[], numbers: number[]] {
  const [times, numbers] = inputs.names();
  if (times === undefined || numbers === undefined) throw new Error('a growth fit needs times and numbers');
  return [inputs.numbers(times, '-'), inputs.numbers(numbers, '-')];
}

/** Limit, rate and start of a logistic laid through counts. */
export const growthFitFigures: Calculation = (inputs) => {
  const [times, numbers] = timesAndNumbers(inputs);
  const fit = logisticGrowth(numbers.map((number, i) => ({ day: times[i]!, number })));
  if (!fit) return {};
  return figuresOf({
    K: fit.limit.value,
    r: fit.rate.value,
    N0: fit.start.value,
    sse: fit.sumOfSquares,
    rmse: Math.sqrt(fit.sumOfSquares / numbers.length),
  });
};

/** Elements named 'a21' (to 2, from 1) in a piece of text. */
function elementsIn(text: string): Element[] {
  return [...text.matchAll(/a(\d)(\d)/g)].map(([, to, from]) => ({
    to: Number(to) - 1,
    from: Number(from) - 1,
  }));
}

/** A stage matrix from counts by stage. */
export const matrixFromCountsFigures: Calculation = (inputs) => {
  const [free = '', limits = ''] = inputs.text('pattern').split(';');
  const flat = inputs.numbers('observations', '-');
  const stages = inputs.has('stages') ? inputs.list('stages').length : Math.round(Math.sqrt(flat.length));
  const steps = flat.length / stages;
  const counts = Array.from({ length: stages }, (_, i) => flat.slice(i * steps, (i + 1) * steps));
  const parts = limits.split(',').map(elementsIn);
  const { matrix, sumOfSquares } = stageMatrixFromCounts({ counts, free: elementsIn(free), parts });
  return figuresOf({
    A: matrix.flat(),
    sse: sumOfSquares,
    lambda_: projectionOf(square(matrix.flat()))?.growth,
  });
};

/** Degree-days of days from their coldest to their warmest, and of the same days at their mean all day. */
export const warmthFigures: Calculation = (inputs) => {
  const days = inputs.list('cases').map((each) => {
    const day = new Inputs(isRecord(each) ? each : {});
    return {
      coldest: day.number('tmin', '-'),
      warmest: day.number('tmax', '-'),
      threshold: day.number('base', '-'),
    };
  });
  const steady = days.map(({ coldest, warmest, threshold }) => {
    const mean = (coldest + warmest) / 2;
    return degreeDays({ coldest: mean, warmest: mean, threshold });
  });
  return figuresOf({ degree_days: days.map(degreeDays), simple_average: steady });
};

/** Blowflies whose eggs become flies after a delay: the course, and where it rests. */
export const delayFigures: Calculation = (inputs) => {
  const growth = {
    recruits: inputs.number('P', '-'),
    crowding: inputs.number('N0', '-'),
    loss: inputs.number('delta', '-'),
    maturity: inputs.number('tau', '-'),
  };
  const times = inputs.numbers('times', '-');
  const numbers = delayedNumbers(growth, inputs.number('history', '-'), times);
  return figuresOf({
    ...Object.fromEntries(times.map((time, i) => [`N.${time}`, numbers[i]!])),
    equilibrium: restOf(growth),
  });
};
