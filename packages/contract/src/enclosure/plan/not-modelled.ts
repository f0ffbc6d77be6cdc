import { feedsFromWater, growsOnLand } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';

const UNDER_WATER = 'is drawn where it is planted; at the bottom of a pool its growth is not computed';

/** What the file holds that the engine does not model yet, one sentence each. */
export function notModelledOf(content: EnclosureContent, library: Library): string[] {
  const sentences: string[] = [];
  for (const { plant: id, name, zone } of content.plants ?? []) {
    const plant = library.plant(id);
    const { group } = plant;
    if (group === 'submerged' || group === 'floating') continue;
    if (feedsFromWater({ group, zone }, content.zones) || growsOnLand({ group, zone }, content.zones))
      continue;
    sentences.push(`${capital(name ?? plant.name)} ${UNDER_WATER}.`);
  }
  if (content.devices?.mister)
    sentences.push('Misting wets air, glass and ground; the salts it leaves on land are not computed yet.');
  return [...new Set(sentences)];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
