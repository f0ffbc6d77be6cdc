import { STAGES } from '../life/traits.ts';
import { expectedDraw } from '../outlook/prepare.ts';
import type { Action, FeedComposition, Routine } from '../plan/care.ts';
import type { Plan } from '../plan/plan.ts';
import { run } from '../run/run.ts';
import type { SeriesId } from '../run/series.ts';
import { settingOf } from '../run/setting.ts';
import type { Draw } from '../run/world.ts';

/** Adults wanted of each population, by its id. */
export type TargetAdults = Readonly<Record<string, number>>;

/** A feeding that is tried. */
export interface Dose {
  readonly feed: FeedComposition;
  /** Each time [kg], and days between times. */
  readonly mass: number;
  readonly everyDays: number;
  readonly onLand: boolean;
  readonly hour?: number;
}

/** Series of the water that a feeding is judged by. */
export const WATER_SERIES = ['unionisedAmmonia', 'nitrite', 'oxygenLow', 'pH', 'KH'] as const;
export type WaterSeries = (typeof WATER_SERIES)[number];

/** What a trial run shows. */
export interface FeedingTrial {
  /** Day by day, in the unit of each series. */
  readonly water: Readonly<Record<WaterSeries, Float64Array>>;
  /** Day from which ammonia, nitrite and oxygen are judged. */
  readonly settledOn: number;
  /** Highest un-ionised ammonia and nitrite [mg N/L], and lowest oxygen [mg/L], once they have settled in. */
  readonly ammonia: number;
  readonly nitrite: number;
  readonly oxygen: number;
  /** By population, in the order of the plan: mean over the last part, and day by day. */
  readonly adults: readonly number[];
  readonly course: readonly Float64Array[];
}

/** Part of a trial over which adults are counted, its last two fifths: founders have made room for their young by then. @source assumed */
const LATE = 0.6;
/** Days after the last arrival before the water is judged. @source assumed */
const SETTLING = 14;

type Arrival = Extract<Action, { kind: 'add animals' }>;
const isArrival = (action: Action): action is Arrival => action.kind === 'add animals';

/** Day on which a population's first animals come; undefined when the plan brings none. `derived`. */
export function arrivalOf(plan: Plan, id: string): number | undefined {
  if (plan.populations.some((each) => each.id === id && each.founders.length > 0)) return 0;
  const days = plan.actions.flatMap((action) =>
    isArrival(action) && action.population === id ? [action.day] : [],
  );
  return days.length > 0 ? Math.min(...days) : undefined;
}

/** Day on which the last of all populations begins. `derived`. */
function lastArrival(plan: Plan): number {
  return Math.max(0, ...plan.populations.map(({ id }) => arrivalOf(plan, id) ?? 0));
}

/**
 * The plan with as many adults of some populations as are wanted, on the day the first of them come; others come as they do.
 * @source derived
 */
export function withTargets(plan: Plan, targets: TargetAdults): Plan {
  const wanted = (id: string): number => Math.round(targets[id] ?? 0);
  const day = (id: string): number => arrivalOf(plan, id) ?? lastArrival(plan);
  const coming = plan.populations
    .filter(({ id }) => wanted(id) > 0 && day(id) > 0)
    .map(
      ({ id }): Arrival => ({
        kind: 'add animals',
        population: id,
        stage: 'adult',
        count: wanted(id),
        day: day(id),
      }),
    );
  return {
    ...plan,
    populations: plan.populations.map((population) =>
      wanted(population.id) > 0
        ? {
            ...population,
            founders: day(population.id) > 0 ? [] : [{ stage: 'adult', count: wanted(population.id) }],
          }
        : population,
    ),
    actions: [
      ...plan.actions.filter((action) => !(isArrival(action) && wanted(action.population) > 0)),
      ...coming,
    ].sort((a, b) => a.day - b.day),
  };
}

/** Whether a piece of care gives feed in the place. */
const feedsIn = (care: Routine, onLand: boolean): boolean =>
  care.kind === 'feed' && (care.onLand ?? false) === onLand;

/** The plan without the feed that repeats in a place, and with a dose in its stead from the day its own began. `derived`. */
export function fedWith(plan: Plan, { feed, mass, everyDays, onLand, hour }: Dose): Plan {
  const own = plan.routines.filter((routine) => feedsIn(routine, onLand));
  const others = plan.routines.filter((routine) => !feedsIn(routine, onLand));
  if (mass <= 0) return { ...plan, routines: others };
  const firstDay = own.length > 0 ? Math.min(...own.map((each) => each.firstDay)) : lastArrival(plan);
  const at = hour === undefined ? {} : { hour };
  const routine: Routine = {
    kind: 'feed',
    feed,
    mass,
    everyDays,
    firstDay,
    ...(onLand ? { onLand } : {}),
    ...at,
  };
  return { ...plan, routines: [...others, routine] };
}

/**
 * One run of a plan, as far as a feeding is judged by it.
 * @param draw of a member; the expected run when left out
 * @throws RangeError as `run`
 * @source derived
 */
export function tryFeeding(plan: Plan, days: number, draw: Draw = expectedDraw(plan)): FeedingTrial {
  const setting = settingOf(plan, days, STAGES);
  const { series } = run(setting, draw);
  const at = (id: SeriesId): Float64Array => series[setting.seriesIds.indexOf(id)]!;
  const late = Math.floor(LATE * days);
  const settledOn = Math.min(days - 1, lastArrival(plan) + SETTLING);
  const settled = (id: WaterSeries): Float64Array => at(id).subarray(settledOn);
  const meanLate = (values: Float64Array): number =>
    values.subarray(late).reduce((sum, value) => sum + value, 0) / (days - late);
  const course = plan.populations.map(({ id }) => at(`population:${id}:adult`));
  return {
    water: Object.fromEntries(WATER_SERIES.map((id) => [id, at(id)])) as Record<WaterSeries, Float64Array>,
    settledOn,
    ammonia: Math.max(...settled('unionisedAmmonia')),
    nitrite: Math.max(...settled('nitrite')),
    oxygen: Math.min(...settled('oxygenLow')),
    adults: course.map(meanLate),
    course,
  };
}
