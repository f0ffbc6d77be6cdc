import {
  type BesideComputed,
  type BesideSpecies,
  besideComputed,
  besideSpecies,
  type ComputedNumbers,
  type CountsReport,
  countsReport,
} from '@shoreglass/engine';
import type { Organism } from '@shoreglass/library';
import { lifeTableOf, usualTemperature } from '../library-entry/life-alone.ts';
import type { WrittenCounts } from './read-counts.ts';

/** What is asked of counts beside what they tell by themselves. */
export interface CountsRequest {
  /** Number that must not be undercut; 2 when left out, a pair. */
  readonly below?: number;
  /** Days after the last count; when left out as many as were counted, 30 at least. */
  readonly within?: number;
  /** Threshold of warmth [°C], for counts with coldest and warmest; 10 when left out. */
  readonly threshold?: number;
  /** Whose counts they are. */
  readonly animal?: Organism;
  /** At which the species is reckoned by itself [°C]; 24 or the nearest that suits it when left out. */
  readonly temperature?: number;
}

/** The computed population of an enclosure, to be set beside the counts. */
export interface ComputedBeside {
  readonly enclosure: string;
  /** ISO date of day 0 of the run. */
  readonly startDate: string;
  readonly numbers: ComputedNumbers;
}

/** What `life --counts` tells. */
export interface CountsAnswer extends CountsReport {
  /** ISO date of day 0, the first count. */
  readonly startDate?: string;
  readonly species?: BesideSpecies & {
    readonly id: string;
    readonly name: string;
    /** [°C] */
    readonly temperature: number;
  };
  readonly computed?: BesideComputed & {
    readonly enclosure: string;
    /** Day of the run on which the first count was taken. */
    readonly firstDay: number;
  };
}

const PAIR = 2;
const LEAST_AHEAD = 30;
const USUAL_THRESHOLD = 10;

const DAY = 86_400_000;

/** Day of a run on which the first count was taken; days of the file are days of the run. */
export function firstDayInRun({ startDate, firstDay = 0 }: WrittenCounts, runStart: string): number {
  return startDate === undefined
    ? firstDay
    : Math.round((Date.parse(startDate) - Date.parse(runStart)) / DAY);
}

/**
 * What counts tell, beside their species by itself and beside a computed population where those are given.
 * @throws RangeError when what is asked is not above 0, or the temperature is out of range
 */
export function countsAnswer(
  written: WrittenCounts,
  request: CountsRequest = {},
  computed?: ComputedBeside,
): CountsAnswer {
  const { counts } = written.series;
  const span = counts.at(-1)!.day - counts[0]!.day;
  const report = countsReport(written.series, {
    below: request.below ?? PAIR,
    within: request.within ?? Math.max(LEAST_AHEAD, Math.round(span)),
    threshold: request.threshold ?? USUAL_THRESHOLD,
  });
  const { startDate } = written;
  const species = speciesBeside(report, request);
  return {
    ...(startDate === undefined ? {} : { startDate }),
    ...report,
    ...(species ? { species } : {}),
    ...(computed ? { computed: computedBeside(written, computed) } : {}),
  };
}

function speciesBeside(
  report: CountsReport,
  { animal, temperature }: CountsRequest,
): CountsAnswer['species'] {
  if (!animal) return undefined;
  const at = temperature ?? usualTemperature(animal);
  return {
    id: animal.id,
    name: animal.name,
    temperature: at,
    ...besideSpecies(report, lifeTableOf(animal, at)),
  };
}

function computedBeside(
  written: WrittenCounts,
  computed: ComputedBeside,
): NonNullable<CountsAnswer['computed']> {
  const { enclosure, startDate, numbers } = computed;
  const first = firstDayInRun(written, startDate);
  const counts = written.series.counts.map((count) => ({ ...count, day: count.day + first }));
  return { enclosure, firstDay: first, ...besideComputed(counts, numbers) };
}
