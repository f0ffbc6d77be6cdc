import { glassHandle, openingHandles, waterHandle } from './box-handles.ts';
import { deviceHandles } from './device-handles.ts';
import { groundHandles } from './ground-handles.ts';
import type { Handle, HandleGroup, MaterialName, ShapeContent } from './handle.ts';
import { layerHandles } from './layer-handles.ts';
import { outlineHandles } from './outline-handles.ts';
import { pieceHandles } from './piece-handles.ts';
import { stripZoneHandles } from './zone-handles.ts';

/** Everything that can be taken hold of; `ends` are those of the zones where the section cuts them [m]. */
export function allHandles(
  content: ShapeContent,
  ends: readonly { readonly from: number; readonly to: number }[],
  materials: readonly MaterialName[],
): Handle[] {
  return [
    waterHandle(content),
    ...groundHandles(content),
    ...stripZoneHandles(content, materials),
    ...outlineHandles(content, materials),
    ...layerHandles(content, ends, materials),
    ...pieceHandles(content, materials),
    ...openingHandles(content),
    ...deviceHandles(content),
    glassHandle(content),
  ];
}

export const GROUPS: readonly { readonly group: HandleGroup; readonly name: string }[] = [
  { group: 'water', name: 'Water' },
  { group: 'ground', name: 'Ground' },
  { group: 'layers', name: 'Layers' },
  { group: 'pieces', name: 'Wood and stone' },
  { group: 'openings', name: 'Openings' },
  { group: 'devices', name: 'Equipment' },
  { group: 'glass', name: 'Glass' },
];
