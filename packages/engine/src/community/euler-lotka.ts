import { exp, log } from '../numerics/elementary.ts';
import { findRoot } from '../numerics/roots.ts';

/** Young by the age of their mothers: lx mx of a life table. */
export interface BirthsByAge {
  /** Ages, rising, above 0 [any unit of time]. */
  readonly ages: readonly number[];
  /** Young (daughters of a daughter, or of both sexes of an animal of either) per newborn that began [1]. */
  readonly births: readonly number[];
}

/** What a life table comes to; times in the unit of its ages. */
export interface Renewal {
  /** Young per newborn in a whole life, R0 [1], >= 0. */
  readonly netReproduction: number;
  /** Growth rate of a population with that table, r [1/time]; negative for one that shrinks. */
  readonly growthRate: number;
  /** Time in which numbers change by the factor R0, ln R0 / r [time]; the cohort's when r is 0. */
  readonly generationTime: number;
  /** Mean age of mothers over the births of one cohort [time]. */
  readonly cohortTime: number;
}

/** As part of the rate. */
const PRECISION = 1e-13;

function checkAges({ ages, births }: BirthsByAge): void {
  if (ages.length !== births.length)
    throw new RangeError(`a life table has ${ages.length} ages and ${births.length} births`);
  for (const [i, age] of ages.entries()) {
    const before = i > 0 ? ages[i - 1]! : 0;
    if (!(age > before && age < Number.POSITIVE_INFINITY))
      throw new RangeError(`age ${age} of a life table does not follow ${before}; ages must rise above 0`);
    if (!(births[i]! >= 0 && births[i]! < Number.POSITIVE_INFINITY))
      throw new RangeError(`births at age ${age} of a life table are ${births[i]}, not 0 or more`);
  }
}

/**
 * Growth rate and generation time of a population by the Euler-Lotka equation, times in the unit of the ages;
 * undefined when nobody is born.
 *   1 = sum lx mx exp(-r x),  R0 = sum lx mx,  T = ln R0 / r,  Tc = sum x lx mx / R0
 * @param table ages rising above 0, births >= 0
 * @throws RangeError when ages do not rise or births are no numbers of 0 or more
 * @source lotka-1925 ch. 9; birch-1948 for T = ln R0 / r
 */
export function renewalOf(table: BirthsByAge): Renewal | undefined {
  checkAges(table);
  const bearing = table.ages
    .map((age, i) => ({ age, births: table.births[i]! }))
    .filter(({ births }) => births > 0);
  const [first] = bearing;
  const last = bearing.at(-1);
  if (!first || !last) return undefined;
  const netReproduction = bearing.reduce((sum, { births }) => sum + births, 0);
  const cohortTime = bearing.reduce((sum, { age, births }) => sum + age * births, 0) / netReproduction;
  const logarithm = log(netReproduction);
  // All births at the first or at the last age bracket the rate.
  const ends = [logarithm / first.age, logarithm / last.age];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const excess = (r: number): number =>
    bearing.reduce((sum, { age, births }) => sum + births * exp(-r * age), 0) - 1;
  const width = PRECISION * Math.max(Math.abs(low), Math.abs(high));
  const growthRate =
    high - low > 4 * width
      ? findRoot(excess, { low: low - width, high: high + width, tolerance: width })
      : low;
  return {
    netReproduction,
    growthRate,
    generationTime: growthRate === 0 ? cohortTime : logarithm / growthRate,
    cohortTime,
  };
}
