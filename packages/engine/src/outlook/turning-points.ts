import { quantileOfSorted } from '../numerics/quantiles.ts';
import type { Plan, Population } from '../plan/plan.ts';
import { feedsFromWater, fullCover, plantedBiomass } from '../run/plant-cover.ts';
import { type SeriesId, seriesSpec } from '../run/series.ts';
import { dailyLimits, limitOn, limitsOf } from './bands.ts';
import {
  addContributions,
  addDeaths,
  addFood,
  addHeldBack,
  addSlowing,
  addWaterMoved,
  type BookedRun,
  largestShares,
} from './because.ts';
import type { BookReader } from './book-reader.ts';
import { firstAbove, firstEmpty, firstLeaving } from './crossings.ts';
import type { TurningPoint, TurningPointKind } from './document.ts';
import type { Ensemble } from './ensemble.ts';
import type { PreparedOutlook } from './prepare.ts';
import { turningSentence } from './sentences.ts';
import { nothingSlowed, slowedSentence, worstSlowing } from './slowing.ts';
import { subjectOf } from './subject.ts';

/** An event that may happen once in a member: its day there, or -1. */
export interface Event {
  readonly id: string;
  readonly subject: SeriesId;
  readonly kind: TurningPointKind;
  readonly owner: string;
  readonly source: string;
  readonly band: { readonly low?: number; readonly high?: number };
  readonly limit?: number;
  /** Position of the population it is about, where it is about one. */
  readonly population?: number;
  /** Position of the planting on land it is about, where it is about one. */
  readonly planting?: number;
  /** Whether it ends the time the enclosure can be left to itself. */
  readonly ends: boolean;
  readonly days: Int32Array;
}

/** Below this share of members an event is not worth a line. */
const LEAST_PROBABILITY = 0.05;

function eventOf(ensemble: Ensemble, base: Omit<Event, 'days'>, dayIn: (member: number) => number): Event {
  return { ...base, days: Int32Array.from({ length: ensemble.count }, (_, member) => dayIn(member)) };
}

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

/** Part of the planted cover below which a planting on land counts as failing. @source assumed */
const FAILING = 0.5;
/** Cover of a planting on land above which its ground counts as grown over [%]. @source common practice, no source */
const GROWN_OVER = 90;

function plantingEvents({ plan, setting }: PreparedOutlook, ensemble: Ensemble): Event[] {
  const { seriesIds, days, stands } = setting;
  const level = (value: number): Float64Array => new Float64Array(days).fill(value);
  return stands.flatMap(({ id, cover }, planting) => {
    const subject = `planting:${id}` as const;
    const position = seriesIds.indexOf(subject);
    const planted = plan.plants.find((each) => each.id === id);
    const owner = planted?.name ?? id;
    const [low, high] = [Math.round(100 * FAILING * cover), GROWN_OVER];
    const leaving = (limit: number, side: 'low' | 'high') => (member: number) =>
      firstLeaving(ensemble.series(member, position), level(limit), side);
    const fails = eventOf(
      ensemble,
      {
        id: `${subject}-low`,
        subject,
        kind: 'falls below',
        owner,
        source: 'half of what was planted',
        band: { low },
        limit: low,
        planting,
        ends: true,
      },
      leaving(low, 'low'),
    );
    // What came along by accident may well go again.
    const failures = planted?.chance === undefined ? [fails] : [];
    if (cover * 100 >= high) return failures;
    const closes = eventOf(
      ensemble,
      {
        id: `${subject}-high`,
        subject,
        kind: 'rises above',
        owner,
        source: 'nearly all of its ground is covered; common practice: trim',
        band: { high },
        limit: high,
        planting,
        ends: false,
      },
      leaving(high, 'high'),
    );
    return [...failures, closes];
  });
}

const COVER_OF = { submerged: 'plantCover', floating: 'floatingCover', emersed: 'emersedCover' } as const;

