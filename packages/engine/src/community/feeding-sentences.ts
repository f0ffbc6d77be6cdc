import { capital } from '../outlook/capital.ts';
import { shown } from '../outlook/sentences.ts';
import { seriesSpec } from '../run/series.ts';
import { clockTime } from '../units/clock-time.ts';
import type { FeedingPlan, HeldPopulation } from './feeding-found.ts';
import type { WaterLeaving } from './feeding-water.ts';

export interface FeedingWords {
  /** By population id, and by species. */
  readonly names: ReadonlyMap<string, string>;
  /** Length of the trials [d]. */
  readonly days: number;
  readonly isFed: boolean;
  readonly isFoulUnfed: boolean;
  /** Part of a target that counts as held [1]. */
  readonly held: number;
}

type Found = Omit<FeedingPlan, 'sentences'>;

/** Less than this cannot be weighed out at home [kg]. */
const UNWEIGHABLE = 1e-6;
/** Below this a dose is told in milligrams [kg]. */
const SMALL = 1e-5;

function massText(mass: number): string {
  return mass < SMALL
    ? `${Number((mass * 1e6).toPrecision(2))} mg`
    : `${Number((mass * 1e3).toPrecision(2))} g`;
}

const intervalText = (days: number): string => (days === 1 ? 'every day' : `every ${days} days`);

function givenText({ mass, feedName, everyDays, onLand, hour }: Found): string {
  const at = hour === undefined ? '' : ` at ${clockTime(hour)}`;
  return `${massText(mass)} of ${feedName} ${intervalText(everyDays)}${at} ${onLand ? 'on the land' : 'into the water'}`;
}

/** 'carbonate hardness falls below 3 °dKH, the least for ramshorn snails, on day 310'. */
function leavingText({ series, side, limit, owner, day }: WaterLeaving, { names }: FeedingWords): string {
  const whose = `the ${side === 'low' ? 'least' : 'most'} for ${names.get(owner) ?? owner}`;
  return `${seriesSpec(series).name} ${side === 'low' ? 'falls below' : 'rises above'} ${shown(series, limit)}, ${whose}, on day ${day + 1}`;
}

function unheldSentences(found: Found, words: FeedingWords): string[] {
  const { mass, feedName, everyDays, leaves, advised } = found;
  const why = leaves
    ? `with ${massText(leaves.mass)} ${leavingText(leaves, words)}, and less of it holds too few`
    : 'the water stays as it is without, but something other than food holds them down';
  const none = `No dose of ${feedName} ${intervalText(everyDays)} holds that: ${why}.`;
  if (!advised)
    return [none, 'None is advised: with every dose that keeps the water in band those wanted die out.'];
  return [
    none,
    mass > 0
      ? `The best with the water in band: ${givenText(found)}.`
      : 'The best is to give none of it: with the water in band no dose carries more, since others eat it or something other than food holds them down.',
  ];
}

function doseSentences(found: Found, words: FeedingWords): string[] {
  const { mass, feedName, everyDays, holds, leaves } = found;
  if (!holds) return unheldSentences(found, words);
  if (mass <= 0) return ['They are held without any feed, by what the enclosure grows.'];
  if (mass < UNWEIGHABLE)
    return [
      `They are held nearly without feed, by what the enclosure grows: less than 1 mg of ${feedName} ${intervalText(everyDays)} is enough.`,
    ];
  return [
    `Give ${givenText(found)}.`,
    ...(leaves ? [`More does not help: with ${massText(leaves.mass)} ${leavingText(leaves, words)}.`] : []),
  ];
}

/** Part of their mean below which numbers on the last day dwindle [1]. @source assumed */
const DWINDLING = 0.85;
/** Numbers over the target from which feed is to be cut once they are there [1]. @source assumed */
const FAR_BEYOND = 2;

function heldSentence(
  { id, target, adults, atEnd, fromPlan, reachedOn }: HeldPopulation,
  words: FeedingWords,
): string {
  const { names, days, held, isFed } = words;
  const name = capital(names.get(id) ?? id);
  if (adults < held * target) {
    const fewer = atEnd < DWINDLING * adults ? `; they dwindle, ${atEnd.toFixed(0)} on the last day` : '';
    return `${name}: only about ${adults.toFixed(0)} adults in the last part of ${days} days, for ${target} wanted${fewer}.`;
  }
  const grown =
    reachedOn === undefined
      ? `from the animals in the file that is not reached within ${days} days (about ${fromPlan.toFixed(0)} in the last part)`
      : `from the animals in the file four fifths of that are there on day ${reachedOn}`;
  const outgrow = `; they outgrow it later${isFed ? ', so feed less then' : ''}`;
  const beyond = Math.max(adults, fromPlan) > FAR_BEYOND * target ? outgrow : '';
  return `${name}: about ${adults.toFixed(0)} adults in the last part of ${days} days, for ${target} wanted; ${grown}${beyond}.`;
}

function waterSentences({ ammonia, nitrite, oxygen, leftUnfed }: Found, words: FeedingWords): string[] {
  const water = `un-ionised ammonia up to ${ammonia.toFixed(3)} mg N/L, nitrite up to ${nitrite.toFixed(2)} mg N/L, oxygen down to ${oxygen.toFixed(1)} mg/L`;
  return [
    ...(words.isFoulUnfed
      ? [
          `Animals alone foul this water, fed or not: ${water}. Mature the filter first, bring them in by and by, or keep fewer.`,
        ]
      : []),
    ...(leftUnfed
      ? [
          `Without this feed too ${leavingText(leftUnfed, words)}: that is not held against the feed, only what goes further. A buffer or water changes mend it.`,
        ]
      : []),
  ];
}

/** Width of the interval of a share above which it is told to be rough [1]. @source assumed */
const ROUGH = 0.2;
/** Part of the runs that a dose is to hold in [1]; see `raisedUntilHalf`. */
const AIM = 0.5;

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** How sure it is, counted in runs that had no part in the choice, and what the choice went by where it is less than was aimed at. */
function sureSentences({ heldIn, chosenBy }: Found): string[] {
  const { held, runs, share, low, high } = heldIn;
  const rough = high - low > ROUGH ? ': so few runs tell it roughly' : '';
  const within = `true share ${Math.round(low * 100)} to ${percent(high)}${rough}`;
  return [
    `In ${held === 0 ? 'none' : held} of ${runs} fresh runs, drawn from what is not known of species and room and without part in the choice, the animals in the file come to four fifths of what is wanted or more: ${percent(share)} (${within}). Count them, and feed by the count.`,
    ...aimSentences(chosenBy, high),
  ];
}

function aimSentences(chosenBy: Found['chosenBy'], high: number): string[] {
  switch (chosenBy) {
    case 'expected run':
      return [
        'No runs were drawn to choose by: the dose follows the expected run alone, in which the animals in the file do not come to that.',
      ];
    case 'fewer of the runs drawn':
      return [
        'The aim was half of the runs, and in those that chose no dose tried with the water in band came to it: do not count on the number.',
      ];
    case 'half of the runs drawn':
      return high < AIM
        ? [
            'The aim was half of the runs: half of those that chose the dose hold it, but fewer of the fresh ones. Do not count on the number.',
          ]
        : [];
  }
}

/** What a search for a feeding found, in whole sentences. `derived`. */
export function feedingSentences(found: Found, words: FeedingWords): string[] {
  return [
    ...doseSentences(found, words),
    ...found.populations.filter(({ target }) => target > 0).map((each) => heldSentence(each, words)),
    ...sureSentences(found),
    ...waterSentences(found, words),
  ];
}
