import { quantileOfSorted } from '../numerics/quantiles.ts';
import type { Plan, Population } from '../plan/plan.ts';
import type { SeriesId } from '../run/series.ts';
import { dailyLimits, limitOn, limitsOf } from './bands.ts';
import { firstAbove, firstEmpty, firstLeaving } from './crossings.ts';
import type { Ensemble } from './ensemble.ts';
import { type Event, eventOf } from './event.ts';
import { plantingEvents, waterPlantEvents } from './plant-events.ts';
import type { PreparedOutlook } from './prepare.ts';

function bandEvents(prepared: PreparedOutlook, ensemble: Ensemble): Event[] {
  const { seriesIds, days } = prepared.setting;
  return limitsOf(prepared.plan.bands).flatMap((limits) => {
    const { series, side } = limits;
    const position = seriesIds.indexOf(series);
    if (position < 0) return [];
    const daily = dailyLimits(limits, days);
    const leaving = Int32Array.from({ length: ensemble.count }, (_, member) =>
      firstLeaving(ensemble.series(member, position), daily, side),
    );
    const limit = limitOn(limits, medianDay(leaving) ?? days);
    if (!limit) return [];
    return [
      {
        id: `${series}-${side}`,
        subject: series,
        kind: side === 'low' ? ('falls below' as const) : ('rises above' as const),
        owner: limit.owner,
        source: limit.source,
        band: { [side]: limit.value },
        limit: limit.value,
        ...positionOf(prepared, series),
        ends: true,
        days: leaving,
      },
    ];
  });
}

/** Median over the members in which something happens, or undefined when it happens in none. */
function medianDay(days: Int32Array): number | undefined {
  const happened = Float64Array.from(days.filter((day) => day >= 0)).sort();
  return happened.length > 0 ? quantileOfSorted(happened, 0.5) : undefined;
}

function positionOf({ plan }: PreparedOutlook, series: SeriesId): { population?: number } {
  const [kind, id] = series.split(':');
  if (kind !== 'population') return {};
  return { population: plan.populations.findIndex((population) => population.id === id) };
}

/** Juveniles the keeper puts in over the whole plan: more than these were born here. */
function juvenilesPlaced({ actions }: Plan, { id, founders }: Population): number {
  const added = actions.flatMap((action) =>
    action.kind === 'add animals' && action.population === id ? [action] : [],
  );
  return [...founders, ...added]
    .filter(({ stage }) => stage === 'juvenile')
    .reduce((sum, { count }) => sum + count, 0);
}

function populationEvents(prepared: PreparedOutlook, ensemble: Ensemble): Event[] {
  const { plan, setting } = prepared;
  return plan.populations.flatMap((population, position) => {
    const total = setting.seriesIds.indexOf(`population:${population.id}`);
    const young = setting.seriesIds.indexOf(`population:${population.id}:juvenile`);
    const placed = juvenilesPlaced(plan, population);
    const about = {
      subject: `population:${population.id}` as const,
      owner: population.name,
      source: 'births and deaths of the run',
      band: {},
      population: position,
    };
    return [
      eventOf(
        ensemble,
        { ...about, id: `${population.id}-first-young`, kind: 'first young', ends: false },
        (member) => firstAbove(ensemble.series(member, young), placed + 0.5),
      ),
      eventOf(
        ensemble,
        { ...about, id: `${population.id}-dies-out`, kind: 'dies out', ends: true },
        (member) => firstEmpty(ensemble.series(member, total)),
      ),
    ];
  });
}

/** Part of the bare wood under mould from which the eye sees it [%]. @source hukka-viitanen-1999: index 3 */
const MOULD_SEEN = 10;

/** Mould that is seen on the wood: it harms nobody and fades, but people ask. */
function mouldEvents({ setting }: PreparedOutlook, ensemble: Ensemble): Event[] {
  const position = setting.seriesIds.indexOf('woodMould');
  if (position < 0) return [];
  return [
    eventOf(
      ensemble,
      {
        id: 'wood-mould',
        subject: 'woodMould',
        kind: 'rises above',
        owner: 'bare wood',
        source: 'Hukka and Viitanen 1999: a tenth of the surface is what the eye sees',
        band: { high: MOULD_SEEN },
        limit: MOULD_SEEN,
        ends: false,
      },
      (member) => firstAbove(ensemble.series(member, position), MOULD_SEEN),
    ),
  ];
}

/** Halvings that find the lowest level with open water to less than a tenth of a millimetre. */
const HALVINGS = 14;

/** Lowest level with open water over the ground [m], below one that has it. */
function bottomOf({ geometry }: PreparedOutlook['setting'], level: number): number {
  let [dry, wet] = [0, level];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (dry + wet) / 2;
    if (geometry.openAreaAt(middle) > 0) wet = middle;
    else dry = middle;
  }
  return wet;
}

/** A pool that dries out, where one was planned. */
function dryingEvents({ plan, setting }: PreparedOutlook, ensemble: Ensemble): Event[] {
  const position = setting.seriesIds.indexOf('waterLevel');
  if (position < 0 || !(setting.geometry.openAreaAt(plan.water.level) > 0)) return [];
  const low = bottomOf(setting, plan.water.level) * 100;
  const daily = new Float64Array(setting.days).fill(low);
  return [
    eventOf(
      ensemble,
      {
        id: 'dries-out',
        subject: 'waterLevel',
        kind: 'falls below',
        owner: 'all who live in the water',
        source: 'the lowest ground of the pool: no water stands over it',
        band: { low },
        limit: low,
        ends: true,
      },
      (member) => firstLeaving(ensemble.series(member, position), daily, 'low'),
    ),
  ];
}

/** Returns every event of every member, rare ones included. `derived`. */
export function eventsOf(prepared: PreparedOutlook, ensemble: Ensemble): Event[] {
  return [
    ...bandEvents(prepared, ensemble),
    ...populationEvents(prepared, ensemble),
    ...plantingEvents(prepared, ensemble),
    ...waterPlantEvents(prepared, ensemble),
    ...mouldEvents(prepared, ensemble),
    ...dryingEvents(prepared, ensemble),
  ];
}
