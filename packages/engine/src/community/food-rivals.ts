import { capital } from '../outlook/capital.ts';
import type { FoodFlow } from './food-flows.ts';

/** A food that one population took from another over a run. */
export interface FoodRival {
  readonly food: string;
  readonly foodName: string;
  /** Population ids of who lost it and of who takes most of it at the end. */
  readonly loser: string;
  readonly taker: string;
  /** Of all that the loser ate in its best four weeks of this food, the part that was this food [0..1]. */
  readonly dependence: number;
  /** What the loser ate of it in those weeks and in the last four, and what the taker ate in both [mg C/week]. */
  readonly loserBefore: number;
  readonly loserAfter: number;
  readonly takerBefore: number;
  readonly takerAfter: number;
  /** First of the loser's best four weeks, from 0. */
  readonly bestWeek: number;
  /** The same for people. */
  readonly sentence: string;
}

const STRETCH = 4;
/** A food counts as one to lose from this part of the meals on; it is lost when less than this part is left; the taker has this share of it. @source assumed */
const NEEDED = 0.2;
const LEFT = 0.6;
const MOST = 0.5;

const meanFrom = (weekly: readonly number[], week: number): number => {
  let sum = 0;
  for (let k = week; k < week + STRETCH; k += 1) sum += weekly[k] ?? 0;
  return sum / STRETCH;
};

function bestWeekOf(weekly: readonly number[]): number {
  let best = 0;
  for (let week = 1; week + STRETCH <= weekly.length; week += 1)
    if (meanFrom(weekly, week) > meanFrom(weekly, best)) best = week;
  return best;
}

function rivalOver(lost: FoodFlow, flows: readonly FoodFlow[], nameOf: NameOf): FoodRival | undefined {
  const last = lost.weekly.length - STRETCH;
  const best = bestWeekOf(lost.weekly);
  const [before, after] = [meanFrom(lost.weekly, best), meanFrom(lost.weekly, last)];
  const meals = flows
    .filter(({ eater }) => eater === lost.eater)
    .reduce((sum, { weekly }) => sum + meanFrom(weekly, best), 0);
  const dependence = meals > 0 ? before / meals : 0;
  if (!(dependence >= NEEDED && after < LEFT * before)) return undefined;
  const eaters = flows.filter(({ food, eater }) => food === lost.food && eater !== lost.eater);
  const all = after + eaters.reduce((sum, { weekly }) => sum + meanFrom(weekly, last), 0);
  const taker = eaters.find(
    ({ weekly }) =>
      meanFrom(weekly, last) >= MOST * all && meanFrom(weekly, last) > meanFrom(weekly, best) / LEFT,
  );
  if (!taker) return undefined;
  const rival = {
    food: lost.food,
    foodName: lost.foodName,
    loser: lost.eater,
    taker: taker.eater,
    dependence,
    loserBefore: before,
    loserAfter: after,
    takerBefore: meanFrom(taker.weekly, best),
    takerAfter: meanFrom(taker.weekly, last),
    bestWeek: best,
  };
  return { ...rival, sentence: sentenceOf(rival, nameOf) };
}

type NameOf = (population: string) => string;

function sentenceOf(rival: Omit<FoodRival, 'sentence'>, nameOf: NameOf): string {
  const { foodName, loserBefore, loserAfter, takerAfter, dependence } = rival;
  const [loser, taker] = [nameOf(rival.loser), nameOf(rival.taker)];
  const share = Math.round(100 * dependence);
  const part = Math.round((100 * takerAfter) / (takerAfter + loserAfter));
  return `${capital(loser)} lose ${foodName} to ${taker}: ${amount(loserBefore)} mg C a week when they had most of it, ${share} % of their meals; ${amount(loserAfter)} at the end, when ${taker} take ${part} % of what the two eat of it.`;
}

const amount = (value: number): string => (value >= 10 ? value.toFixed(0) : value.toPrecision(1));

/**
 * Whom a run left without a food because another population took it: a food that made at least a fifth of somebody's
 * meals in its best four weeks, of which it got less than three fifths of that in the last four, while another ate more
 * of it than then and now has at least half. Greatest loss first.
 * @param flows who eats what, week by week [mg C/week]
 * @param nameOf a population's name by its id; the id itself when left out
 * @returns amounts [mg C/week], none for runs under eight weeks
 * @source derived; thresholds assumed
 */
export function foodRivals(flows: readonly FoodFlow[], nameOf: NameOf = (id) => id): FoodRival[] {
  return flows
    .filter(({ weekly }) => weekly.length >= 2 * STRETCH)
    .flatMap((flow) => rivalOver(flow, flows, nameOf) ?? [])
    .sort((a, b) => b.loserBefore - b.loserAfter - (a.loserBefore - a.loserAfter));
}
