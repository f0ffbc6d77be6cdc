import { ediblePart, type Founders, type Planting, type Population } from '@shoreglass/engine';
import type { Library, Organism, Plant } from '@shoreglass/library';
import type { AnimalsContent, PlantingContent } from '../schema/life.ts';
import { animalTraitsOf } from './animal-traits.ts';
import { plain } from './plain.ts';
import { shellOf, shellOnLandOf } from './shell-of.ts';

export function plantingOf(content: PlantingContent, index: number, library: Library): Planting {
  const plant = library.plant(content.plant);
  return {
    id: `${content.zone}-${plant.id}-${index + 1}`,
    name: content.name ?? plant.name,
    group: plant.group,
    zone: content.zone,
    cover: content.cover,
    fullCoverBiomass: plain(plant.fullCoverBiomass, 'carbon per area'),
    light: { least: plant.light.least.value, good: plant.light.good.value },
    edible: edibleOf(plant),
    ...bearsOf(plant),
    ...(plant.breakdown ? { breakdown: plain(plant.breakdown, 'share') } : {}),
    ...(plant.bicarbonate ? { bicarbonate: plain(plant.bicarbonate, 'share') } : {}),
    ...(content.start === 'fragments' ? { fragments: true } : {}),
    ...(content.chance === undefined ? {} : { chance: content.chance }),
  };
}

/** Part of a plant that animals take: as its entry says, else by how dry and how well defended its leaves are. */
function edibleOf({ group, edible, tissue, risks = [] }: Plant): number {
  if (edible) return plain(edible, 'share');
  return ediblePart({
    group,
    ...(tissue ? { dryPart: plain(tissue.dryMatter, 'share') } : {}),
    isDefended: risks.some(({ kind }) => kind === 'toxin'),
  });
}

/** How fast a plant grows and what air it bears, as far as its entry says. */
function bearsOf({ growth, tolerances }: Plant): Pick<Planting, 'growth' | 'warmest' | 'driest'> {
  const warmest = tolerances?.airTemperature?.high?.value;
  const driest = tolerances?.relativeHumidity?.low?.value;
  return {
    ...(growth ? { growth: plain(growth, 'rate') } : {}),
    ...(warmest === undefined ? {} : { warmest }),
    ...(driest === undefined ? {} : { driest }),
  };
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

/** A population of a species without animals, in a zone; the caller brings them in. */
export function lifePopulationOf(animal: Organism, zone: string): Population {
  return {
    id: animal.id,
    species: animal.scientificName,
    name: animal.name,
    traits: animalTraitsOf(animal).traits,
    founders: [],
    zone,
  };
}

/** The population of a species; founders who move in later come by an action instead. */
export function populationOf(content: AnimalsContent, animal: Organism): Population {
  const { traits } = animalTraitsOf(animal);
  const carbonContent = traits.priors.carbonContent.median;
  const shell = shellOf(animal, carbonContent);
  const shellOnLand = shellOnLandOf(animal, carbonContent);
  return {
    id: animal.id,
    species: animal.scientificName,
    name: content.name ?? animal.name,
    traits,
    founders: (content.after ?? 0) > 0 ? [] : foundersOf(content),
    zone: content.zone,
    ...(shellOnLand > 0 ? { shellOnLand } : {}),
    ...(shell > 0 ? { shell, ...(animal.shellMineral ? { shellMineral: animal.shellMineral } : {}) } : {}),
    ...(content.chance === undefined ? {} : { chance: content.chance }),
  };
}
