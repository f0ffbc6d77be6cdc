import { GROWN } from '../life/cohort-train.ts';
import { broodRate } from '../life/energetics.ts';
import { exp, log } from '../numerics/elementary.ts';
import { chanceOfDyingOut } from './dying-out.ts';
import { type Renewal, renewalOf } from './euler-lotka.ts';
import { type Matrix, type Projection, projectionOf } from './projection-matrix.ts';
import { type RearedSpecies, rearAlone } from './rearing-alone.ts';

/** One age of a life table. */
export interface LifeTableRow {
  /** Since release from egg or pouch [d]. */
  readonly age: number;
  /** Part of the newborns alive, lx [1]. */
  readonly alive: number;
  /** Young released up to this age by a female that lives so long [1]. */
  readonly young: number;
  /** Body length of the living [mm]; undefined when nobody lives. */
  readonly length?: number;
}

/** What becomes of newborns of a species by themselves with ample food, and of a population of such. */
export interface LifeTable {
  readonly species: string;
  /** [degC] */
  readonly temperature: number;
  /** Of each age in days from 0 on. */
  readonly rows: readonly LifeTableRow[];
  /** Age at puberty [d]; undefined for those that never get there. */
  readonly maturity?: number;
  /** Age at which the first young are released [d]; undefined when there never are any. */
  readonly firstYoung?: number;
  /** Eggs of a female in a brood interval, mean over the lives of adults [1]. */
  readonly clutch: number;
  /** Net reproduction, growth rate [1/d] and generation time [d]; undefined when nobody is born. */
  readonly renewal?: Renewal;
  /** Days in which numbers double; undefined when they do not grow. */
  readonly doubling?: number;
  /** Median age at death [d]; undefined when half outlive the table. */
  readonly medianAge?: number;
  /** Young and adults in a settled population, by `STAGES_OF_TABLE`; undefined when nobody is born. */
  readonly structure?: Projection;
  /** Chance that the line of one female newborn dies out in the long run [1]. */
  readonly lineDiesOut: number;
}

/** Stages of the structure of a life table, in its order. */
export const STAGES_OF_TABLE = ['young', 'adults'] as const;

/** Newborns reared; means, so that the number does not matter. */
const NEWBORNS = 1e6;
/** Parts alive below which a table ends [1], and the longest of all tables [d]. */
const LEAST_ALIVE = 1e-5;
const MOST_DAYS = 20_000;
const COLDEST = -2;
const WARMEST = 45;

interface Course {
  readonly alive: number[];
  readonly born: number[];
  readonly lengths: number[];
  readonly isAdult: boolean[];
  laid: number;
  /** Days lived by adults, per newborn. */
  adultDays: number;
  readonly femaleShare: number;
  /** From one brood to the next at this temperature [d]. */
  readonly interval: number;
}

/** One cohort from release to death, day by day; per newborn. */
function courseOf(species: RearedSpecies, temperature: number): Course {
  const rearing = rearAlone(species, temperature, NEWBORNS);
  const { train, broods, day, energetics, traits } = rearing.population;
  const course: Course = {
    alive: [1],
    born: [0],
    lengths: [energetics.birth],
    isAdult: [false],
    laid: 0,
    adultDays: 0,
    femaleShare: traits.femaleShare,
    interval: traits.broodInterval / broodRate(traits, temperature),
  };
  for (let age = 1; age <= MOST_DAYS; age += 1) {
    rearing.pass(false);
    const alive = train.size > 0 ? train.count[0]! / NEWBORNS : 0;
    course.alive.push(alive);
    course.born.push(day.born / NEWBORNS);
    course.lengths.push(train.size > 0 ? train.peak[0]! : Number.NaN);
    course.isAdult.push(train.size > 0 && train.adult[0] === GROWN);
    course.laid += day.laid / NEWBORNS;
    if (course.isAdult[age]) course.adultDays += alive;
    if (alive < LEAST_ALIVE && broods.size === 0) break;
  }
  return course;
}

/**
 * The daily matrix of young and adults that grows as the life table does: moves of each stage are means over its ages
 * in a settled population.
 * @source caswell-2001 ch. 6 (collapsing ages by the stable age distribution)
 */
