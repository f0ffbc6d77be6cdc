import {
  chanceOfDyingOut,
  lifeOfMatrix,
  type Matrix,
  projectionOf,
  renewalOf,
  stepOf,
} from '@shoreglass/engine';
import type { Calculation } from '../harness/check.ts';
import type { Inputs } from '../harness/inputs.ts';
import { figuresOf, square } from './answers.ts';

function lifeOrNone(matrix: Matrix): ReturnType<typeof lifeOfMatrix> | undefined {
  try {
    return lifeOfMatrix(matrix);
  } catch {
    return undefined;
  }
}

/** Numbers after each step that a wanted name such as 'n12' asks for. */
function courseOf(matrix: Matrix, inputs: Inputs, names: Iterable<string>): Record<string, number[]> {
  const courses: Record<string, number[]> = {};
  for (const name of names) {
    const steps = /^n(\d+)$/.exec(name)?.[1];
    if (steps === undefined || !inputs.has('n0')) continue;
    let numbers = inputs.numbers('n0', '-');
    for (let step = 0; step < Number(steps); step += 1) numbers = stepOf(matrix, numbers);
    courses[name] = numbers;
  }
  return courses;
}

/** Growth, structure, worth and elasticity of stage and age matrices. */
export const matrixFigures: Calculation = (inputs, wanted) => {
  const matrix = square(inputs.numbers('A', '-'));
  const projection = projectionOf(matrix);
  if (!projection) return {};
  const life = lifeOrNone(matrix);
  return figuresOf({
    lambda_: projection.growth,
    stable_stage: projection.stable,
    stable_age: projection.stable,
    reproductive_value: projection.worth,
    elasticity: projection.elasticity.flat(),
    damping_ratio: projection.damping,
    R0: life?.netReproduction,
    life_expectancy_from_stage1: life?.expectancy,
    ...courseOf(matrix, inputs, wanted.keys()),
  });
};

/** Rate and generation time of a life table. */
export const lifeTableFigures: Calculation = (inputs) => {
  const ages = inputs.names().find((name) => /age/.test(name));
  if (!ages) return {};
  const births = inputs.has('lx_mx')
    ? inputs.numbers('lx_mx', '-')
    : inputs.numbers('lx', '-').map((alive, i) => alive * inputs.numbers('mx', '-')[i]!);
  const renewal = renewalOf({ ages: inputs.numbers(ages, '-'), births });
  if (!renewal) return {};
  const growth = Math.exp(renewal.growthRate);
  return figuresOf({
    R0: renewal.netReproduction,
    r: renewal.growthRate,
    generation_T: renewal.generationTime,
    cohort_T: renewal.cohortTime,
    lambda_: growth,
    lambda_per_week: growth,
    lambda_per_day: growth,
    lambda_per_year: growth,
  });
};

/** Extinction of lines whose animals bear Poisson numbers once. */
export const lineFigures: Calculation = (inputs) => {
  const q = chanceOfDyingOut({ alive: [1, 0], births: [inputs.number('mean_offspring', '-')] });
  return figuresOf(
    Object.fromEntries(inputs.numbers('founders', '-').map((n) => [`extinction.${n}`, q ** n])),
  );
};
