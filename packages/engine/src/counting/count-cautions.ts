import type { Count } from './count.ts';
import type { CountFindings, CountQuestion, CountSeries } from './count-findings.ts';
import { daysText } from './count-words.ts';

/** Fewest counts from which a growth rate and its risk are worth much (Morris & Doak 2002, ch. 3). */
const FEW = 10;
/** Part of the time counted for which a chance of dying out can be told (Fieberg & Ellner 2000). */
const AHEAD = 0.2;
/** Part of the scatter above which miscounting is told. */
const MUCH = 0.2;

/** Scatter that errors of counting alone would make, as part of that found; undefined unless each count has one. */
function scatterOfErrors(used: readonly Count[], { growth }: CountFindings): number | undefined {
  if (!growth?.variance || !(growth.variance.value > 0)) return undefined;
  if (used.length < 3 || !used.every(({ error }) => error !== undefined)) return undefined;
  const share = used.map(({ number, error }) => (error! / number) * (error! / number));
  const made = share.slice(1).reduce((sum, each, i) => {
    const days = used[i + 1]!.day - used[i]!.day;
    return sum + (each + share[i]!) / days;
  }, 0);
  return made / (used.length - 1) / growth.variance.value;
}

function onFew({ counts, growth }: CountFindings): string[] {
  if (counts.length >= FEW) return [];
  const wide = growth?.rateRange ? 'The intervals are wide for that, and bad' : 'Bad';
  return [
    `${counts.length === 1 ? 'One count tells' : `${counts.length} counts tell`} little. ${wide} days that have not come yet are not in them. Ten or more are wanted (Morris & Doak 2002).`,
  ];
}

function onMiscounts(figures: CountFindings, used: readonly Count[]): string[] {
  const part = scatterOfErrors(used, figures);
  if (part !== undefined) {
    if (part < MUCH) return [];
    const told = part >= 1 ? 'all' : `${Math.round(100 * part)} %`;
    return [
      `The errors you give would make ${told} of the scatter by themselves, so true good and bad days are fewer, and the chance of falling is told too great.`,
    ];
  }
  return (figures.growth?.variance?.value ?? 0) > 0
    ? [
        'Miscounts are taken for good and bad days, which makes the chance of falling look greater than it is. Count twice on one day to learn how far you are off, and give that as an error.',
      ]
    : [];
}

function onLimit({ limit }: CountFindings): string[] {
  if (!limit?.shown) return [];
  const near =
    limit.start.value > limit.limit.value / 2
      ? [
          'The first count is already near that limit, and miscounts alone look like one: a count too high is followed by a lower. Take it for a level about which numbers move (Freckleton et al. 2006).',
        ]
      : [];
  return [
    'Rate and chance are those of growth without a limit; near one numbers grow no more, and move about it.',
    ...near,
  ];
}

function onFalling({ falling, growth }: CountFindings, { within }: CountQuestion): string[] {
  if (!falling || !growth) return [];
  const far = within > AHEAD * growth.span;
  const ahead = far
    ? [
        `${daysText(growth.span)} of counts carry about ${daysText(Math.max(1, AHEAD * growth.span))} ahead; a chance for ${daysText(within)} is a guess (Fieberg & Ellner 2000).`,
      ]
    : [];
  const falls = growth.rateRange && growth.rateRange[1] < 0;
  return [
    ...ahead,
    ...(falls
      ? ['Numbers fall: look at water, warmth and food first, and ask a vet about animals that look ill.']
      : []),
  ];
}

function onStages({ stages }: CountFindings, series: CountSeries): string[] {
  if (!series.stages) return [];
  if (!stages) {
    const needed = series.stages.names.length + 2;
    return [
      `Moves between stages need ${needed} counts or more at even steps of time: the same number of days from each count to the next.`,
    ];
  }
  const figures = stages.names.length * 2;
  const few = stages.matrix.length * (series.counts.length - 1) < 3 * figures;
  return [
    ...(few
      ? [
          `Moves between stages are ${figures} figures out of ${series.counts.length} counts: take them as a hint.`,
        ]
      : []),
    ...(atTheEnd(stages)
      ? [
          'A move of 0 % or 100 % is the end of what can be: the stages went up and down too much in step to tell the moves apart.',
        ]
      : []),
  ];
}

/** Whether a part of a stage that stays, grows up or lives on is none or all. */
function atTheEnd({ matrix }: NonNullable<CountFindings['stages']>): boolean {
  return matrix.some((_, from) =>
    [matrix[from]![from]!, matrix[from + 1]?.[from] ?? 0.5].some((part) => part < 0.005 || part > 0.995),
  );
}

function onWarmth({ warmth }: CountFindings, series: CountSeries, { threshold }: CountQuestion): string[] {
  if (!series.warmth || threshold === undefined || warmth) return [];
  return [
    'Growth in warmth cannot be told: in some stretch between counts it was never warmer than the threshold.',
  ];
}

/**
 * What to mind about the figures of some counts [text].
 * @param figures as `countsReport` works them out
 * @param series the counts
 * @param question what was asked
 * @source morris-doak-2002 ch. 3; fieberg-ellner-2000; freckleton-2006
 */
export function countCautions(
  figures: CountFindings,
  series: CountSeries,
  question: CountQuestion,
): string[] {
  const { counts, byEffort } = figures;
  const used = counts.filter(({ number }) => number > 0);
  const none = counts.length - used.length;
  return [
    ...onFew(figures),
    ...(none > 0
      ? [
          `${none === 1 ? 'A count' : `${none} counts`} of 0 ${none === 1 ? 'is' : 'are'} left out of rate and chance: nobody seen is not nobody there, and 0 has no rate of growth.`,
        ]
      : []),
    ...onMiscounts(figures, used),
    ...onLimit(figures),
    ...onFalling(figures, question),
    ...onStages(figures, series),
    ...onWarmth(figures, series, question),
    byEffort
      ? 'Numbers in a unit of effort follow those who live there only while as great a part of them shows.'
      : 'A count is of those who show: where plants close up or animals hide more, that looks like fewer. Animals put in or taken out between counts look like births and deaths.',
  ];
}
