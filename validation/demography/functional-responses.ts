import { satiation } from '../../packages/engine/src/life/foraging.ts';
import { binomialLogProbability } from '../../packages/engine/src/numerics/discrete-densities.ts';
import type { Calculation } from '../harness/check.ts';
import type { Inputs } from '../harness/inputs.ts';
import { figuresOf } from './answers.ts';
import { leastOf } from './least.ts';

interface Trial {
  readonly offered: number;
  readonly eaten: number;
}

/** The engine's response by attack rate a and handling time h: most 1/h, half of it at 1/(a h). */
function intake(prey: number, a: number, h: number): number {
  return satiation(prey, 1 / (a * h)) / h;
}

function logLikelihood(trials: readonly Trial[], eatenOf: (offered: number) => number): number {
  const byOffered = new Map<number, number>();
  let sum = 0;
  for (const { offered, eaten } of trials) {
    const part = byOffered.get(offered) ?? eatenOf(offered) / offered;
    byOffered.set(offered, part);
    if (!(part > 0 && part < 1)) return Number.NEGATIVE_INFINITY;
    sum += binomialLogProbability(eaten, offered, part);
  }
  return sum;
}

const FAR = 1e9;

function bestFit(trials: readonly Trial[], eatenOf: (offered: number, a: number, h: number) => number) {
  const cost = ([a, h]: readonly number[]): number => {
    const value = -logLikelihood(trials, (offered) => eatenOf(offered, a!, h!));
    return Number.isFinite(value) ? value : FAR;
  };
  const starts = [0.5, 1, 2].flatMap((a) => [0.02, 0.2].map((h) => [a, h]));
  const fits = starts.map((start) => leastOf(cost, start)).sort((x, y) => cost(x) - cost(y));
  return { a: fits[0]![0]!, h: fits[0]![1]!, neglogL: cost(fits[0]!) };
}

/** Prey replaced as they are eaten, or few enough eaten that it does not matter. */
export const responseFigures: Calculation = (inputs) => {
  const offered = inputs.numbers('N0', '-');
  const eaten = inputs.numbers('killed', '-');
  return figuresOf({
    ...bestFit(
      offered.map((n, i) => ({ offered: n, eaten: eaten[i]! })),
      intake,
    ),
  });
};

const STEPS = 60;

/** Eaten in a trial whose prey dwindle: the engine's response by fourth-order Runge-Kutta over the trial. */
function eatenDwindling(offered: number, days: number, rate: (prey: number) => number): number {
  const step = days / STEPS;
  let prey = offered;
  for (let i = 0; i < STEPS; i += 1) {
    const k1 = rate(prey);
    const k2 = rate(prey - (step / 2) * k1);
    const k3 = rate(prey - (step / 2) * k2);
    const k4 = rate(prey - step * k3);
    prey -= (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  return offered - prey;
}

function trialsByDensity(inputs: Inputs): Trial[] {
  const group = inputs.group('eaten_by_density');
  return group
    .names()
    .flatMap((offered) => group.numbers(offered, '-').map((eaten) => ({ offered: Number(offered), eaten })));
}

/** Prey not replaced. */
export const dwindlingFigures: Calculation = (inputs) => {
  const days = inputs.number('T_days', '-');
  const { a, h, neglogL } = bestFit(trialsByDensity(inputs), (offered, attack, handling) =>
    eatenDwindling(offered, days, (prey) => intake(prey, attack, handling)),
  );
  return figuresOf({ a_per_day: a, h_day: h, neglogL });
};

/** Intake by density with normal errors. */
export const intakeFigures: Calculation = (inputs) => {
  const density = inputs.numbers('prey_density', '-');
  const eaten = inputs.numbers('consumption', '-');
  const squares = ([most, half]: readonly number[]): number =>
    density.reduce((sum, each, i) => sum + (most! * satiation(each, half!) - eaten[i]!) ** 2, 0);
  const middle = [...density].sort((x, y) => x - y)[Math.floor(density.length / 3)]!;
  const fit = leastOf(squares, [Math.max(...eaten), middle]);
  return figuresOf({ Cmax: fit[0]!, half_saturation: fit[1]!, sse: squares(fit) });
};
