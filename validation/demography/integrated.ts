import type { Calculation } from '../harness/check.ts';
import { readSystem } from '../integrators/equations/written-system.ts';
import { limitOfSmallSteps } from '../integrators/limit-of-small-steps.ts';
import { REFERENCE_SYSTEMS } from '../integrators/reference-systems.ts';
import { writtenCourse } from '../integrators/written-course.ts';
import { figuresOf } from './answers.ts';

const ACCURACY = 3e-8;

/** Two competitors by their published coefficients, by the engine's integrator; animals of the engine compete for food instead. */
export const competitionFigures: Calculation = (inputs) => {
  const names = ['K1', 'K2', 'r1', 'r2', 'alpha12', 'alpha21'];
  const system = readSystem({
    lines: ["N1'=r1*N1-r1*N1*(N1+alpha12*N2)/K1", "N2'=r2*N2-r2*N2*(N2+alpha21*N1)/K2"],
    parameters: Object.fromEntries(names.map((name) => [name, inputs.number(name, '-')])),
    names: ['N1', 'N2'],
  });
  const states = writtenCourse(system, {
    start: inputs.numbers('n0', '-'),
    from: 0,
    times: inputs.numbers('times', '-'),
    accuracy: ACCURACY,
  });
  return figuresOf({ states: states?.flat() });
};

const LONG = 400;

/** Where algae with a quota in a chemostat come to rest, by the engine's integrator from a start with little of each. */
export const quotaFigures: Calculation = (inputs) => {
  const of = (name: string): number => inputs.number(name, '-');
  const droop = REFERENCE_SYSTEMS['droop-chemostat']!;
  const parameters = {
    mum: of('mu_max'),
    Q0: of('Q0'),
    vmax: of('v_max'),
    K: of('K'),
    D: of('D'),
    Sin: of('S_in'),
  };
  const [state] = limitOfSmallSteps(
    {
      transfers: droop.transfers(parameters),
      start: [parameters.Sin, 2 * parameters.Q0, 0.1],
      from: 0,
      times: [LONG],
      step: 0.02,
    },
    { levels: 4, explicitShare: 0.5 },
  );
  const [S, Q, X] = state!;
  return figuresOf({ Q, S, X });
};
