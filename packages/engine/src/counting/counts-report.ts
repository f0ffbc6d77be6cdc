import { projectionOf } from '../community/projection-matrix.ts';
import { type Count, countsAboveNone, type Estimate } from './count.ts';
import { countCautions } from './count-cautions.ts';
import type {
  CountFindings,
  CountLimit,
  CountQuestion,
  CountSeries,
  CountStages,
  CountsReport,
  CountWarmth,
} from './count-findings.ts';
import { countSentences } from './count-sentences.ts';
import { degreeDays } from './degree-days.ts';
import { diffusionGrowth } from './diffusion-growth.ts';
import { fallingRisk } from './falling-below.ts';
import { logLinearTrend } from './log-linear-trend.ts';
import { type LogisticGrowth, logisticGrowth } from './logistic-growth.ts';
import { growingStages, stageMatrixFromCounts } from './stage-matrix-from-counts.ts';

/** Part above the most counted up to which a limit's interval may reach for the limit to count as told. */
const FARTHEST_LIMIT = 3;
/** By how much the criterion must fall for a limit to be believed. */
const GAIN = 2;
const POINTS = 120;

function limitOf(fit: LogisticGrowth | undefined, counts: readonly Count[]): CountLimit | undefined {
  if (!fit) return undefined;
  const { limit, rate, start, gain } = fit;
  const most = Math.max(...counts.map(({ number }) => number));
  return { limit, rate, start, gain, shown: gain > GAIN && limit.high <= FARTHEST_LIMIT * most };
}

/** Days from one count to the next where they are alike, or undefined. */
function evenStep(counts: readonly Count[]): number | undefined {
  const steps = counts.slice(1).map(({ day }, i) => day - counts[i]!.day);
  const [step] = steps;
  return step !== undefined && steps.every((each) => Math.abs(each - step) < 1e-9) ? step : undefined;
}

function stagesOf({ counts, stages }: CountSeries): CountStages | undefined {
  const step = evenStep(counts);
  if (!stages || step === undefined || counts.length < stages.names.length + 2) return undefined;
  const fitted = stageMatrixFromCounts({ counts: stages.counts, ...growingStages(stages.names.length) });
  const growth = projectionOf(fitted.matrix)?.growth;
  return { ...fitted, names: stages.names, step, ...(growth === undefined ? {} : { growth }) };
}

function warmthOf({ counts, warmth }: CountSeries, threshold: number | undefined): CountWarmth | undefined {
  if (!warmth || threshold === undefined) return undefined;
  let sum = 0;
  const heated = counts.map((count, i) => {
    const { coldest = 0, warmest = 0 } = warmth[i] ?? {};
    if (i > 0) sum += degreeDays({ coldest, warmest, threshold }) * (count.day - counts[i - 1]!.day);
    return { ...count, day: sum };
  });
  if (heated.some(({ day }, i) => i > 0 && !(day > heated[i - 1]!.day))) return undefined;
  const growth = diffusionGrowth(heated);
  if (!growth) return undefined;
  const { rate, rateRange, span } = growth;
  return { threshold, degreeDays: span, rate, ...(rateRange ? { rateRange } : {}) };
}

function courseOf(
  counts: readonly Count[],
  at: ((day: number) => Estimate) | undefined,
): CountFindings['course'] {
  const first = counts[0]?.day ?? 0;
  const span = (counts.at(-1)?.day ?? 0) - first;
  if (!at || span <= 0) return [];
  return Array.from({ length: POINTS + 1 }, (_, i) => {
    const day = first + (span * i) / POINTS;
    return { day, ...at(day) };
  });
}

/** Leaves out what is not known. */
function known<T extends object>(figures: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== undefined)) as never;
}

/**
 * What counts of a population tell: growth, limit, risk of falling below a number, moves between stages, growth in
 * warmth; each with its interval where the counts allow one, in sentences, with cautions.
 * @param series counts, days rising
 * @param question number not to be undercut, and within how many days
 * @throws RangeError when days do not rise, a count is no number of 0 or more, or what is asked is not above 0
 * @source derived: the methods of this folder, each with its source
 */
export function countsReport(series: CountSeries, question: CountQuestion): CountsReport {
  const { counts, byEffort = false } = series;
  const { below, within, threshold } = question;
  const used = countsAboveNone(counts);
  if (!(below > 0 && within > 0)) throw new RangeError(`below ${below} within ${within} days`);
  const growth = diffusionGrowth(counts);
  const last = used.at(-1);
  const logistic = logisticGrowth(counts);
  const limit = limitOf(logistic, counts);
  const trend = logLinearTrend(counts);
  const shown = limit?.shown ? logistic : undefined;
  const at = shown?.at ?? trend?.at;
  const figures: CountFindings = {
    counts,
    byEffort,
    ...known({
      growth,
      trend: trend && { rate: trend.rate },
      limit,
      falling: growth && last && fallingRisk(growth, { from: last.number, below }, within),
      stages: stagesOf(series),
      warmth: warmthOf(series, threshold),
      drawn: shown ? ('limit' as const) : trend ? ('trend' as const) : undefined,
    }),
    course: courseOf(shown ? counts : used, at),
    fitted: at ? counts.map(({ day }) => at(day)) : [],
  };
  return {
    ...figures,
    sentences: countSentences(figures),
    cautions: countCautions(figures, series, question),
  };
}
