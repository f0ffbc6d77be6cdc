import {
  type AnimalTraits,
  type Bounds,
  foodsBeside,
  type HarmedKind,
  harmTraits,
  type LifeHistory,
  TRAIT_DEFAULTS,
  type TraitId,
  traitsOfLifeHistory,
} from '@shoreglass/engine';
import { type Organism, priorOf, type Quantity } from '@shoreglass/library';

type Spans = NonNullable<Organism['survives']>;

function bounds(spans: Spans, series: keyof Spans): Bounds {
  const { low, high } = spans[series] ?? {};
  return { ...(low ? { low: low.value } : {}), ...(high ? { high: high.value } : {}) };
}

/** A share of a file, written in parts of one or per cent. */
function part(quantity: Quantity | undefined): number {
  if (!quantity) return 0;
  return quantity.unit === '%' ? quantity.value / 100 : quantity.value;
}

function parts<K extends string>(
  shares: Readonly<Partial<Record<K, Quantity | undefined>>>,
): Partial<Record<K, number>> {
  const entries = Object.entries(shares) as [K, Quantity | undefined][];
  return Object.fromEntries(entries.map(([key, quantity]) => [key, part(quantity)])) as Partial<
    Record<K, number>
  >;
}

/** A file's values without their provenance, those it leaves out left out. */
function values<K extends string>(
  given: Readonly<Partial<Record<K, Quantity | undefined>>>,
): Partial<Record<K, number>> {
  const entries = Object.entries(given) as [K, Quantity | undefined][];
  return Object.fromEntries(
    entries.flatMap(([key, quantity]) => (quantity ? [[key, quantity.value]] : [])),
  ) as Partial<Record<K, number>>;
}

function historyOf(animal: Organism, history: NonNullable<Organism['lifeHistory']>): LifeHistory {
  const { lengthMeasure: _, ...measured } = history;
  const { survives = {}, ways = {}, prey, place, space } = animal;
  const known = values(measured) as Pick<
    LifeHistory,
    | 'temperature'
    | 'lengthAtBirth'
    | 'adultLength'
    | 'adultMass'
    | 'maturityAge'
    | 'youngPerBrood'
    | 'broodInterval'
    | 'broodTime'
    | 'lifespan'
  >;
  return {
    ...known,
    habitat: animal.habitat,
    diet: parts(animal.diet ?? {}),
    survives: {
      waterTemperature: bounds(survives, 'waterTemperature'),
      pH: bounds(survives, 'pH'),
      hardness: bounds(survives, 'GH'),
      oxygen: bounds(survives, 'oxygenLow'),
      unionisedAmmonia: bounds(survives, 'unionisedAmmonia'),
      airTemperature: bounds(survives, 'airTemperature'),
      humidity: bounds(survives, 'relativeHumidity'),
    },
    ...(prey ? { preySmallest: prey.smallest.value, preyLargest: prey.largest.value } : {}),
    ...(place ? { timeInWater: part(place.water), timeAtMargin: part(place.margin) } : {}),
    ...(space?.groundPerAdult ? { groundPerAdult: space.groundPerAdult.value } : {}),
    divides: animal.mating === 'division',
    eatsOwnKind: ways.eatsOwnKind ?? 'never',
    moults: ways.moults ?? false,
    growsOn: ways.growsOn ?? true,
    leavesByGaps:
      ways.needsTightLid !== false &&
      ((ways.climbsGlass ?? false) || (ways.jumps ?? false) || (ways.flies ?? false)),
  };
}

/** What the rules of poison, salt and drowning need to know of a species. */
function kindOf({ habitat, preyKind, survives = {}, ways = {} }: Organism): HarmedKind {
  return {
    habitat,
    ...(preyKind ? { preyKind } : {}),
    conductivity: bounds(survives, 'conductivity'),
    oxygen: bounds(survives, 'oxygenLow'),
    needsWayOut: ways.needsWayOut ?? false,
    climbsGlass: ways.climbsGlass ?? false,
  };
}

/** The traits of a species, stated by its file or made by rule from its life history, and what the rules had to settle. */
export interface SpeciesTraits {
  readonly traits: AnimalTraits;
  readonly remarks: readonly string[];
}

/** @throws RangeError when the life history contradicts itself; says how. */
export function animalTraitsOf(animal: Organism): SpeciesTraits {
  const stated = Object.entries(animal.traits ?? {}).flatMap(([id, quantity]) =>
    quantity ? [[id, priorOf(quantity)] as const] : [],
  );
  const given = harmTraits(kindOf(animal), Object.fromEntries(stated));
  const { priors, remarks } = animal.lifeHistory
    ? traitsOfLifeHistory(animal.name, historyOf(animal, animal.lifeHistory), given)
    : { priors: withDefaults(given), remarks: [] };
  return {
    traits: {
      priors,
      mating: animal.mating,
      brood: animal.brood,
      habitat: animal.habitat,
      ...(animal.active ? { active: animal.active.when } : {}),
      development: animal.development ?? 'direct',
      ...(animal.preyKind ? { preyKind: animal.preyKind } : {}),
      ...(animal.place?.burrow ? { inGround: part(animal.place.burrow) } : {}),
      ...(animal.prey ? { hunts: parts(animal.prey.kinds) } : {}),
    },
    remarks,
  };
}

/** Traits a measured species leaves out; those who scrape algae scrape bacterial film alike, and so for other foods. */
function withDefaults(given: Partial<AnimalTraits['priors']>): AnimalTraits['priors'] {
  const spared = Object.entries(TRAIT_DEFAULTS).map(
    ([id, value]) => [id, { kind: 'fixed', median: value, spread: 0, min: value, max: value }] as const,
  );
  const film = given.preferenceForAlgae ? { preferenceForBiofilm: given.preferenceForAlgae } : {};
  return { ...Object.fromEntries(spared), ...film, ...foodsBeside(given), ...given } as Record<
    TraitId,
    AnimalTraits['priors'][TraitId]
  >;
}
