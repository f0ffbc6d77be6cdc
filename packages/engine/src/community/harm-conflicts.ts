import { drowningHazard } from '../life/drowning.ts';
import { actingCopper } from '../life/poisons.ts';
import { hazardBeyond } from '../life/water-stress.ts';
import { expm1 } from '../numerics/elementary.ts';
import { capital } from '../outlook/capital.ts';
import { type Conflict, type Inhabitant, median, type PlaceFacts, shown } from './inhabitant.ts';

const MONTH = 30;
const SQUARE_CENTIMETRES = 1e4;
/** Part lost a month from which drowning is told, and from which it is a warning. @source assumed */
const TOLD = 0.02;
const MANY = 0.2;

const FILE = 'the species file';
const PRACTICE = 'common practice, no source';

const partOf = (hazard: number, days: number): number => -expm1(-hazard * days);
const percent = (part: number): string => `${(100 * part).toFixed(0)} %`;

/** Days until half are dead, in words. */
function halfLife(hazard: number): string {
  const days = Math.LN2 / hazard;
  if (days < 1.5) return 'within a day';
  return days < 60
    ? `within some ${shown(Math.round(days))} days`
    : `within some ${shown(Math.round(days / 30))} months`;
}

/** Part of the kind's life on land, larvae aside. */
const onLand = (one: Inhabitant): number => 1 - median(one, 'shareInWater');

/** Who falls in and finds no way out, or has no land at all. */
function drowning(one: Inhabitant, place: PlaceFacts): Conflict[] {
  const { shore, landFloor, water } = place;
  if (!shore || water <= 0 || onLand(one) <= 0) return [];
  const traits = { strayIntoWater: median(one, 'strayIntoWater'), timeAfloat: median(one, 'timeAfloat') };
  const hazard = onLand(one) * drowningHazard(traits, shore, landFloor / SQUARE_CENTIMETRES);
  const part = partOf(hazard, MONTH);
  if (part < TOLD) return [];
  const told =
    landFloor <= 0
      ? `There is no land: half of the ${one.name} drown ${halfLife(hazard)}.`
      : `${capital(one.name)} drown where no slope leads out of the water: ${shore.wayOut > 0 ? `only ${percent(shore.wayOut)} of the shore does` : 'none of the shore does'}, and about ${percent(part)} of them are lost a month.`;
  return [
    {
      kind: 'drowning',
      who: [one.id],
      severity: part >= MANY ? 'warning' : 'note',
      sentence: told,
      source: PRACTICE,
      mend: 'Slope the bank to 45 degrees or less, or lay wood, cork or plants that reach from the water to the land.',
    },
  ];
}

/** Water too fresh or too salty to live in. */
function salt(one: Inhabitant, { fill }: PlaceFacts): Conflict[] {
  if (!fill || median(one, 'shareInWater') <= 0) return [];
  const { conductivity } = fill;
  const low = median(one, 'saltLow');
  const high = median(one, 'saltHigh');
  const inWater = median(one, 'shareInWater');
  const hazard =
    inWater *
    (hazardBeyond(low - conductivity, median(one, 'saltLowMargin')) +
      hazardBeyond(conductivity - high, median(one, 'saltHighMargin')));
  if (partOf(hazard, MONTH) < TOLD) return [];
  const needs =
    conductivity < low
      ? `need brackish water of at least ${shown(low)} mS/cm`
      : `bear no more salt than ${shown(high)} mS/cm`;
  return [
    {
      kind: 'salt',
      who: [one.id],
      severity: 'warning',
      sentence: `${capital(one.name)} ${needs}; the water it is filled with has ${shown(conductivity)} mS/cm: half of them die ${halfLife(hazard)}.`,
      source: FILE,
      mend:
        conductivity < low
          ? 'Mix brackish water with sea salt, without those that need fresh water, or choose another species.'
          : 'Fill with water of less salt, or choose another species.',
    },
  ];
}

/** Copper in the water it is filled with or topped off with. */
function copper(one: Inhabitant, { fill }: PlaceFacts): Conflict[] {
  if (!fill?.copper || (median(one, 'shareInWater') <= 0 && median(one, 'lengthAtChange') <= 0)) return [];
  const lethal = median(one, 'copperMedianLethal');
  const acting = actingCopper({
    copper: fill.copper,
    hardness: fill.hardness,
    temperature: 20,
    oxygen: 8,
    unionisedAmmonia: 0,
    pH: 7,
  });
  if (acting <= median(one, 'copperNoEffect')) return [];
  return [
    {
      kind: 'copper',
      who: [one.id],
      severity: 'warning',
      sentence: `The water holds ${shown(fill.copper)} µg/L of copper, which in its hardness acts on ${one.name} like ${shown(acting)} µg/L in a standard test; half of them die of ${shown(lethal)} µg/L within four days.`,
      source: FILE,
      mend: 'Use other water: let the tap run before filling and take it cold, or pure water with minerals; no fertiliser and no remedy with copper.',
    },
  ];
}

/** Days that ammonia and nitrite usually take to come and go in a new filter [d]. @source common practice, no source */
export const RUN_IN = 28;
/** Days in which the worst of it is still to come [d]. @source common practice, no source */
const WORST_TO_COME = 21;
/** Lethal nitrite above which a filter not run in is no matter [mg N/L]. @source assumed */
const STURDY = 50;

/** Animals that breathe water and move in before the filter has run in. */
function tooSoon(one: Inhabitant, { isRunIn = true }: PlaceFacts): Conflict[] {
  const { firstDay, isGuest = false } = one;
  if (isRunIn || isGuest || firstDay === undefined || firstDay >= RUN_IN) return [];
  const breathesWater = median(one, 'shareInWater') >= 0.3 && median(one, 'lengthAtChange') === 0;
  if (!breathesWater || median(one, 'nitriteMedianLethal') >= STURDY) return [];
  const day = firstDay > 0 ? `${shown(firstDay)} days after filling` : 'on the day of filling';
  return [
    {
      kind: 'too soon',
      who: [one.id],
      severity: firstDay < WORST_TO_COME ? 'warning' : 'note',
      sentence: `${capital(one.name)} move in ${day}, into a filter that is new: ammonia and then nitrite usually rise and fall in its first four to six weeks.`,
      source: PRACTICE,
      mend: `Let them move in after ${RUN_IN} days or more, few at first, with a trace of feed put in before; or start with a matured filter.`,
    },
  ];
}

/** Drowning, salt, copper, a filter that is not run in. @source derived from the hazards the run reckons with */
export function harmConflicts(all: readonly Inhabitant[], place: PlaceFacts | undefined): Conflict[] {
  if (!place) return [];
  return all.flatMap((one) => [
    ...drowning(one, place),
    ...salt(one, place),
    ...copper(one, place),
    ...tooSoon(one, place),
  ]);
}
