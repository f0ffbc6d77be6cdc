import { energeticsOf } from '../life/energetics.ts';
import { FOODS } from '../life/foods.ts';
import { STAGES } from '../life/traits.ts';
import { expectedDraw } from '../outlook/prepare.ts';
import type { FeedComposition, Routine } from '../plan/care.ts';
import type { Plan } from '../plan/plan.ts';
import { run } from '../run/run.ts';
import { settingOf } from '../run/setting.ts';
import { rateIn } from './carrying-capacity.ts';
import { medianTraits, upkeepOfAdult } from './need.ts';
import { larderOf } from './production.ts';

/** Adults wanted of each population, by its id. */
export type TargetAdults = Readonly<Record<string, number>>;

export interface FeedingPlanOptions {
  /** Feed to be given; the one of the plan's routine when left out. */
  readonly feed?: FeedComposition;
  /** Between feedings [d], 1 to 30; 3 when left out. */
  readonly everyDays?: number;
  /** Length of the trial [d]; 150 when left out. */
  readonly days?: number;
}

/** Which feed, how much, how often, and what a trial run with it shows. */
export interface FeedingPlan {
  readonly feed: string;
  readonly feedName: string;
  /** Each time [kg], and days between times. */
  readonly mass: number;
  readonly everyDays: number;
  readonly onLand: boolean;
  /** Whether every target was held and the water stayed clean in the trial. */
  readonly holds: boolean;
  readonly clean: boolean;
  readonly populations: readonly { readonly id: string; readonly target: number; readonly adults: number }[];
  /** Highest un-ionised ammonia [mg N/L] and lowest oxygen [mg/L] of the trial. */
  readonly ammonia: number;
  readonly oxygen: number;
  readonly trials: number;
  /** What was found, in whole sentences. */
  readonly sentences: readonly string[];
}

const USUAL_INTERVAL = 3;
const USUAL_DAYS = 150;
/** Un-ionised ammonia that counts as foul where no band says [mg N/L], and oxygen [mg/L]. @source common practice, no source */
const FOUL_AMMONIA = 0.02;
const LEAST_OXYGEN = 3;
/** Part of a target that still counts as held. @source assumed */
const HELD = 0.8;
/** Part of feed that is eaten before it falls apart. @source assumed */
const EATEN = 0.75;
/** Food for a growing and breeding group over the upkeep of its adults. @source assumed */
const GROUP = 2;
const MOST_TRIALS = 9;

function feedOfPlan({ routines }: Plan): FeedComposition | undefined {
  for (const routine of routines) if (routine.kind === 'feed') return routine.feed;
  return undefined;
}

/** Carbon the wanted adults lack beyond what the plan grows itself [mol/d]. */
function lackingCarbon(plan: Plan, targets: TargetAdults, onLand: boolean): number {
  const withoutFeed: Plan = { ...plan, routines: plan.routines.filter(({ kind }) => kind !== 'feed') };
  const larder = larderOf(withoutFeed, 60);
  let wanted = 0;
  for (const population of plan.populations) {
    const traits = medianTraits(population);
    const need = GROUP * upkeepOfAdult(energeticsOf(traits), rateIn(larder, traits));
    wanted += (targets[population.id] ?? 0) * need;
  }
  const own = larder.productions.reduce((sum, { food, perDay }) => {
    const isLand = FOODS.indexOf(food) >= FOODS.indexOf('land litter');
    return isLand === onLand && food !== 'soil' ? sum + 0.3 * perDay : sum;
  }, 0);
  return Math.max(0.15 * wanted, wanted - own);
}

function limitOf(plan: Plan, series: 'unionisedAmmonia' | 'oxygenLow'): number {
  const limits = plan.bands
    .filter((band) => band.series === series)
    .flatMap(({ high, low }) => (series === 'unionisedAmmonia' ? (high ?? []) : (low ?? [])));
  if (series === 'unionisedAmmonia') return Math.min(FOUL_AMMONIA * 2, ...limits);
  return Math.max(LEAST_OXYGEN, ...limits);
}

interface Trial {
  readonly ammonia: number;
  readonly oxygen: number;
  readonly adults: readonly number[];
}

function tryDose(plan: Plan, targets: TargetAdults, routine: Routine, days: number): Trial {
  const founded: Plan = {
    ...plan,
    routines: [...plan.routines.filter(({ kind }) => kind !== 'feed'), routine],
    actions: plan.actions.filter(({ kind }) => kind !== 'add animals'),
    populations: plan.populations.map((population) => ({
      ...population,
      founders: [{ stage: 'adult' as const, count: Math.round(targets[population.id] ?? 0) }].filter(
        ({ count }) => count > 0,
      ),
    })),
  };
  const setting = settingOf(founded, days, STAGES);
  const record = run(setting, expectedDraw(founded));
  const at = (id: string): Float64Array => record.series[setting.seriesIds.indexOf(id as never)]!;
  const late = Math.floor(0.6 * days);
  const meanLate = (values: Float64Array): number =>
    values.subarray(late).reduce((sum, value) => sum + value, 0) / (days - late);
  return {
    ammonia: Math.max(...at('unionisedAmmonia').subarray(14)),
    oxygen: Math.min(...at('oxygenLow').subarray(14)),
    adults: founded.populations.map(({ id }) => meanLate(at(`population:${id}:adult`))),
  };
}

/**
 * Which feed, how much and how often, so that the wanted adults are held without fouling the water: a dose reckoned
 * from what they need beyond what the plan grows, then doubled, halved and closed in on by trial runs.
 * @param targets adults wanted, by population id, >= 0
 * @throws RangeError for a population the plan has not, no target above 0, or no feed to give
 * @source derived: trial runs of medians; starting dose from `upkeepOfAdult` and `larderOf`
 */
