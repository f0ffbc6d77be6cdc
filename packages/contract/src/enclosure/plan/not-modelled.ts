import type { Library, Plant } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';

const WHY: Readonly<Record<Exclude<Plant['group'], 'submerged'>, string>> = {
  moss: 'is drawn where it is planted; its growth and drying are not computed yet',
  land: 'is drawn where it is planted; its growth and water use are not computed yet',
  emersed: 'is drawn where it is planted; its growth and uptake from the water are not computed yet',
  floating: 'is drawn where it is planted; its growth, shade and uptake are not computed yet',
};

/** What the file holds that the engine does not model yet, one sentence each. */
export function notModelledOf(content: EnclosureContent, library: Library): string[] {
  const sentences: string[] = [];
  for (const { plant: id, name } of content.plants ?? []) {
    const plant = library.plant(id);
    if (plant.group !== 'submerged') sentences.push(`${capital(name ?? plant.name)} ${WHY[plant.group]}.`);
  }
  for (const { species, name } of content.animals ?? []) {
    const animal = library.organism(species);
    if (animal.habitat === 'land')
      sentences.push(
        `${capital(name ?? animal.name)} lives on land; its numbers and what it eats are not computed yet.`,
      );
  }
  for (const { material: id, name } of content.hardscape ?? []) {
    const material = library.material(id);
    if (material.use === 'carbonate' && material.mineral === 'aragonite')
      sentences.push(
        `${capital(name ?? material.name)} is aragonite; it is computed as calcite, which dissolves a little less.`,
      );
  }
  const hasLitterLayer = content.zones.some(({ layers }) => layers.some(({ kind }) => kind === 'litter'));
  if (hasLitterLayer)
    sentences.push('Leaf litter as a layer of the land is drawn; its breakdown is not computed yet.');
  if (content.devices?.mister)
    sentences.push(
      'Misting wets air, glass and ground; what it does for moss and plants is not computed yet.',
    );
  return [...new Set(sentences)];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
