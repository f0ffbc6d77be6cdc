import type { Box, Mesh, Plan, Vent } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';
import { zonesOf } from './ground.ts';
import { pieceOf } from './pieces.ts';
import { blendOf, waterFinder } from './water-of.ts';

/** Light through the closed part of the cover where the file says nothing. @source assumed: clean glass, both faces */
const CLEAR_COVER = 0.9;

/** What can be drawn and filled: box, ground, hardscape and water. */
export type Drawn = Pick<Plan, 'box' | 'zones' | 'hardscape' | 'water'>;

type MeshContent = NonNullable<EnclosureContent['cover']['mesh']>;

const meshOf = ({ open, hole }: MeshContent): Mesh => ({ openShare: open, hole });

function ventOf(vent: NonNullable<EnclosureContent['glass']['vents']>[number]): Vent {
  const { name = `Vent in the ${vent.pane} pane`, pane, height, length, opening, mesh } = vent;
  return { name, pane, height, length, opening, ...(mesh ? { mesh: meshOf(mesh) } : {}) };
}

function boxOf({ glass, cover }: EnclosureContent): Box {
  const { overflow, vents, 'second-pane': secondPane } = glass;
  return {
    length: glass.length,
    width: glass.width,
    height: glass.height,
    glassThickness: glass.thickness,
    coverOpenFraction: cover.open,
    coverTransmission: cover.transmission ?? CLEAR_COVER,
    ...(glass.top ? { topEdge: glass.top === 'rimmed' ? ('braced' as const) : ('free' as const) } : {}),
    ...(cover.mesh ? { coverMesh: meshOf(cover.mesh) } : {}),
    ...(cover.gap === undefined ? {} : { coverGap: cover.gap }),
    ...(vents && vents.length > 0 ? { vents: vents.map(ventOf) } : {}),
    ...(overflow ? { overflow } : {}),
    ...(secondPane ? { secondPane } : {}),
  };
}

export function drawnOf(content: EnclosureContent, library: Library): Drawn {
  const find = waterFinder(content, library);
  return {
    box: boxOf(content),
    zones: zonesOf(content.zones, library, content.glass.width),
    hardscape: (content.hardscape ?? []).map((piece) => pieceOf(piece, library)),
    water: {
      level: content.water.level,
      fill: blendOf(content.water.fill, find),
      topOff: blendOf(content.water['top-off'], find),
    },
  };
}
