import { geometryOf } from '../geometry/geometry.ts';
import type { Plan } from '../plan/plan.ts';
import {
  holdsAll,
  holdsLow,
  JUDGED_SERIES,
  type Judge,
  type Judged,
  judgeOf,
  shareThat,
} from './buffer-judge.ts';
import { leftOf, obstacleOf } from './buffer-obstacle.ts';
import { bufferPiece, weighable } from './buffer-piece.ts';
import { portioned } from './buffer-portions.ts';
import type {
  BufferAnswer,
  BufferLimit,
  BufferOption,
  BufferQuestion,
  ShareOfRuns,
} from './buffer-question.ts';
import { isMonotone, type Part, type Search, type SearchSetting, searchOffers } from './buffer-search.ts';
import { answerSentences, optionSentence } from './buffer-sentences.ts';
import { freshMembers } from './fresh-members.ts';
import type { Inquiry, TrialMember, TrialOrder } from './trial.ts';

const SEARCH_MEMBERS = 20;
const CONFIRM_MEMBERS = 100;
/** Members that confirm are others than those that searched; a mass that passes has done well in them, so others again judge it. */
const FIRST_TO_CONFIRM = 1000;
/** When confirming falls short: how much more is tried, ever larger steps. */
const MORE = [1.2, 1.4, 2, 2, 4] as const;

interface Context {
  readonly plan: Plan;
  readonly question: BufferQuestion;
  readonly judge: Judge;
  readonly setting: SearchSetting;
  readonly confirm: readonly TrialMember[];
  /** Members that had no part in the choice, by which its share is told. */
  readonly fresh: readonly TrialMember[];
}

function checkQuestion({ offers, probability, days }: BufferQuestion): void {
  if (!(Number.isInteger(days) && days >= 1 && days <= 1500))
    throw new RangeError(`a buffer is sized for a whole number of days from 1 to 1500, not ${days}`);
  if (!(probability >= 0.5 && probability <= 0.99))
    throw new RangeError(
      `the share of runs to hold lies between 50 % and 99 %, not at ${100 * probability} %`,
    );
  for (const { name, grains } of offers) {
    if (grains.length === 0 || grains.some((grain) => !(grain >= 1e-5 && grain <= 0.2)))
      throw new RangeError(`${name}: give grains between 0.01 mm and 20 cm`);
  }
  if (offers.length === 0) throw new RangeError('offer at least one carbonate');
}

const numbered = (from: number, count: number): number[] => Array.from({ length: count }, (_, i) => from + i);

function bareOrder({ days, seed }: BufferQuestion, members: readonly TrialMember[]): TrialOrder {
  return { change: {}, days, seed, members, series: JUDGED_SERIES };
}

/** Pairs of limits that leave nothing between them. */
function conflictOf(limits: readonly BufferLimit[]): readonly [BufferLimit, BufferLimit] | undefined {
  for (const low of limits) {
    const high = limits.find(({ series, side }) => series === low.series && side === 'high');
    if (low.side === 'low' && high && high.value <= low.value) return [low, high];
  }
  return undefined;
}

function optionOf(search: Search, { question, setting }: Context): BufferOption {
  const { offer, grain, tried, closest } = search;
  const membered = tried.filter(({ runs }) => runs.some(({ member }) => member !== 'expected'));
  const found = membered.find(
    ({ mass, runs }) =>
      search.holds && mass >= search.holds.mass && shareThat(runs, holdsAll).share >= question.probability,
  );
  const shown = found ?? closest;
  const obstacle = found ? undefined : obstacleOf(search, setting);
  const option: Omit<BufferOption, 'sentence'> = {
    material: offer.material,
    name: offer.name,
    grain,
    verdict: found ? 'found' : 'cannot',
    mass: shown.mass,
    inBand: shareThat(shown.runs, holdsAll),
    fresh: false,
    left: leftOf(shown.runs, setting.without),
    tried: membered.map(({ mass, runs }) => ({ mass, inBand: shareThat(runs, holdsAll) })),
    monotone: isMonotone(tried),
    portions: [{ day: 0, mass: shown.mass }],
    gentle: true,
    ...(obstacle && { because: obstacle.kind }),
  };
  return { ...option, sentence: optionSentence(option, question, obstacle) };
}

