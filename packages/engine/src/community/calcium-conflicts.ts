import { capital } from '../outlook/capital.ts';
import type { Plan, Population } from '../plan/plan.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import type { FoodFlow } from './food-flows.ts';
import { type Conflict, shown } from './inhabitant.ts';

/** Days over which growth is told as a month's [d]. */
const MONTH = 30;
/** Part of a life in water from which it gives calcium enough to moult with [1]. @source assumed */
const MOULTS_IN_WATER = 0.1;
/**
 * Calcium of fallen leaves over their carbon by mass [g/g]: 12 mg a gram dry, 48 % of it carbon.
 * @source radwan-1984 (red alder 1.01 % of dry mass), novak-2014 (oak stands 41 to 73 kg in some 4 t, 1.0 to 1.8 %)
 */
const IN_LEAVES = 0.012 / 0.48;
/** Part of the calcium of eaten leaves that is taken up [1]. @source assumed */
const TAKEN_UP = 0.5;
/** Calcium in cuttlebone [g/g]: 83 % carbonate (memory). */
const IN_CUTTLEBONE = (0.83 * MOLAR_MASS.calcium) / MOLAR_MASS.calciumCarbonate;
/** Foods on land that hold the calcium of leaves. */
const LEAVES: ReadonlySet<string> = new Set(['land litter', 'land plants']);

const SOURCE =
  'calcium of leaves: Radwan et al. 1984, Novák et al. 2014, abstracts; mineral of woodlice: their species files; moults are eaten: Ziegler et al. 2017, abstract';

/** What is read of an outlook. */
export interface CalciumSource {
  readonly plan: Pick<Plan, 'populations' | 'hardscape' | 'water'>;
  readonly flows: readonly FoodFlow[];
  /** Animals of a population by day of the expected run. */
  readonly counts: (population: string, stage: 'juvenile' | 'adult') => readonly number[];
}

/** Mean cube of lengths spread evenly from a to b [mm3]. @source derived: (a + b)(a^2 + b^2)/4 */
const meanCube = (a: number, b: number): number => ((a + b) * (a * a + b * b)) / 4;

/** Calcium in one animal of a stage [g]. `derived`: lengths of a stage are spread evenly. */
function calciumOf({ traits: { priors }, shellOnLand = 0 }: Population, stage: 'juvenile' | 'adult'): number {
  const { lengthAtBirth, lengthAtPuberty, lengthAtEnd, dryMassPerCube, carbonContent } = priors;
  const [from, to] =
    stage === 'juvenile'
      ? [lengthAtBirth.median, lengthAtPuberty.median]
      : [lengthAtPuberty.median, lengthAtEnd.median];
  const carbon = (dryMassPerCube.median / 1000) * carbonContent.median * meanCube(from, to);
  return (shellOnLand * carbon * MOLAR_MASS.calcium) / MOLAR_MASS.carbon;
}

/** Calcium a colony binds in the month of the run in which it grows most [g], and the day that month begins. */
interface Growth {
  readonly bound: number;
  readonly from: number;
}

function mostBound(population: Population, counts: CalciumSource['counts']): Growth {
  const adults = counts(population.id, 'adult');
  const young = counts(population.id, 'juvenile');
  const perAdult = calciumOf(population, 'adult');
  const perYoung = calciumOf(population, 'juvenile');
  const held = adults.map((count, day) => count * perAdult + (young[day] ?? 0) * perYoung);
  let most: Growth = { bound: 0, from: 0 };
  // What the keeper puts in brings its own: growth counts from a day on which somebody is there.
  for (let day = 0; day + MONTH < held.length; day += 1) {
    const bound = held[day]! > 0 ? held[day + MONTH]! - held[day]! : 0;
    if (bound > most.bound) most = { bound, from: day };
  }
  return most;
}

/** Calcium of the leaves a population eats in the month from a day on [g]. */
function eatenWithLeaves(flows: readonly FoodFlow[], eater: string, from: number): number {
  let carbon = 0;
  for (const { weekly } of flows.filter((flow) => flow.eater === eater && LEAVES.has(flow.food)))
    for (let day = from; day < from + MONTH; day += 1) carbon += (weekly[Math.floor(day / 7)] ?? 0) / 7;
  return (carbon / 1000) * IN_LEAVES;
}

/** Whether a piece of carbonate stands out of the water, where animals of the land can gnaw it. */
function hasLimeOnLand({ hardscape, water }: CalciumSource['plan']): boolean {
  return hardscape.some(
    ({ kind, course }) => kind === 'carbonate' && course.some(([, z, thick]) => z + thick / 2 > water.level),
  );
}

/** Milligrams below a tenth of a gram, grams above. */
const mass = (grams: number): string => (grams < 0.1 ? `${shown(1000 * grams)} mg` : `${shown(grams)} g`);

/**
 * Crustaceans and snails of the land that find less calcium than their colony binds as it grows: what a month of it takes, what
 * the leaves they eat then bring, and what would make up for it. A warning where they eat no leaves at all. Those who spend a
 * tenth of their lives in water moult with what that holds; lime on land is plenty.
 * @returns conflicts with amounts in the sentence [g]
 * @validity moults are eaten and the dead leave theirs on land, so only growth in number and size takes calcium; that of soil,
 *   feed and prey is not counted; nobody dies of a lack
 * @source radwan-1984, novak-2014, ziegler-2017, greenaway-1993 (land crabs keep all of it through a moult); derived from the
 *   numbers of the expected run
 */
export function calciumConflicts({ plan, flows, counts }: CalciumSource): Conflict[] {
  if (hasLimeOnLand(plan)) return [];
  return plan.populations.flatMap((population): Conflict[] => {
    const { id, name, traits, shellOnLand = 0 } = population;
    if (shellOnLand === 0 || traits.priors.shareInWater.median >= MOULTS_IN_WATER) return [];
    const { bound, from } = mostBound(population, counts);
    const eaten = eatenWithLeaves(flows, id, from);
    if (bound <= 0 || TAKEN_UP * eaten >= bound) return [];
    const growth = `${capital(name)} bind ${mass(bound)} of calcium in the month in which they grow most, from day ${from} on`;
    return [
      {
        kind: 'calcium',
        who: [id],
        severity: eaten > 0 ? 'note' : 'warning',
        sentence:
          eaten > 0
            ? `${growth}; the leaves they eat then hold ${mass(eaten)}, of which they take up about half.`
            : `${growth}, and nothing on the land holds any for them: no leaves and no lime.`,
        source: SOURCE,
        mend: `Lay cuttlebone, crushed shell or a limestone on the land${eaten > 0 ? '' : ', or leaves'}: ${mass(bound / IN_CUTTLEBONE)} of cuttlebone hold what that month takes.`,
      },
    ];
  });
}
