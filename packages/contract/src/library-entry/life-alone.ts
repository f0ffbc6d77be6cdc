import { type LifeSpread, type LifeTable, lifeTable, lifeTableSpread, TRAIT_IDS } from '@shoreglass/engine';
import type { Organism } from '@shoreglass/library';
import { animalTraitsOf } from '../enclosure/plan/animal-traits.ts';

/** Of a warm room's enclosure [°C]: asked for where a species is fine in it. */
const USUAL = 24;

/** The temperature nearest to 24 °C at which a species is fine, or at least survives [°C]. */
export function usualTemperature({ habitat, tolerances = {}, survives = {} }: Organism): number {
  const series = habitat === 'land' ? 'airTemperature' : 'waterTemperature';
  const { low, high } = tolerances[series] ?? survives[series] ?? {};
  const lowest = low?.value ?? USUAL;
  const highest = high?.value ?? USUAL;
  return Math.min(Math.max(USUAL, lowest), Math.max(lowest, highest));
}

/**
 * The life table of an animal of the library by itself with ample food, by the medians of its traits.
 * @throws RangeError when its traits contradict each other, or the temperature [°C] is out of range
 */
export function lifeTableOf(animal: Organism, temperature: number = usualTemperature(animal)): LifeTable {
  const { traits } = animalTraitsOf(animal);
  const values = Object.fromEntries(TRAIT_IDS.map((id) => [id, traits.priors[id].median]));
  return lifeTable({ id: animal.id, traits, values }, temperature);
}

/** How well the figures of that table are known, over draws of the traits. @throws RangeError as `lifeTableOf` */
export function lifeSpreadOf(animal: Organism, temperature: number = usualTemperature(animal)): LifeSpread {
  return lifeTableSpread({ id: animal.id, traits: animalTraitsOf(animal).traits }, temperature);
}

const LONG = 100;
const degrees = (temperature: number): string => `${Number(temperature.toFixed(1))} °C`;
/** Days as people say them: whole, or to a tenth where few. */
const days = (count: number): string => {
  const shown = count < 10 ? count.toFixed(1).replace(/\.0$/, '') : count.toFixed(0);
  return shown === '1' ? '1 day' : `${shown} days`;
};
/** Months beside the days where they are many. */
const inDays = (count: number): string =>
  count > LONG ? `${days(count)} (${(count / 30.4).toFixed(0)} months)` : days(count);

/** Why nobody is born, in the words of a page. */
function whyNone(animal: Organism, { temperature, clutch, maturity }: LifeTable): string {
  if (animal.development === 'brackish larvae' && clutch > 0)
    return 'no young in fresh water, where its larvae die';
  if (maturity === undefined) return `dies before it is grown at ${degrees(temperature)}`;
  return `grown after ${inDays(maturity)}, but does not breed at ${degrees(temperature)}`;
}

function pace({ doubling, renewal }: LifeTable): string {
  if (doubling !== undefined) return `numbers double in ${inDays(doubling)}`;
  return renewal ? 'numbers do not grow' : '';
}

/** What becomes of an animal by itself with ample food, in a sentence: first young, doubling time, brood. */
export function lifeSentence(animal: Organism, table: LifeTable): string {
  const { temperature, firstYoung, clutch } = table;
  const pieces = animal.mating === 'division';
  const opening = `By itself with ample food at ${degrees(temperature)}`;
  if (firstYoung === undefined) return `${opening}: ${whyNone(animal, table)}.`;
  const first = pieces
    ? `first divides after ${inDays(firstYoung)}`
    : `first young after ${inDays(firstYoung)}`;
  const brood =
    pieces || clutch < 1.5 ? '' : `, ${clutch < 10 ? clutch.toFixed(1) : clutch.toFixed(0)} eggs a brood`;
  return `${opening}: ${first}${brood}, ${pace(table)}.`;
}

/** What becomes of an animal of the library by itself with ample food where it is fine, in a sentence. */
export function aloneOf(animal: Organism): string {
  return lifeSentence(animal, lifeTableOf(animal));
}