function stagesOf({ alive, born, isAdult }: Course, growthRate: number): Matrix {
  let weight = 1;
  let young = 0;
  let kept = 0;
  let ripe = 0;
  let adults = 0;
  let adultsKept = 0;
  let births = 0;
  const daily = exp(-growthRate);
  for (let age = 0; age + 1 < alive.length; age += 1) {
    const here = weight * alive[age]!;
    const next = weight * alive[age + 1]!;
    if (isAdult[age]) {
      adults += here;
      adultsKept += next;
    } else {
      young += here;
      if (isAdult[age + 1]) ripe += next;
      else kept += next;
    }
    births += weight * born[age + 1]!;
    weight *= daily;
  }
  return adults > 0
    ? [
        [kept / young, births / adults],
        [ripe / young, adultsKept / adults],
      ]
    : [[kept / young]];
}

/** Young up to each age by one that lives so long, per animal of either sex. */
function youngOfLiving({ alive, born }: Course): number[] {
  let young = 0;
  return born.map((each, age) => {
    const mothers = age > 0 ? alive[age - 1]! : 0;
    if (mothers > LEAST_ALIVE) young += each / mothers;
    return young;
  });
}

function rowsOf(course: Course): LifeTableRow[] {
  const young = youngOfLiving(course);
  return course.alive.map((alive, age) => {
    const length = course.lengths[age]!;
    return {
      age,
      alive,
      young: young[age]! / course.femaleShare,
      ...(Number.isNaN(length) ? {} : { length }),
    };
  });
}

const firstAge = (holds: readonly boolean[]): number | undefined => {
  const age = holds.indexOf(true);
  return age >= 0 ? age : undefined;
};

/** The chance that a female's line dies out: as many daughters a female as young an animal of either sex. */
function lineDiesOut({ alive, born }: Course): number {
  const lived = alive.findIndex((part) => part <= LEAST_ALIVE);
  const ages = lived < 0 ? alive.length : lived;
  return chanceOfDyingOut({
    alive: [...alive.slice(0, ages), 0],
    births: Array.from({ length: ages }, (_, age) => (born[age + 1] ?? 0) / alive[age]!),
  });
}

/**
 * The life table of a species by itself with ample food at a temperature: survival, growth and young by age from a
 * rearing of newborns on the code that carries an enclosure's animals, and what a population of such comes to.
 * Suitable water and air, room without end, mates never wanting; deaths are those the traits state and old age.
 * @param species its ways and one value of each trait
 * @param temperature of water and air [degC], -2 to 45
 * @throws RangeError when a trait is missing, outside its range or contradicts another, or the temperature is
 * @validity an upper bound for an enclosure, where food, room, water and others take their part
 * @source lotka-1925 and birch-1948 for the sums over the table; the rearing is derived
 */
export function lifeTable(species: RearedSpecies, temperature: number): LifeTable {
  if (!(temperature >= COLDEST && temperature <= WARMEST))
    throw new RangeError(`a life table is made for ${COLDEST} to ${WARMEST} °C, not for ${temperature} °C`);
  const course = courseOf(species, temperature);
  const { alive, born, isAdult, laid, adultDays, femaleShare, interval } = course;
  const renewal = renewalOf({ ages: born.map((_, age) => age).slice(1), births: born.slice(1) });
  const structure = renewal && projectionOf(stagesOf(course, renewal.growthRate));
  const maturity = firstAge(isAdult);
  const firstYoung = firstAge(born.map((each) => each > 0));
  const medianAge = firstAge(alive.map((part) => part <= 0.5));
  return {
    species: species.id,
    temperature,
    rows: rowsOf(course),
    ...(maturity === undefined ? {} : { maturity }),
    ...(firstYoung === undefined ? {} : { firstYoung }),
    clutch: adultDays > 0 ? (laid * interval) / (femaleShare * adultDays) : 0,
    ...(renewal ? { renewal } : {}),
    ...(renewal && renewal.growthRate > 0 ? { doubling: log(2) / renewal.growthRate } : {}),
    ...(medianAge === undefined ? {} : { medianAge }),
    ...(structure ? { structure } : {}),
    lineDiesOut: lineDiesOut(course),
  };
}
