import type { AnimalTraits, Founders, Planting, Population } from '@shoreglass/engine';
import { type Library, priorOf, type WaterAnimal } from '@shoreglass/library';
import type { AnimalsContent, PlantingContent } from '../schema/life.ts';
import { plain } from './plain.ts';

export function plantingOf(content: PlantingContent, index: number, library: Library): Planting {
  const plant = library.plant(content.plant);
  return {
    id: `${content.zone}-${plant.id}-${index + 1}`,
    name: content.name ?? plant.name,
    group: plant.group,
    zone: content.zone,
    cover: content.cover,
    fullCoverBiomass: plain(plant.fullCoverBiomass, 'carbon per area'),
  };
}

function traitsOf({ traits, mating, brood }: WaterAnimal): AnimalTraits {
  const priors = Object.fromEntries(Object.entries(traits).map(([id, quantity]) => [id, priorOf(quantity)]));
  return { priors: priors as AnimalTraits['priors'], mating, brood };
}

/** Adults and young, without those there are none of. */
export function foundersOf({
  adults = 0,
  juveniles = 0,
}: Pick<AnimalsContent, 'adults' | 'juveniles'>): Founders[] {
  const founders: Founders[] = [
    { stage: 'adult', count: adults },
    { stage: 'juvenile', count: juveniles },
  ];
  return founders.filter(({ count }) => count > 0);
}

/** The population of a water animal; founders who move in later come by an action instead. */
export function populationOf(content: AnimalsContent, animal: WaterAnimal): Population {
  return {
    id: animal.id,
    species: animal.scientificName,
    name: content.name ?? animal.name,
    traits: traitsOf(animal),
    founders: (content.after ?? 0) > 0 ? [] : foundersOf(content),
    zone: content.zone,
  };
}
