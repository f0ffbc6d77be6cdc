import {
  clockTime,
  convert,
  dayLightAt,
  gapFigures,
  geometryOf,
  type Inhabitant,
  lampSegments,
  MOLAR_MASS,
  type PlaceFacts,
  type Plan,
  recipeWater,
  type SeriesId,
  type Sourced,
  shoreOf,
} from '@shoreglass/engine';
import type { Library, Organism, Quantity } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';
import { animalTraitsOf } from './animal-traits.ts';
import { expectedOf } from './expected-of.ts';
import { isRunIn } from './start-of.ts';

const sourced = (quantity: Quantity): Sourced => ({ value: quantity.value, source: quantity.source });

function rangesOf(animal: Organism): Inhabitant['ranges'] {
  const own = Object.entries(animal.tolerances ?? {});
  return own.flatMap(([series, span]) =>
    span
      ? [
          {
            series: series as SeriesId,
            ...(span.low ? { low: sourced(span.low) } : {}),
            ...(span.high ? { high: sourced(span.high) } : {}),
          },
        ]
      : [],
  );
}

/**
 * A species of the library as the check of who can live together sees it.
 * @param count planned, adults and young; left out when only species are compared
 * @throws RangeError when its life history contradicts itself
 */
export function inhabitantOf(
  animal: Organism,
  count?: number,
  {
    name,
    firstDay,
    isGuest = false,
  }: { readonly name?: string | undefined; readonly firstDay?: number; readonly isGuest?: boolean } = {},
): Inhabitant {
  const { floor, water, height, groundPerAdult } = animal.space ?? {};
  return {
    id: animal.id,
    name: name ?? animal.name,
    scientificName: animal.scientificName,
    traits: animalTraitsOf(animal).traits,
    ranges: rangesOf(animal),
    ...(count === undefined ? {} : { count }),
    ...(firstDay === undefined ? {} : { firstDay }),
    ...(isGuest ? { isGuest } : {}),
    leastFounders: sourced(animal.leastFounders),
    ways: animal.ways ?? {},
    space: {
      ...(floor ? { floor: sourced(floor) } : {}),
      ...(water ? { water: sourced(water) } : {}),
      ...(height ? { height: sourced(height) } : {}),
      ...(groundPerAdult ? { groundPerAdult: sourced(groundPerAdult) } : {}),
    },
    risks: animal.risks ?? [],
  };
}

/** Who is planned, in the order of the file; the same species named twice counts once with both numbers. */
export function inhabitantsOf({ animals = [] }: EnclosureContent, library: Library): Inhabitant[] {
  const counts = new Map<string, number>();
  for (const { species, adults = 0, juveniles = 0 } of animals)
    counts.set(species, (counts.get(species) ?? 0) + adults + juveniles);
  return [...counts].map(([species, count]) => {
    const own = animals.filter((each) => each.species === species);
    const firstDay = Math.min(...own.map(({ after = 0 }) => after));
    const isGuest = own.every(({ chance }) => chance !== undefined);
    return inhabitantOf(library.organism(species), count, { name: own[0]?.name, firstDay, isGuest });
  });
}

const SQUARE_CENTIMETRES = 1e4;

/** What of a plan matters to those who live in it. */
export function placeFactsOf(plan: Plan): PlaceFacts {
  const { box, water, routines } = plan;
  const geometry = geometryOf(plan);
  const land = geometry.landAreaAt(water.level);
  const feeds = routines.flatMap((routine) => (routine.kind === 'feed' ? [routine.onLand ?? false] : []));
  return {
    floor: box.length * box.width * SQUARE_CENTIMETRES,
    landFloor: land * SQUARE_CENTIMETRES,
    water: geometry.volumeAt(water.level) * 1000,
    height: box.height * 100,
    openCover: box.coverMesh ? 0 : box.coverOpenFraction,
    // The bare part of the cover is told apart.
    gaps: gapFigures(plan)
      .filter(({ place }) => place !== 'box.coverOpenFraction' || box.coverMesh !== undefined)
      .map(({ name, width }) => ({ name, width: width * 1000 })),
    shore: shoreOf(plan),
    fill: fillOf(plan),
    expected: expectedOf(plan),
    isRunIn: isRunIn(plan.start),
    guests: guestsOf(plan),
    feedsWater: feeds.includes(false),
    feedsLand: feeds.includes(true),
    feedings: feedingsOf(plan),
    vegetables: vegetablesOf(plan),
  };
}

/** Water plants that are bought, and guests that may come along with them. */
function guestsOf({ plants, populations }: Plan): NonNullable<PlaceFacts['guests']> {
  const bought = plants.filter(({ chance }) => chance === undefined);
  return {
    waterPlants: bought.some(({ group }) => group === 'submerged' || group === 'floating'),
    areListed: [...plants, ...populations].some(({ chance }) => chance !== undefined),
  };
}

/** The water a plan is filled with, as animals meet it on the first day. */
function fillOf({ water, room }: Plan): NonNullable<PlaceFacts['fill']> {
  const { carbonDioxide, pressure } = room;
  const { conductivity, GH } = recipeWater(water.fill, { temperature: 25, air: { carbonDioxide, pressure } });
  return {
    conductivity: conductivity / 1000,
    hardness: convert(GH, 'mmol/L', '°dGH'),
    copper: (water.fill.copper ?? 0) * MOLAR_MASS.copper * 1000,
  };
}

/** Feedings at an hour, the same hour and place once. */
function feedingsOf(plan: Plan): NonNullable<PlaceFacts['feedings']> {
  const segments = lampSegments(plan);
  const all = [...plan.routines, ...plan.actions].flatMap((care) => {
    if (care.kind !== 'feed' || care.hour === undefined) return [];
    const light = dayLightAt(segments, care.hour);
    return [{ onLand: care.onLand ?? false, time: clockTime(care.hour), light }];
  });
  return all.filter(
    ({ time, onLand }, at) => all.findIndex((each) => each.time === time && each.onLand === onLand) === at,
  );
}

/** Feeds of plants given into the water, each once. */
function vegetablesOf({ routines, actions }: Plan): string[] {
  const names = [...routines, ...actions].flatMap((care) =>
    care.kind === 'feed' && !care.onLand && care.feed.meaty === 0 ? [care.feed.name] : [],
  );
  return [...new Set(names)];
}
