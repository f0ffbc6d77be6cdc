import type { CountFindings, CountSentence, CountStages, CountWarmth } from './count-findings.ts';
import {
  animalsText,
  chanceText,
  changeRangeText,
  changeText,
  daysText,
  doublingText,
  perCentText,
  rangeText,
} from './count-words.ts';
import { FEWEST_FOR_LIMIT } from './logistic-growth.ts';

const DIFFUSION = 'Dennis, Munholland & Scott 1991';
const REGRESSION = 'regression of ln N on time (Draper & Smith 1998)';
const LOGISTIC = 'Pearl 1927; compared by AICc (Burnham & Anderson 2002)';

function growthText({ growth, limit }: CountFindings): string {
  if (!growth) return 'Two counts above 0 are needed before growth can be told.';
  const { rate, rateRange, variance } = growth;
  if (!rateRange) {
    const way =
      rate === 0 ? 'stayed as they were' : `changed by ${changeText(rate)} a day: they ${doublingText(rate)}`;
    return `Between the two counts above 0 numbers ${way}. Two counts do not tell how sure that is.`;
  }
  if (rate === 0 && variance?.value === 0)
    return 'All counts are alike: no growth, and no scatter to judge it by.';
  const [low, high] = rateRange;
  const range = changeRangeText(low, high);
  const numbers = limit?.shown ? 'Over the whole time numbers' : 'Numbers';
  if (low > 0)
    return `${numbers} grew by ${changeText(rate)} a day (${range}): they ${doublingText(rate, rateRange)}.`;
  if (high < 0)
    return `${numbers} fell by ${perCentText(rate)} a day (${range}): they ${doublingText(rate, rateRange)}.`;
  return `Whether numbers grow or fall cannot be said: the best guess is ${changeText(rate)}${rate >= 0 ? ' more' : ''} a day, and anything ${range} a day fits the counts.`;
}

function trendText({ trend }: CountFindings): CountSentence[] {
  if (!trend) return [];
  const { value, low, high } = trend.rate;
  const range = changeRangeText(low, high);
  const text = `If all scatter is miscounting and none of it good and bad days: ${changeText(value)}${value >= 0 ? ' more' : ''} a day (${range}).`;
  return [{ about: 'growth', text, source: REGRESSION }];
}

function limitText({ limit, counts }: CountFindings): string {
  if (counts.length < FEWEST_FOR_LIMIT)
    return `Whether numbers near a limit takes ${FEWEST_FOR_LIMIT} counts or more.`;
  if (!limit?.shown)
    return 'No limit shows: steady growth or decline fits the counts as well, or where a limit lies is left open.';
  return `Numbers level off at ${rangeText(limit.limit, animalsText)}. Few animals without that limit would ${doublingText(limit.rate.value, [limit.rate.low, limit.rate.high])}.`;
}

function fallingText(figures: CountFindings): CountSentence[] {
  const { falling, byEffort } = figures;
  if (!falling) return [];
  const { from, below, days, chance } = falling;
  const whom = byEffort ? `${animalsText(below)} in a unit of effort` : animalsText(below);
  const say = (text: string): CountSentence[] => [{ about: 'falling', text, source: DIFFUSION }];
  if (from <= below) return say(`The last count is ${animalsText(from)}: not above ${whom} as it is.`);
  const [value, low, high] = [chance.value, chance.low, chance.high].map(chanceText);
  const range = low === value && high === value ? '' : ` (${low} to ${high})`;
  return say(
    `Chance of falling to ${whom} within ${daysText(days)} of the last count: ${value}${range}.${laterText(figures)}`,
  );
}

/** What becomes of it in the long run, where it is certain whether numbers grow. */
function laterText({ growth, falling }: CountFindings): string {
  const [low = 0, high = 0] = growth?.rateRange ?? [];
  if (!falling || !(low > 0 || high < 0)) return '';
  if (falling.meanDays !== undefined)
    return ` At that rate it takes ${daysText(falling.meanDays)} on average.`;
  return ` Some day, if nothing changes: ${chanceText(falling.ever)}.`;
}

/** What becomes of one of a stage from one count to the next. */
function stageText({ matrix, names }: CountStages, from: number): string {
  const part = (element: number): string => `${Math.round(100 * element)} %`;
  const last = names.length - 1;
  const stay = matrix[from]![from]!;
  if (from === last)
    return `of the ${names[from]} ${part(stay)} live on, with ${animalsText(matrix[0]![from]!)} ${names[0]} each`;
  return `of the ${names[from]} ${part(stay)} stay so and ${part(matrix[from + 1]![from]!)} become ${names[from + 1]}`;
}

function stageSentences({ stages }: CountFindings): CountSentence[] {
  if (!stages) return [];
  const { names, step, growth } = stages;
  const moves = names.map((_, from) => stageText(stages, from)).join('; ');
  const settled =
    growth === undefined || !(growth > 0)
      ? ''
      : ` Numbers so made up would be ${Number(growth.toPrecision(3))} times as many a step later.`;
  const text = `From one count to the next, ${daysText(step)}: ${moves}.${settled}`;
  return [{ about: 'stages', text, source: 'Wood 1994; Caswell 2001, sec. 6.2' }];
}

function warmthText({ threshold, degreeDays, rate, rateRange }: CountWarmth): string {
  const range = rateRange ? ` (${changeRangeText(...rateRange)})` : '';
  return `In warmth above ${threshold} °C: ${changeText(rate)}${rate >= 0 ? ' more' : ''} for each degree-day${range}, and ${Math.round(degreeDays)} degree-days from the first count to the last.`;
}

/**
 * What counts tell, in sentences with their sources [text].
 * @param figures as `countsReport` works them out
 * @source derived: words for the figures
 */
export function countSentences(figures: CountFindings): CountSentence[] {
  return [
    { about: 'growth', text: growthText(figures), source: DIFFUSION },
    ...trendText(figures),
    { about: 'limit', text: limitText(figures), source: LOGISTIC },
    ...fallingText(figures),
    ...stageSentences(figures),
    ...(figures.warmth
      ? [{ about: 'warmth' as const, text: warmthText(figures.warmth), source: 'Baskerville & Emin 1969' }]
      : []),
  ];
}
