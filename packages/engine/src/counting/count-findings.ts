import type { Count, Estimate } from './count.ts';
import type { DiffusionGrowth } from './diffusion-growth.ts';
import type { FallingRisk } from './falling-below.ts';
import type { LogLinearTrend } from './log-linear-trend.ts';
import type { LogisticGrowth } from './logistic-growth.ts';
import type { FittedMatrix } from './stage-matrix-from-counts.ts';

/** Counts of a population as a keeper took them. */
export interface CountSeries {
  /** Days rising. */
  readonly counts: readonly Count[];
  /** The same by stage, from the youngest on, where they were told apart. */
  readonly stages?: { readonly names: readonly string[]; readonly counts: readonly (readonly number[])[] };
  /** Coldest and warmest of a day in the time up to each count, the first passed over [°C]. */
  readonly warmth?: readonly { readonly coldest: number; readonly warmest: number }[];
  /** Whether numbers are those in a unit of effort, not of all that were seen. */
  readonly byEffort?: boolean;
}

/** What is asked of counts. */
export interface CountQuestion {
  /** Number that must not be undercut, > 0 [animals]. */
  readonly below: number;
  /** Within how many days after the last count, > 0 [d]. */
  readonly within: number;
  /** Temperature below which nothing develops [°C]; for counts with warmth. */
  readonly threshold?: number;
}

/** The limit that counts show, if they do. */
export interface CountLimit extends Pick<LogisticGrowth, 'limit' | 'rate' | 'start' | 'gain'> {
  /** Whether the counts tell of a limit better than of growth without one, and about where it lies. */
  readonly shown: boolean;
}

/** How many grow up, live on and are born from one count to the next. */
export interface CountStages extends FittedMatrix {
  readonly names: readonly string[];
  /** Days from one count to the next. */
  readonly step: number;
  /** By which settled numbers change in a step [1]. */
  readonly growth?: number;
}

/** Growth told in warmth instead of days. */
export interface CountWarmth {
  readonly threshold: number;
  /** From the first count to the last [°C d]. */
  readonly degreeDays: number;
  /** Growth rate of ln N and its range [1/(°C d)]. */
  readonly rate: number;
  readonly rateRange?: readonly [low: number, high: number];
}

/** What a sentence is about. */
export type CountTopic = 'growth' | 'limit' | 'falling' | 'stages' | 'warmth';

/** A finding in words, and whose method it is. */
export interface CountSentence {
  readonly about: CountTopic;
  readonly text: string;
  readonly source: string;
}

/** What counts of a population tell, in figures. */
export interface CountFindings {
  readonly counts: readonly Count[];
  readonly byEffort: boolean;
  readonly growth?: DiffusionGrowth;
  readonly trend?: Pick<LogLinearTrend, 'rate'>;
  readonly limit?: CountLimit;
  readonly falling?: FallingRisk;
  readonly stages?: CountStages;
  readonly warmth?: CountWarmth;
  /** The curve drawn through the counts, one point a day or coarser, and its 95 % band. */
  readonly course: readonly (Estimate & { readonly day: number })[];
  /** The curve on the day of each count; empty where none is drawn. */
  readonly fitted: readonly Estimate[];
  /** What that curve is. */
  readonly drawn?: 'limit' | 'trend';
}

/** What counts of a population tell, in figures and words. */
export interface CountsReport extends CountFindings {
  readonly sentences: readonly CountSentence[];
  readonly cautions: readonly string[];
}
