import { feedsFromWater } from '@shoreglass/engine';
import type { Library, Plant } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';

const WHY: Readonly<Record<Exclude<Plant['group'], 'submerged' | 'floating'>, string>> = {
  moss: 'is drawn where it is planted; its growth and drying are not computed yet',
  land: 'is drawn where it is planted; its growth and water use are not computed yet',
  emersed: 'is drawn where it is planted; away from pool, margin and stream its growth is not computed yet',
};

/** What the file holds that the engine does not model yet, one sentence each. */
export function notModelledOf(content: EnclosureContent, library: Library): string[] {
  const sentences: string[] = [];
  for (const { plant: id, name, zone } of content.plants ?? []) {
    const plant = library.plant(id);
    const { group } = plant;
    if (group === 'submerged' || group === 'floating') continue;
    if (feedsFromWater({ group, zone }, content.zones)) continue;
    sentences.push(`${capital(name ?? plant.name)} ${WHY[group]}.`);
  }
  if (content.devices?.mister)
    sentences.push(
      'Misting wets air, glass and ground; what it does for moss and plants, and the salts it leaves on land, are not computed yet.',
    );
  return [...new Set(sentences)];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
