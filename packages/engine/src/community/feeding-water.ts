import { dailyLimits, type Limits, limitOn, limitsOf, type Side } from '../outlook/bands.ts';
import { firstLeaving } from '../outlook/crossings.ts';
import type { Band, Plan } from '../plan/plan.ts';
import type { FeedingTrial, WaterSeries } from './feeding-trial.ts';
import { medianTraits } from './need.ts';

/** A limit of the water that is left in a trial. */
export interface WaterLeaving {
  readonly series: WaterSeries;
  readonly side: Side;
  /** In the unit of the series, and whose it is. */
  readonly limit: number;
  readonly owner: string;
  /** Day of the trial on which it is left. */
  readonly day: number;
}

const COMMON = { basis: 'common practice', source: 'no source' } as const;
/** Un-ionised ammonia that counts as foul where no band says [mg N/L], and oxygen [mg/L]. @source common practice, no source */
const FOUL: readonly Band[] = [
  { series: 'unionisedAmmonia', high: 0.04, owner: 'clean water', ...COMMON },
  { series: 'oxygenLow', low: 3, owner: 'clean water', ...COMMON },
];
/** How much further than without feed a water that leaves its band anyway may go: pH, and carbonate hardness [°dKH]. @source assumed */
const FURTHER = { pH: 0.3, KH: 1 } as const;

type Acid = keyof typeof FURTHER;
/** One limit by itself: a wider one is judged too where the narrowest is left without feed. */
interface AcidLimits extends Limits {
  readonly series: Acid;
  readonly daily: Float64Array;
}

/** The pH that animals without a band of it survive, from the day on which they come. */
function survived({ populations, bands, actions }: Plan): Band[] {
  return populations.flatMap((population): Band[] => {
    const { id, species, founders, chance } = population;
    const isKnown = bands.some(({ owner, series }) => owner === species && series === 'pH');
    if (isKnown || chance !== undefined) return [];
    const days = actions.flatMap((each) =>
      each.kind === 'add animals' && each.population === id ? [each.day] : [],
    );
    const fromDay = founders.length > 0 || days.length === 0 ? 0 : Math.min(...days);
    const { pHLow: low, pHHigh: high, shareInWater } = medianTraits(population);
    return shareInWater > 0
      ? [{ series: 'pH', low, high, owner: species, fromDay, basis: 'survived', source: 'traits' }]
      : [];
  });
}

/** Tells what of the water a trial leaves. */
export interface WaterJudge {
  /** First limit of ammonia, nitrite or oxygen that is left once all have settled in, be it by the feed or not. */
  fouling(trial: FeedingTrial): WaterLeaving | undefined;
  /** First limit of pH or carbonate hardness left for three days running, further than in a trial without the feed. */
  leaving(trial: FeedingTrial, unfed: FeedingTrial): WaterLeaving | undefined;
  /** First lower limit of these that is left for three days running, be it by the feed or not. */
  souring(trial: FeedingTrial): WaterLeaving | undefined;
}

/** The one that comes first. `derived`. */
export function earliest(leavings: readonly (WaterLeaving | undefined)[]): WaterLeaving | undefined {
  let first: WaterLeaving | undefined;
  for (const one of leavings) if (one && (!first || one.day < first.day)) first = one;
  return first;
}

function foulingOf(limits: readonly Limits[], { water, settledOn }: FeedingTrial): WaterLeaving | undefined {
  return earliest(
    limits.map(({ series, side, limits: [narrowest] }) => {
      const { value, owner } = narrowest!;
      const course = water[series as WaterSeries].subarray(settledOn);
      const at = course.findIndex((each) => (side === 'low' ? each < value : each > value));
      return at < 0
        ? undefined
        : { series: series as WaterSeries, side, limit: value, owner, day: settledOn + at };
    }),
  );
}

/** Limits of each day, widened to what the water does without the feed where it leaves them then. */
function allowed({ series, side, daily }: AcidLimits, unfed: FeedingTrial | undefined): Float64Array {
  const course = unfed?.water[series];
  if (!course || firstLeaving(course, daily, side) < 0) return daily;
  const kept = course.filter((_, day) => Number.isFinite(daily[day]!));
  if (side === 'low') {
    const least = kept.reduce((a, b) => Math.min(a, b)) - FURTHER[series];
    return daily.map((limit) => Math.min(limit, least));
  }
  const most = kept.reduce((a, b) => Math.max(a, b)) + FURTHER[series];
  return daily.map((limit) => Math.max(limit, most));
}

function acidLeaving(
  limits: AcidLimits,
  trial: FeedingTrial,
  unfed?: FeedingTrial,
): WaterLeaving | undefined {
  const { series, side } = limits;
  const day = firstLeaving(trial.water[series], allowed(limits, unfed), side);
  const limit = day < 0 ? undefined : limitOn(limits, day);
  return limit && { series, side, limit: limit.value, owner: limit.owner, day };
}

/**
 * A judge of the water of feeding trials, by the bands of those who live there; by what they survive where they have none of pH.
 * @param days length of the trials [d]
 * @return tells what is left first, limits in the unit of the series, days of the trial
 * @source derived; what counts as foul where no band says is common practice, no source
 */
export function waterJudge(plan: Plan, days: number): WaterJudge {
  const all = limitsOf([...FOUL, ...plan.bands, ...survived(plan)]);
  const foul = all.filter(
    ({ series, side }) =>
      (side === 'high' && (series === 'unionisedAmmonia' || series === 'nitrite')) ||
      (side === 'low' && series === 'oxygenLow'),
  );
  const acid = all.flatMap((limits): AcidLimits[] => {
    const { series } = limits;
    if (series !== 'pH' && series !== 'KH') return [];
    return limits.limits.map((limit) => {
      const alone = { ...limits, series, limits: [limit] };
      return { ...alone, daily: dailyLimits(alone, days) };
    });
  });
  return {
    fouling: (trial) => foulingOf(foul, trial),
    leaving: (trial, unfed) => earliest(acid.map((limits) => acidLeaving(limits, trial, unfed))),
    souring: (trial) =>
      earliest(acid.map((limits) => (limits.side === 'low' ? acidLeaving(limits, trial) : undefined))),
  };
}
