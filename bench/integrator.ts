import { createIntegrator } from '@shoreglass/engine';
import type { NitrificationProblem } from './nitrification-problem.ts';

/** One solution of the problem: how far off at worst, and how long it took. */
export interface Sample {
  readonly name: string;
  readonly tolerance: number;
  /** Largest relative difference from the reference. */
  readonly error: number;
  readonly seconds: number;
  readonly evaluations: number;
}

/** The reactions of two-step nitrification, in compressed rows over NH4, NO2, NO3, X_AOB, X_NOB, O2. */
function nitrificationSystem(p: Readonly<Record<string, number>>) {
  const { muA = 0, KA = 0, KOA = 0, YA = 1, bA = 0, muN = 0, KN = 0 } = p;
  const { KON = 0, YN = 1, bN = 0, load = 0, kLa = 0, O2sat = 0 } = p;
  const names = [
    'load',
    'ammonia oxidation',
    'nitrite oxidation',
    'decay',
    'decay',
    'aeration',
    'outgassing',
  ];
  return {
    reactions: names.map((name) => ({ name })),
    start: Int32Array.of(0, 1, 5, 9, 10, 11, 12, 13),
    index: Int32Array.of(0, 0, 1, 5, 3, 1, 2, 5, 4, 3, 4, 5, 5),
    coefficient: Float64Array.of(1, -1, 1, -3.43, YA, -1, 1, -1.14, YN, -1, -1, 1, -1),
    derive() {},
    evaluate(y: Float64Array, rates: Float64Array) {
      const [NH4, NO2, O2] = [y[0]!, y[1]!, y[5]!];
      rates[0] = load;
      rates[1] = (muA * (NH4 / (KA + NH4)) * (O2 / (KOA + O2)) * y[3]!) / YA;
      rates[2] = (muN * (NO2 / (KN + NO2)) * (O2 / (KON + O2)) * y[4]!) / YN;
      rates[3] = bA * y[3]!;
      rates[4] = bN * y[4]!;
      rates[5] = kLa * O2sat;
      rates[6] = kLa * O2;
    },
  };
}

function solve(
  problem: NitrificationProblem,
  relativeTolerance: number,
): { error: number; evaluations: number } {
  const { parameters, y0, times, reference } = problem;
  const integrator = createIntegrator(nitrificationSystem(parameters), y0.length, {
    relativeTolerance,
    absoluteTolerance: relativeTolerance * 1e-4,
    leastStep: 1e-9,
    firstStep: 1e-3,
  });
  const y = Float64Array.from(y0);
  const extents = new Float64Array(7);
  let t = 0;
  let error = 0;
  times.forEach((until, k) => {
    integrator.advance(y, until - t, extents);
    t = until;
    reference[k]!.forEach((value, i) => {
      error = Math.max(error, Math.abs(y[i]! / value - 1));
    });
  });
  return { error, evaluations: integrator.counters.evaluations };
}

/** The engine's integrator over a range of tolerances, each timed for `seconds`. */
export function integratorSamples(problem: NitrificationProblem, seconds: number): Sample[] {
  return Array.from({ length: 13 }, (_, k) => {
    const tolerance = 10 ** (-k / 2);
    let best = Number.POSITIVE_INFINITY;
    let result = solve(problem, tolerance);
    const end = performance.now() + seconds * 1000;
    while (performance.now() < end) {
      const before = performance.now();
      result = solve(problem, tolerance);
      best = Math.min(best, (performance.now() - before) / 1000);
    }
    return { name: 'Shoreglass', tolerance, ...result, seconds: best };
  });
}
