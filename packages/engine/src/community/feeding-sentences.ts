import type { FeedingPlan, HeldPopulation } from './feeding-found.ts';
import { capital } from './inhabitant.ts';

export interface FeedingWords {
  /** By population id. */
  readonly names: ReadonlyMap<string, string>;
  /** Length of the trials [d]. */
  readonly days: number;
  readonly isFed: boolean;
  readonly isFoulUnfed: boolean;
  /** Part of a target that counts as held [1]. */
  readonly held: number;
}

type Found = Omit<FeedingPlan, 'sentences'>;

/** 9.5 as '09:30'. */
function clockTime(hour: number): string {
  const minutes = Math.round(hour * 60);
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/** Less than this cannot be weighed out at home [kg]. */
const UNWEIGHABLE = 1e-6;
/** Below this a dose is told in milligrams [kg]. */
const SMALL = 1e-5;

function massText(mass: number): string {
  return mass < SMALL
    ? `${Number((mass * 1e6).toPrecision(2))} mg`
    : `${Number((mass * 1e3).toPrecision(2))} g`;
}

function doseSentence({ mass, feedName, everyDays, onLand, hour }: Found): string {
  if (mass <= 0) return 'They are held without any feed, by what the enclosure grows.';
  const every = everyDays === 1 ? 'every day' : `every ${everyDays} days`;
  if (mass < UNWEIGHABLE)
    return `They are held nearly without feed, by what the enclosure grows: less than 1 mg of ${feedName} ${every} is enough.`;
  const at = hour === undefined ? '' : ` at ${clockTime(hour)}`;
  return `Give ${massText(mass)} of ${feedName} ${every}${at} ${onLand ? 'on the land' : 'into the water'}.`;
}

/** Numbers over the target from which feed is to be cut once they are there [1]. @source assumed */
const FAR_BEYOND = 2;

function heldSentence(
  { id, target, adults, fromPlan, reachedOn }: HeldPopulation,
  words: FeedingWords,
): string {
  const { names, days, held, isFed } = words;
  const name = capital(names.get(id) ?? id);
  if (adults < held * target)
    return `${name}: only about ${adults.toFixed(0)} adults for ${target} wanted; more feed does not mend it without fouling the water, or something other than food holds them down.`;
  const grown =
    reachedOn === undefined
      ? `from the animals in the file that is not reached within ${days} days`
      : `from the animals in the file four fifths of that are there on day ${reachedOn}`;
  const outgrow = `; they outgrow it later${isFed ? ', so feed less then' : ''}`;
  const beyond = Math.max(adults, fromPlan) > FAR_BEYOND * target ? outgrow : '';
  return `${name}: about ${adults.toFixed(0)} adults in the last part of ${days} days, for ${target} wanted; ${grown}${beyond}.`;
}

function waterSentence({ ammonia, nitrite, oxygen, clean }: Found, isFoulUnfed: boolean): string[] {
  if (clean) return [];
  const water = `un-ionised ammonia up to ${ammonia.toFixed(3)} mg N/L, nitrite up to ${nitrite.toFixed(2)} mg N/L, oxygen down to ${oxygen.toFixed(1)} mg/L`;
  return [
    isFoulUnfed
      ? `Animals alone foul this water, fed or not: ${water}. Mature the filter first, bring them in by and by, or keep fewer.`
      : `Even this fouls the water: ${water}. Keep fewer animals, more water or a matured filter.`,
  ];
}

/** What a search for a feeding found, in whole sentences. `derived`. */
export function feedingSentences(found: Found, words: FeedingWords): string[] {
  return [
    doseSentence(found),
    ...found.populations.filter(({ target }) => target > 0).map((each) => heldSentence(each, words)),
    `Of the runs drawn from what is not known of species and room ${Math.round(found.heldIn * 100)} % hold that from the animals in the file: count them, and feed by the count.`,
    ...waterSentence(found, words.isFoulUnfed),
  ];
}
