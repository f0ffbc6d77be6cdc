import { integratorOf, type Transfer } from './transfer-system.ts';

/** A course to be computed: the reactions, where it starts, and the times at which it is wanted. */
export interface Course {
  readonly transfers: readonly Transfer[];
  readonly start: readonly number[];
  readonly from: number;
  readonly times: readonly number[];
  /** Longest step of the coarsest grid. */
  readonly step: number;
  /** Share of the time gone by that steps may grow with, for courses over many decades of time. */
  readonly growth?: number | undefined;
  /** Least number of steps from one wanted time to the next, on the coarsest grid. */
  readonly perInterval?: number | undefined;
  /** Steps end at every multiple of this, where rates have kinks. */
  readonly kinkEvery?: number | undefined;
}

/** Moments at which every step must end. */
function marks({ from, times, kinkEvery }: Course): number[] {
  const last = Math.max(...times);
  const kinks = kinkEvery === undefined ? 0 : Math.ceil((last - from) / kinkEvery) - 1;
  const all = [...times, ...Array.from({ length: kinks }, (_, k) => from + (k + 1) * (kinkEvery ?? 0))];
  return [...new Set(all)].filter((t) => t > from).sort((a, b) => a - b);
}

/** Lengths of the coarsest steps up to each mark in turn. */
function coarsestGrid(course: Course): number[][] {
  let t = course.from;
  return marks(course).map((mark) => {
    const steps: number[] = [];
    if (!course.growth) {
      const count = Math.max(course.perInterval ?? 1, Math.ceil((mark - t) / course.step));
      steps.push(...Array.from({ length: count }, () => (mark - t) / count));
    } else {
      let at = t;
      while (at < mark) {
        const h = Math.min(course.step + course.growth * (at - course.from), mark - at);
        const isLast = at + 1.5 * h >= mark;
        steps.push(isLast ? mark - at : h);
        at = isLast ? mark : at + h;
      }
    }
    t = mark;
    return steps;
  });
}

/** States at the wanted times, every step of the grid divided into `parts`; those that start the course included. */
function courseOn(
  course: Course,
  grid: readonly (readonly number[])[],
  { parts, explicitShare }: { readonly parts: number; readonly explicitShare: number },
): number[][] {
  const integrator = integratorOf(course.transfers, course.start.length, {
    explicitShare,
    weightTolerance: 1e-13,
  });
  const extents = new Float64Array(course.transfers.length);
  const y = Float64Array.from(course.start);
  const wanted = new Set(course.times);
  const states: number[][] = wanted.has(course.from) ? [[...y]] : [];
  marks(course).forEach((mark, m) => {
    for (const h of grid[m]!) {
      for (let k = 0; k < parts; k += 1) integrator.step(y, h / parts, extents);
    }
    if (wanted.has(mark)) states.push([...y]);
  });
  return states;
}

type States = readonly (readonly number[])[];

/** What a table of courses, each on half the steps of the one before, tends to: errors of rising order removed. */
function extrapolated(table: readonly States[], leastOrder: number): States {
  let rows = table;
  for (let order = leastOrder; rows.length > 1; order += 1) {
    const coarse = rows;
    const further = (value: number, before: number): number => value + (value - before) / (2 ** order - 1);
    rows = coarse
      .slice(1)
      .map((fine, level) =>
        fine.map((state, t) => state.map((value, i) => further(value, coarse[level]![t]![i]!))),
      );
  }
  return rows[0]!;
}

export interface Refinement {
  /** Grids, each of half the steps of the one before. */
  readonly levels: number;
  /** As the integrator's option; with 0, every pool is weighted. */
  readonly explicitShare: number;
}

/**
 * States at the wanted times in the limit of small steps: the integrator's course on a grid and on grids of half,
 * a quarter … its steps, extrapolated (Richardson). Small steps leave all pools explicit and the scheme of third
 * order; with every pool weighted, reactions of several reactants are of second.
 */
export function limitOfSmallSteps(course: Course, { levels, explicitShare }: Refinement): States {
  const grid = coarsestGrid(course);
  const table = Array.from({ length: levels }, (_, level) =>
    courseOn(course, grid, { parts: 2 ** level, explicitShare }),
  );
  return extrapolated(table, explicitShare > 0 ? 3 : 2);
}
