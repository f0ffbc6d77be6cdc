import { exp, log } from '../numerics/elementary.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import type { DietFacts } from './diet-rules.ts';

/**
 * Ground searched by hunters that walk or hover over it, in water and on land, s M^0.68 [m2/s], M their mass [kg]: log10 s.
 * @source pawar-2012
 */
const SEARCH_LOG = -3.08;
const SEARCH_POWER = 0.68;
const KILOGRAMS_PER_MILLIGRAM = 1e-6;

/** What the rule needs of a life history. */
export interface SearchFacts extends Pick<DietFacts, 'diet'> {
  /** Wet, full grown [mg]. */
  readonly adultMass: number;
}

/**
 * Ground a full-grown hunter searches for prey [m2/d], >= 0: 10^-3.08 M^0.68 m2/s times the share of prey in its diet, so that
 * those who also graze and scavenge hunt for that part of their time. On land the leaves are ground too.
 * @source pawar-2012 for search over ground (2D), 255 pairs of animals of water and land, mostly in bare places; the part of
 *   its time is assumed
 */
export function searchOf({ adultMass, diet }: SearchFacts): number {
  const all = Object.values(diet).reduce((sum, share) => sum + share, 0);
  if (!(all > 0)) return 0;
  const mass = adultMass * KILOGRAMS_PER_MILLIGRAM;
  const perSecond = exp(SEARCH_LOG * log(10) + SEARCH_POWER * log(mass));
  return (SECONDS_PER_DAY * perSecond * (diet.prey ?? 0)) / all;
}
