import { animalTraitsOf } from '@shoreglass/contract';
import { TRAIT_IDS, type TraitValues } from '@shoreglass/engine';
import { library, type Organism } from '@shoreglass/library';

/** Dry part of wet mass, shell left out of both, and whether reports count in length or in shell. */
const DRY_PART: Readonly<Record<string, number>> = {
  // From memory; small crustaceans hold one fifth to one quarter of their wet mass dry.
  'hyalella-azteca': 0.25,
  'gammarus-pulex': 0.2,
  'asellus-aquaticus': 0.2,
  'neocaridina-davidi': 0.22,
};

export interface Species {
  readonly animal: Organism;
  readonly traits: TraitValues;
  /** Dry over wet mass; undefined where wet mass includes a shell that is not modelled. */
  readonly dryPart: number | undefined;
  /** Days from one meal to the next; every day when left out. */
  readonly feedEvery?: number;
  /** Part of what it wants that a meal holds [0..1]; all of it when left out. */
  readonly ration?: number;
  /** Floating algae [mg C/L], held there; without end when left out. */
  readonly concentration?: number;
}

/** What the life history says or the rules take; undefined where only traits are stated. */
function dryPartOf({ lifeHistory }: Organism): number | undefined {
  return lifeHistory ? (lifeHistory.dryPart?.value ?? 0.22) : undefined;
}

/** The library's medians of an animal; undefined where the library has none. */
export function speciesOf(taxon: string): Species | undefined {
  const animal = Object.hasOwn(library.data.organisms, taxon) ? library.organism(taxon) : undefined;
  if (!animal) return undefined;
  const { priors } = animalTraitsOf(animal).traits;
  const traits = Object.fromEntries(TRAIT_IDS.map((id) => [id, priors[id].median])) as TraitValues;
  return { animal, traits, dryPart: DRY_PART[taxon] ?? dryPartOf(animal) };
}
