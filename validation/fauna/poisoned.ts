import { rearAlone, suitable } from '../../packages/engine/src/community/rearing-alone.ts';
import { NotStated, type Quantity } from './quantities.ts';
import type { Species } from './species.ts';

const COHORT = 1000;
/** Water called soft in works on Lake Superior, where most of it was done: 45 mg/L as calcium carbonate (memory) [dGH]. */
const SOFT = 45 / 17.85;

function partAlive(species: Species, days: number, copper: number): number {
  const { animal, traits } = species;
  const { lengthAtPuberty, lengthAtEnd, referenceTemperature } = traits;
  const { hardness } = suitable(traits, referenceTemperature).water;
  const rearing = rearAlone(
    {
      id: animal.id,
      traits: { mating: animal.mating, brood: animal.brood, development: animal.development ?? 'direct' },
      values: traits,
    },
    referenceTemperature,
    COHORT,
    {
      length: (lengthAtPuberty + lengthAtEnd) / 2,
      water: { hardness: Math.min(SOFT, hardness), copper },
    },
  );
  for (let day = 0; day < days; day += 1) rearing.pass(false);
  return (rearing.population.train.count[0] ?? 0) / COHORT;
}

/**
 * Copper [ug/L] at which half of the adults die within the hours named, in soft water and beyond those that die there
 * without copper.
 */
export const lethalCopper: Quantity = ({ species, text }) => {
  const hours = /(\d+) h/.exec(text)?.[1];
  if (hours === undefined || !/copper/i.test(text) || !/soft/i.test(text))
    throw new NotStated('only copper in soft water over hours is built');
  const days = Number(hours) / 24;
  const without = partAlive(species, days, 0);
  let [low, high] = [1e-3, 1e6];
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = Math.sqrt(low * high);
    if (partAlive(species, days, middle) > 0.5 * without) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
};