interface Confirmed {
  readonly mass: number;
  readonly runs: readonly Judged[];
  readonly holds: boolean;
}

/** Members run at a time when confirming. */
const CONFIRM_CHUNK = 20;

/** Runs the members of an order in chunks, until all are done or too many have failed for the share asked. */
function* confirming(order: TrialOrder, { question, judge }: Context): Part<Judged[]> {
  const { members } = order;
  const allowed = members.length * (1 - question.probability) + 1e-9;
  const runs: Judged[] = [];
  for (let from = 0; from < members.length; from += CONFIRM_CHUNK) {
    const [answer = []] = yield [{ ...order, members: members.slice(from, from + CONFIRM_CHUNK) }];
    runs.push(...answer.map((run) => judge.judge(run)));
    if (runs.filter((run) => !holdsAll(run)).length > allowed) break;
  }
  return runs;
}

/** Runs the option with members other than those that searched; where it falls short, with more and more of it. */
function* confirmed(option: BufferOption, context: Context): Part<Confirmed> {
  const { question } = context;
  const offer = question.offers.find(({ material }) => material === option.material)!;
  let mass = option.mass;
  let runs: Judged[] = [];
  for (const factor of [1, ...MORE]) {
    mass = weighable(mass * factor);
    runs = yield* confirming(
      {
        ...bareOrder(question, context.confirm),
        change: { pieces: [bufferPiece(offer, mass, option.grain)] },
      },
      context,
    );
    const isWhole = runs.length === context.confirm.length;
    if (isWhole && shareThat(runs, holdsAll).share >= question.probability)
      return { mass, runs, holds: true };
    // More carbonate mends a lower limit that was left, never an upper one.
    if (shareThat(runs, holdsLow).share >= question.probability) break;
  }
  return { mass, runs, holds: false };
}

/** Runs of a mass that was chosen by members that had no part in it. */
function* judgedAfresh({ material, grain }: BufferOption, mass: number, context: Context): Part<Judged[]> {
  const { question, fresh, judge } = context;
  const offer = question.offers.find((each) => each.material === material)!;
  const change = { pieces: [bufferPiece(offer, mass, grain)] };
  const [runs = []] = yield [{ ...bareOrder(question, fresh), change }];
  return runs.map((run) => judge.judge(run));
}

/** Confirms the options that were found, the least mass first, until one holds. */
function* best(options: readonly BufferOption[], context: Context): Part<readonly BufferOption[]> {
  const { question, setting } = context;
  let all = options;
  const order = options
    .flatMap((option, at) => (option.verdict === 'found' ? [{ at, mass: option.mass }] : []))
    .sort((a, b) => a.mass - b.mass);
  for (const { at } of order) {
    const option = all[at]!;
    const { mass, runs: approving, holds } = yield* confirmed(option, context);
    const runs = holds ? yield* judgedAfresh(option, mass, context) : approving;
    const confirmedIn = shareThat(approving, holdsAll);
    const now: Omit<BufferOption, 'sentence'> = {
      ...option,
      mass,
      inBand: shareThat(runs, holdsAll),
      fresh: holds,
      verdict: holds ? 'found' : 'cannot',
      left: leftOf(runs, setting.without),
      tried: [...option.tried, { mass, inBand: confirmedIn }].sort((a, b) => a.mass - b.mass),
      ...(!holds && { because: 'rises too high' as const }),
    };
    const mended = holds ? { ...now, ...(yield* portioned(now, context)) } : now;
    const obstacle = holds ? undefined : { kind: 'rises too high' as const, above: commonestAbove(runs) };
    all = all.with(at, { ...mended, sentence: optionSentence(mended, question, obstacle) });
    if (holds) return all;
  }
  return all;
}

