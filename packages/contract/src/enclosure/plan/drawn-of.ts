import type { Plan } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';
import { zonesOf } from './ground.ts';
import { pieceOf } from './pieces.ts';
import { blendOf, waterFinder } from './water-of.ts';

/** Light through the closed part of the cover where the file says nothing. @source assumed: clean glass, both faces */
const CLEAR_COVER = 0.9;

/** What can be drawn and filled: box, ground, hardscape and water. */
export type Drawn = Pick<Plan, 'box' | 'zones' | 'hardscape' | 'water'>;

export function drawnOf(content: EnclosureContent, library: Library): Drawn {
  const find = waterFinder(content, library);
  return {
    box: {
      length: content.glass.length,
      width: content.glass.width,
      height: content.glass.height,
      glassThickness: content.glass.thickness,
      coverOpenFraction: content.cover.open,
      coverTransmission: content.cover.transmission ?? CLEAR_COVER,
    },
    zones: zonesOf(content.zones, library),
    hardscape: (content.hardscape ?? []).map((piece) => pieceOf(piece, library)),
    water: {
      level: content.water.level,
      fill: blendOf(content.water.fill, find),
      topOff: blendOf(content.water['top-off'], find),
    },
  };
}
