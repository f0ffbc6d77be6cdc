import { POSITIVITY_PROBLEMS, type PositivityProblem } from './positivity-problems.ts';
import { integratorOf } from './transfer-system.ts';

/** Every pool weighted and every weight solved to the last digit: the published schemes. */
const PURE = { explicitShare: 0, weightTolerance: 1e-14, mostGrowth: Number.POSITIVE_INFINITY };

export interface Steps {
  /** Length of the (first) step. */
  readonly h: number;
  readonly count: number;
  readonly order: 2 | 3;
}

function problemOf(id: string): PositivityProblem {
  const problem = Object.hasOwn(POSITIVITY_PROBLEMS, id) ? POSITIVITY_PROBLEMS[id] : undefined;
  if (!problem) throw new Error(`the problem '${id}' is not known`);
  return problem;
}

/** The state after steps of equal length. @throws Error when the problem is not known. */
export function fixedSteps(id: string, start: readonly number[], { h, count, order }: Steps): number[] {
  const { transfers, hasClock } = problemOf(id);
  const y = Float64Array.from(hasClock ? [...start, 0] : start);
  const integrator = integratorOf(transfers, y.length, { ...PURE, order });
  const extents = new Float64Array(transfers.length);
  for (let k = 0; k < count; k += 1) integrator.step(y, h, extents);
  return [...y.subarray(0, start.length)];
}

/** Robertson's problem under steps that double: time and state after each, and the least content of any pool. */
export function doublingSteps(
  start: readonly number[],
  { h, count, order }: Steps,
): { readonly moments: readonly (readonly number[])[]; readonly least: number } {
  const { transfers } = problemOf('robertson');
  const y = Float64Array.from(start);
  const integrator = integratorOf(transfers, y.length, { ...PURE, order });
  const extents = new Float64Array(transfers.length);
  const moments: number[][] = [];
  let least = Math.min(...y);
  let t = 0;
  for (let k = 0; k < count; k += 1) {
    const step = h * 2 ** k;
    integrator.step(y, step, extents);
    t += step;
    least = Math.min(least, ...y);
    moments.push([t, ...y]);
  }
  return { moments, least };
}
