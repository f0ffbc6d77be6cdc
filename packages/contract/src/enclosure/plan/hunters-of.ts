import type { Expected, Hunter, Population } from '@shoreglass/engine';
import type { Library, Organism } from '@shoreglass/library';
import { lifePopulationOf } from './inhabitants.ts';

/** Share of its hunting that must go to the pest's kind for an animal to be offered against it [1]. */
const KEEN = 0.3;
const MOST_HUNTERS = 3;
/** Where an entry does not say how many make a group. */
const USUAL_ADULTS = 2;

/** How far outside its range a hunter is not offered [K]. @source assumed */
const MARGIN = 1.5;

/** Whether the temperatures of a place are within what an animal is fine in. */
function suits({ tolerances = {} }: Organism, place: readonly Expected[]): boolean {
  return (['waterTemperature', 'airTemperature'] as const).every((series) => {
    const given = place.find((each) => each.series === series);
    const { low, high } = tolerances[series] ?? {};
    if (given === undefined) return true;
    const isCold = low !== undefined && given.low < low.value - MARGIN;
    return !isCold && !(high !== undefined && given.high > high.value + MARGIN);
  });
}

/**
 * Animals of the library that mostly hunt the kind a pest is and live where it lives, the keenest first; each with the
 * least number that should be kept together.
 * @param pest a population of the plan whose id names an animal of the library
 * @param place what the room gives; a hunter for whom it is too cold or warm is not offered
 */
export function huntersOf(
  { id: pest, zone }: Pick<Population, 'id' | 'zone'>,
  library: Library,
  place: readonly Expected[] = [],
): Hunter[] {
  const prey = library.organism(pest);
  const kind = lifePopulationOf(prey, zone).traits.preyKind;
  if (kind === undefined) return [];
  return Object.values(library.data.organisms)
    .filter((animal) => animal.id !== pest && animal.habitat === prey.habitat && suits(animal, place))
    .map((animal) => ({ animal, population: lifePopulationOf(animal, zone) }))
    .map((each) => ({ ...each, zeal: each.population.traits.hunts?.[kind] ?? 0 }))
    .filter(({ zeal }) => zeal >= KEEN)
    .sort((a, b) => b.zeal - a.zeal)
    .slice(0, MOST_HUNTERS)
    .map(({ animal, population }) => ({ population, adults: animal.leastFounders?.value ?? USUAL_ADULTS }));
}