function commonestAbove(runs: readonly Judged[]): Judged['above'] {
  return runs.find(({ above }) => above)?.above;
}

function* wholeSearch(plan: Plan, question: BufferQuestion, judge: Judge): Part<BufferAnswer> {
  const { days, seed, probability, members } = question;
  const searching = numbered(0, members?.search ?? SEARCH_MEMBERS);
  const confirm = numbered(FIRST_TO_CONFIRM, members?.confirm ?? CONFIRM_MEMBERS);
  const conflict = conflictOf(judge.limits);
  const base = { days, probability, limits: judge.limits };
  const bare = yield [bareOrder(question, searching)];
  const without = bare[0]!.map((run) => judge.judge(run));
  let inBand: ShareOfRuns = shareThat(without, holdsAll);
  if (inBand.share >= probability) {
    const sure = yield [bareOrder(question, confirm)];
    inBand = shareThat(
      sure[0]!.map((run) => judge.judge(run)),
      holdsAll,
    );
  }
  const verdict = inBand.share >= probability ? ('not needed' as const) : ('cannot' as const);
  const answer = { ...base, verdict, without: inBand, options: [], sentences: [], runs: 0 };
  if (verdict === 'not needed' || conflict)
    return { ...answer, sentences: answerSentences(answer, { without, ...(conflict && { conflict }) }) };
  const geometry = geometryOf(plan);
  const water = geometry.volumeAt(plan.water.level);
  const setting: SearchSetting = { days, seed, probability, judge, members: searching, water, without };
  const context: Context = { plan, question, judge, setting, confirm, fresh: freshMembers(confirm.length) };
  const searches = yield* searchOffers(question.offers, setting);
  const options = yield* best(
    searches.map((search) => optionOf(search, context)),
    context,
  );
  const chosen = options.findIndex(({ verdict, fresh }) => verdict === 'found' && fresh);
  const whole: BufferAnswer = {
    ...answer,
    verdict: chosen < 0 ? 'cannot' : 'found',
    options,
    ...(chosen >= 0 && { best: chosen }),
  };
  return { ...whole, sentences: answerSentences(whole, { without }) };
}

/** Runs likely needed, for the progress shown; found by counting searches. @source assumed */
function likelyRuns({ offers, members }: BufferQuestion): number {
  const searches = offers.reduce((sum, { grains }) => sum + grains.length, 0);
  const search = members?.search ?? SEARCH_MEMBERS;
  return 3 * search * (1 + searches) + 2 * (members?.confirm ?? CONFIRM_MEMBERS);
}

/**
 * Sizes a carbonate buffer: the least mass of each material and grain on offer that keeps pH and carbonate hardness in
 * the bands of those who live there (or in stated bands) for the days asked, in the share of members asked; or why
 * none can. Searched by bracketing and bisection on few members with common random numbers, confirmed on others; the share told is that of others again.
 * @returns an inquiry; answer it with `answerHere` or `answerWith`. Masses in kg.
 * @throws RangeError for a question out of range, or when there is no band of pH or KH to hold.
 * @source derived; wilson-1927 for the interval of the share
 */
export function* sizeBuffer(plan: Plan, question: BufferQuestion): Inquiry<BufferAnswer> {
  checkQuestion(question);
  const part = wholeSearch(plan, question, judgeOf(question.bands ?? plan.bands, question.days));
  const likely = likelyRuns(question);
  let done = 0;
  let step = part.next();
  while (!step.done) {
    const orders = step.value;
    const wanted = orders.reduce((sum, { members }) => sum + members.length, 0);
    const answers = yield {
      orders,
      about: 'mass that holds the band',
      done,
      expected: Math.max(likely, done + wanted),
    };
    done += wanted;
    step = part.next(answers);
  }
  return { ...step.value, runs: done };
}
