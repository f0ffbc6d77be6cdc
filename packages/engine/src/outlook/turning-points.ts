import { quantileOfSorted } from '../numerics/quantiles.ts';
import type { RootedInWater } from '../run/plant-cover.ts';
import { type SeriesId, seriesSpec } from '../run/series.ts';
import {
  addContributions,
  addDeaths,
  addFood,
  addHeldBack,
  addSlowing,
  addWaterMoved,
  type BookedRun,
  forWindow,
  largestShares,
} from './because.ts';
import type { BookReader } from './book-reader.ts';
import type { TurningPoint } from './document.ts';
import type { Ensemble } from './ensemble.ts';
import type { Event } from './event.ts';
import { type PlantLimit, plantLimitReader, splitByLimits } from './plant-limits.ts';
import type { PreparedOutlook } from './prepare.ts';
import { turningSentence } from './sentences.ts';
import { nothingSlowed, slowedSentence, worstSlowing } from './slowing.ts';
import { subjectOf } from './subject.ts';

/** Below this share of members an event is not worth a line. */
const LEAST_PROBABILITY = 0.05;

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

/** Members in which what plants lack is looked up: a millisecond each, and shares need no more. */
const MOST_ASKED = 40;

/** Splits the growth that plants of the water lacked by what they lacked, in members in which they fail. */
function splitGrowth(
  totals: Map<string, number>,
  event: Event,
  ensemble: Ensemble,
  { prepared, reader }: Behind,
): void {
  const own = OWN_TERM[event.subject];
  const group = GROUP_OF[event.subject];
  if (own === undefined || group === undefined || !((totals.get(own) ?? 0) < 0)) return;
  const limits = plantLimitReader(prepared, group);
  const warmth = prepared.setting.seriesIds.indexOf('waterTemperature');
  const gains = new Map<PlantLimit, number>();
  const failing = [...event.days.keys()].filter((member) => event.days[member]! >= 0);
  const step = Math.ceil(failing.length / MOST_ASKED);
  for (const member of failing.filter((_, at) => at % step === 0)) {
    const day = event.days[member]!;
    const temperature = ensemble.series(member, warmth)[day]!;
    forWindow({ ...reader, rows: ensemble.book(member) }, day, (row) => {
      for (const [limit, gain] of limits.gains(row, reader.shape, temperature))
        gains.set(limit, (gains.get(limit) ?? 0) + gain);
    });
  }
  splitByLimits(totals, own, gains);
}

/** What reasons are looked up in. */
interface Behind {
  readonly prepared: PreparedOutlook;
  readonly reader: BookReader;
}

function sharesBehind(
  event: Event,
  ensemble: Ensemble,
  { prepared, reader }: Behind,
): { term: string; share: number }[] {
  const totals = new Map<string, number>();
  for (let member = 0; member < ensemble.count; member += 1) {
    const day = event.days[member]!;
    if (day >= 0) addReasons(totals, event, { ...reader, rows: ensemble.book(member) }, day);
  }
  if (isDecline(event)) splitGrowth(totals, event, ensemble, { prepared, reader });
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

/** The plants of a cover. */
const GROUP_OF: Readonly<Partial<Record<SeriesId, RootedInWater>>> = {
  plantCover: 'submerged',
  floatingCover: 'floating',
  emersedCover: 'emersed',
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
    const because = fromStart ? [] : sharesBehind(event, ensemble, { prepared, reader });
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
