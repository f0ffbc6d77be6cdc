import { seriesSpec } from '../run/series.ts';
import type { Judged, Leaving } from './buffer-judge.ts';
import type { Obstacle } from './buffer-obstacle.ts';
import type {
  BufferAnswer,
  BufferLimit,
  BufferOption,
  BufferQuestion,
  ShareOfRuns,
} from './buffer-question.ts';
import { shown } from './sentences.ts';

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** A mass as it is weighed: grams, from one kilogram on kilograms. `derived`. */
export function massText(mass: number): string {
  if (mass >= 1) return `${trimmed(mass, 2)} kg`;
  return `${trimmed(mass * 1000, mass < 0.02 ? 1 : 0)} g`;
}

function trimmed(value: number, digits: number): string {
  const text = value.toFixed(digits);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

const grainText = (grain: number): string => `${trimmed(grain * 1000, 2)} mm`;

function sharesText({ share, low, high, runs }: ShareOfRuns, which = 'runs'): string {
  return `${percent(share)} of ${runs} ${which} (true share ${percent(low)} to ${percent(high)})`;
}

/** Whose share it is: fresh runs tell it, those that chose flatter. */
function tellingText({ inBand, fresh, verdict }: Pick<BufferOption, 'inBand' | 'fresh' | 'verdict'>): string {
  if (fresh) return sharesText(inBand, 'fresh runs');
  const which = verdict === 'found' ? 'that chose it, which flatters' : 'it was tried in';
  return `${percent(inBand.share)} of the ${inBand.runs} runs ${which}`;
}

const quantity = (series: 'pH' | 'KH'): string => seriesSpec(series).name;

function limitText({ series, side, limit }: Leaving): string {
  return `the ${shown(series, limit.value)} that is the ${side === 'low' ? 'least' : 'most'} for ${limit.owner}`;
}

function obstacleText(option: Pick<BufferOption, 'mass'>, obstacle: Obstacle): string {
  const { below, above, lowest, most = option.mass, left = 0 } = obstacle;
  const short = below ? `${quantity(below.series)} is below ${limitText(below)} on day ${below.day + 1}` : '';
  const even = `even with ${massText(most)}`;
  switch (obstacle.kind) {
    case 'too late':
      return `${even} ${short}, before carbonate can be felt. Raise the hardness of the fill with salts or harder water first; a buffer only keeps it`;
    case 'dissolves too slowly':
      return `${even}, of which ${percent(left)} is left at the end, ${short}: it dissolves more slowly than acid uses it up. A finer grain, or water led through it, dissolves faster`;
    case 'acid too strong':
      return `${even} ${short}, and ${percent(left)} of it is left at the end: acid uses it up. Lessen what makes the acid; the budget of alkalinity names it`;
    case 'saturated':
      return `${even} ${short}${lowest === undefined ? '' : ` and falls to ${shown(below?.series ?? 'KH', lowest)}`}. More of it hardly changes that, since water close to balance with it takes up little more; only salts or harder water go higher`;
    case 'rises too high':
      return above
        ? `what holds the lower limits lifts ${quantity(above.series)} above ${limitText(above)} on day ${above.day + 1}. Who needs soft water cannot share a buffered one`
        : 'no mass holds the lower and the upper limits often enough';
  }
}

function portionsText({ portions, gentle }: Pick<BufferOption, 'portions' | 'gentle'>): string {
  if (portions.length < 2) return '';
  const last = portions.at(-1)!;
  const pace = gentle
    ? "so that no day's change is too fast for the animals"
    : 'and move the animals out meanwhile, since even so the water changes too fast for them';
  return ` Put it in as ${portions.length} equal portions on days 1 to ${last.day + 1}, ${pace}.`;
}

/** One sentence or two on an option. `derived`. */
export function optionSentence(
  option: Omit<BufferOption, 'sentence'>,
  { days, probability }: Pick<BufferQuestion, 'days' | 'probability'>,
  obstacle?: Obstacle,
): string {
  const { name, grain, verdict, mass, inBand, fresh, left } = option;
  // The library's names tell the usual sizes after a comma; here the grain is told.
  const what = `${name.split(',')[0]} of ${grainText(grain)} grain`;
  if (verdict === 'found') {
    const short =
      fresh && inBand.share < probability
        ? ` The runs that chose it came to the ${percent(probability)} asked; these fall short of it.`
        : '';
    return `${massText(mass)} of ${what} keeps pH and carbonate hardness in band for ${days} days in ${tellingText(option)}; ${percent(left)} of it is left then.${short}${portionsText(option)}`;
  }
  const why = obstacle ? `: ${obstacleText(option, obstacle)}` : '';
  return `No mass of ${what} does it in ${percent(probability)} of runs${why}. Closest: ${massText(mass)}, in band in ${tellingText(option)}.`;
}

interface Evidence {
  readonly without: readonly Judged[];
  readonly conflict?: readonly [BufferLimit, BufferLimit];
}

/** One option of each material and obstacle: the others would say the same. */
function oncePerObstacle(options: readonly BufferOption[]): BufferOption[] {
  const told = new Set<string>();
  return options.filter(({ material, because = '' }) => {
    const key = `${material} ${because}`;
    return told.has(key) ? false : Boolean(told.add(key));
  });
}

/** The answer as a whole in one to three sentences. `derived`. */
export function answerSentences(answer: BufferAnswer, { conflict }: Evidence): string[] {
  const { verdict, without, days, probability, options, best } = answer;
  const bare = `Without a buffer pH and carbonate hardness stay in band for ${days} days in ${sharesText(without)}.`;
  if (conflict) {
    const [low, high] = conflict;
    return [
      `No buffer can: ${low.owner} and ${high.owner} do not fit together, with ${quantity(low.series)} of at least ${shown(low.series, low.value)} for the first and at most ${shown(high.series, high.value)} for the second. Keep one of them elsewhere.`,
      bare,
    ];
  }
  if (verdict === 'not needed') return [`No buffer is needed. ${bare}`];
  const chosen = best === undefined ? undefined : options[best];
  if (chosen) return [chosen.sentence, bare];
  return [
    `No buffer on offer holds the band in ${percent(probability)} of runs for ${days} days.`,
    bare,
    ...oncePerObstacle(options).map(({ sentence }) => sentence),
  ];
}