export function feedingPlan(
  plan: Plan,
  targets: TargetAdults,
  options: FeedingPlanOptions = {},
): FeedingPlan {
  const known = new Set(plan.populations.map(({ id }) => id));
  for (const id of Object.keys(targets))
    if (!known.has(id))
      throw new RangeError(`the plan has no population '${id}'; it has ${[...known].join(', ') || 'none'}`);
  const wanted = plan.populations.filter(({ id }) => (targets[id] ?? 0) > 0);
  if (wanted.length === 0) throw new RangeError('say how many adults are wanted of at least one population');
  const feed = options.feed ?? feedOfPlan(plan);
  if (!feed) throw new RangeError('the plan has no feeding routine; say which feed is to be given');
  const { everyDays = USUAL_INTERVAL, days = USUAL_DAYS } = options;
  const onLand = wanted.every((population) => medianTraits(population).shareInWater < 0.5);
  const start = (lackingCarbon(plan, targets, onLand) * everyDays) / (feed.carbon * EATEN * 0.7);
  return closeIn(plan, targets, { feed, everyDays, days, onLand, start });
}

interface Search {
  readonly feed: FeedComposition;
  readonly everyDays: number;
  readonly days: number;
  readonly onLand: boolean;
  readonly start: number;
}

interface Tried {
  readonly mass: number;
  readonly trial: Trial;
  readonly holds: boolean;
  readonly clean: boolean;
}

/** Finds the least dose that holds the targets; where it fouls the water, the greatest clean one. */
function closeIn(plan: Plan, targets: TargetAdults, search: Search): FeedingPlan {
  const { feed, everyDays, days, onLand, start } = search;
  const ammonia = limitOf(plan, 'unionisedAmmonia');
  const oxygen = limitOf(plan, 'oxygenLow');
  const tried: Tried[] = [];
  const attempt = (mass: number): Tried => {
    const routine: Routine = {
      kind: 'feed',
      feed,
      mass,
      everyDays,
      firstDay: 0,
      ...(onLand ? { onLand } : {}),
    };
    const trial = tryDose(plan, targets, routine, days);
    const holds = plan.populations.every(({ id }, p) => trial.adults[p]! >= HELD * (targets[id] ?? 0));
    const one = { mass, trial, holds, clean: trial.ammonia <= ammonia && trial.oxygen >= oxygen };
    tried.push(one);
    return one;
  };
  const unfed = attempt(0);
  let low = 0;
  let high = Number.POSITIVE_INFINITY;
  let mass = start;
  while (!unfed.holds && tried.length < MOST_TRIALS && high > 1.25 * low) {
    const one = attempt(mass);
    if (one.holds || (unfed.clean && !one.clean)) high = mass;
    else low = mass;
    mass = high === Number.POSITIVE_INFINITY ? 2 * low : low === 0 ? high / 2 : (low + high) / 2;
  }
  const byMass = [...tried].sort((a, b) => a.mass - b.mass);
  const good = byMass.find((one) => one.holds && (one.clean || !unfed.clean));
  const best = good ?? byMass.findLast((one) => one.clean || !unfed.clean) ?? unfed;
  return {
    feed: feed.id,
    feedName: feed.name,
    mass: best.mass,
    everyDays,
    onLand,
    holds: best.holds,
    clean: best.clean,
    populations: plan.populations.map(({ id }, p) => ({
      id,
      target: targets[id] ?? 0,
      adults: best.trial.adults[p]!,
    })),
    ammonia: best.trial.ammonia,
    oxygen: best.trial.oxygen,
    trials: tried.length,
    sentences: sentencesOf(plan, targets, { ...best, foulUnfed: !unfed.clean }, search),
  };
}

function sentencesOf(
  plan: Plan,
  targets: TargetAdults,
  best: Tried & { readonly foulUnfed: boolean },
  { feed, everyDays, onLand, days }: Search,
): string[] {
  const grams = (best.mass * 1000).toPrecision(2);
  const where = onLand ? 'on the land' : 'into the water';
  const every = everyDays === 1 ? 'every day' : `every ${everyDays} days`;
  const sentences =
    best.mass > 0
      ? [`Give ${grams} g of ${feed.name} ${every} ${where}.`]
      : ['They are held without any feed, by what the enclosure grows.'];
  for (const [p, { id, name }] of plan.populations.entries()) {
    const target = targets[id] ?? 0;
    if (target <= 0) continue;
    const adults = best.trial.adults[p]!;
    sentences.push(
      adults >= HELD * target
        ? `${capital(name)}: about ${adults.toFixed(0)} adults in the last part of ${days} days, for ${target} wanted.`
        : `${capital(name)}: only about ${adults.toFixed(0)} adults for ${target} wanted; more feed does not mend it without fouling the water, or something other than food holds them down.`,
    );
  }
  if (best.foulUnfed)
    sentences.push(
      `Animals alone foul this water, fed or not: un-ionised ammonia up to ${best.trial.ammonia.toFixed(3)} mg N/L, oxygen down to ${best.trial.oxygen.toFixed(1)} mg/L. Mature the filter first, bring them in by and by, or keep fewer.`,
    );
  else if (!best.clean)
    sentences.push(
      `Even this fouls the water: un-ionised ammonia up to ${best.trial.ammonia.toFixed(3)} mg N/L, oxygen down to ${best.trial.oxygen.toFixed(1)} mg/L. Keep fewer animals, more water or a matured filter.`,
    );
  return sentences;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