/** Plants that feed from the water, by group: they fail, or close over what they grow on and take over. */
function waterPlantEvents({ plan, setting }: PreparedOutlook, ensemble: Ensemble): Event[] {
  const { seriesIds, days } = setting;
  return (Object.keys(COVER_OF) as (keyof typeof COVER_OF)[]).flatMap((group) => {
    const subject = COVER_OF[group];
    const position = seriesIds.indexOf(subject);
    const set = plan.plants.filter((each) => each.group === group && feedsFromWater(each, plan.zones));
    const all = fullCover(plan, group);
    if (position < 0 || !(all > 0)) return [];
    const kept: Plan = { ...plan, plants: plan.plants.filter(({ chance }) => chance === undefined) };
    const planted = Math.round((100 * plantedBiomass(kept, group)) / all);
    const owner = [...new Set(set.map(({ name }) => name))].join(', ');
    const event = (side: 'low' | 'high', limit: number): Event =>
      eventOf(
        ensemble,
        {
          id: `${subject}-${side}`,
          subject,
          kind: side === 'low' ? 'falls below' : 'rises above',
          owner,
          source:
            side === 'low'
              ? 'half of what was planted'
              : 'nearly all the room they have; common practice: thin out',
          band: { [side]: limit },
          limit,
          ends: side === 'low',
        },
        (member) => firstLeaving(ensemble.series(member, position), new Float64Array(days).fill(limit), side),
      );
    const low = Math.round(FAILING * planted);
    return [
      ...(low > 0 ? [event('low', low)] : []),
      ...(planted < GROWN_OVER ? [event('high', GROWN_OVER)] : []),
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

/** Name a series is spoken of by: the population's own name, else the series' name. `derived`. */
export function subjectName(prepared: PreparedOutlook, id: SeriesId): string {
  const [kind, population, stage] = id.split(':');
  if (kind === 'planting') return plantingName(prepared, population ?? id);
  if (kind !== 'population') return seriesSpec(id).name;
  const name = prepared.plan.populations.find((p) => p.id === population)?.name ?? population ?? id;
  return stage ? `${name}, ${stage}` : name;
}

/** Cover of a planting on land by its name, and by its zone where another goes by the same. */
function plantingName({ plan }: PreparedOutlook, id: string): string {
  const planting = plan.plants.find((each) => each.id === id);
  if (!planting) return `cover of ${id}`;
  const isDouble = plan.plants.some((each) => each.id !== id && each.name === planting.name);
  const zone = plan.zones.find((each) => each.id === planting.zone)?.name ?? planting.zone;
  return `cover of ${planting.name}${isDouble ? ` (${zone})` : ''}`;
}

/** Adds what pushed one member to an event; animals: deaths by cause when they decline, food when they grow. */
function addReasons(totals: Map<string, number>, event: Event, book: BookedRun, day: number): void {
  const subject = subjectOf(event.subject);
  if (subject) addContributions(totals, book, subject, day);
  else if (event.subject === 'waterLevel') addWaterMoved(totals, book, day);
  else if (event.planting !== undefined) {
    if (isDecline(event)) addHeldBack(totals, book, event.planting, day);
  } else if (event.population === undefined) return;
  else if (isDecline(event)) addDeaths(totals, book, event.population, day);
  else addFood(totals, book, day);
}

const isDecline = ({ kind }: Event): boolean => kind === 'falls below' || kind === 'dies out';

function sharesBehind(
  event: Event,
  ensemble: Ensemble,
  reader: BookReader,
): { term: string; share: number }[] {
  const totals = new Map<string, number>();
  for (let member = 0; member < ensemble.count; member += 1) {
    const day = event.days[member]!;
    if (day >= 0) addReasons(totals, event, { ...reader, rows: ensemble.book(member) }, day);
  }
  return largestShares(totals, isDecline(event) ? -1 : 1).map(({ term, share }) => ({
    term: term === OWN_TERM[event.subject] ? (isDecline(event) ? 'growing too little' : 'growth') : term,
    share,
  }));
}

/** Part of its appetite that a population loses to the water from which that is told with what happens to it. @source assumed */
const TOLD_SLOWING = 0.1;

/** What slowed the population of an event most in the 30 days before it, as a sentence, where that was much. */
function slowingBehind(event: Event, ensemble: Ensemble, reader: BookReader): { slowed?: string } {
  if (event.population === undefined) return {};
  const slowed = nothingSlowed();
  for (let member = 0; member < ensemble.count; member += 1) {
    const day = event.days[member]!;
    if (day >= 0) addSlowing(slowed, { ...reader, rows: ensemble.book(member) }, event.population, day);
  }
  const worst = worstSlowing(slowed);
  if (!worst || worst.share < TOLD_SLOWING) return {};
  return { slowed: slowedSentence(worst, event.kind === 'dies out') };
}

/** What plants do to their own cover goes by the name of their process; in a reason it is their growth. */
const OWN_TERM: Readonly<Partial<Record<SeriesId, string>>> = {
  plantCover: 'submerged plants',
  floatingCover: 'floating plants',
  emersedCover: 'emersed plants',
};

/**
 * Returns the turning points worth a line (5 % of members or more), by median day: probability, 10-50-90 % window
 * among the members in which it happens, band and owner, and the budget terms that push that way.
 * @source derived
 */
export function turningPoints(
  prepared: PreparedOutlook,
  ensemble: Ensemble,
  events: readonly Event[],
  reader: BookReader,
): TurningPoint[] {
  const points: TurningPoint[] = [];
  for (const event of events) {
    const days = Float64Array.from(event.days.filter((day) => day >= 0)).sort();
    const probability = days.length / ensemble.count;
    if (probability < LEAST_PROBABILITY) continue;
    const median = quantileOfSorted(days, 0.5);
    // What holds from the first day is the doing of the plan, not of anything that happened since.
    const fromStart = median === 0;
    const because = fromStart ? [] : sharesBehind(event, ensemble, reader);
    const slowed = fromStart ? {} : slowingBehind(event, ensemble, reader);
    points.push({
      id: event.id,
      subject: event.subject,
      kind: event.kind,
      probability,
      window: {
        early: quantileOfSorted(days, 0.1),
        median,
        late: quantileOfSorted(days, 0.9),
      },
      band: { ...event.band, unit: seriesSpec(event.subject).unit, owner: event.owner, source: event.source },
      because,
      ...slowed,
      sentence: turningSentence({
        ...event,
        subjectName: subjectName(prepared, event.subject),
        probability,
        because,
        ...slowed,
        fromStart,
      }),
    });
  }
  return points.sort((a, b) => a.window.median - b.window.median || (a.id < b.id ? -1 : 1));
}
