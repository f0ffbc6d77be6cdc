import { roofKeys } from './box-keys.ts';
import { type Choice, type Handle, type MaterialName, materialChoice, type ShapeContent } from './handle.ts';
import { keysOfPart } from './part-keys.ts';

const KINDS = ['pool', 'margin', 'bank', 'stream', 'wall', 'canopy', 'island', 'cave'] as const;

/** What kind of place a zone is. */
export function kindChoice(kind: string, index: number): Choice {
  return {
    id: 'kind',
    name: 'Kind of place',
    value: kind,
    options: KINDS.map((value) => ({ value, name: value })),
    path: ['zones', index, 'kind'],
  };
}

/** Room under a roof that is added, and how thick it is [m]. */
const ROOF = { room: 0.07, thick: 0.03 } as const;

/** What a slab is of when the file does not say. */
const USUAL_SLAB = 'slate';

/** What kind of place a zone is, and the slab above it, as over a cave: its heights and stone, or that it can be given one where there is room. */
export function roofOf(
  zone: ShapeContent['zones'][number],
  index: number,
  { materials, height }: { readonly materials: readonly MaterialName[]; readonly height: number },
): Pick<Required<Handle>, 'measures' | 'choices' | 'more' | 'less'> {
  const heights = [
    ...Object.values(zone.ground ?? {}),
    ...(zone.outline ?? []).map(({ ground }) => ground),
  ].filter((height): height is number => height !== undefined);
  const bottom = Math.max(0, ...heights) + ROOF.room;
  const written = (metres: number) => `${Number((metres * 100).toFixed(1))} cm`;
  const { measures, more, less } = keysOfPart(
    ['zones', index],
    zone,
    roofKeys({ bottom: written(bottom), top: written(bottom + ROOF.thick) }),
  );
  const choices = [kindChoice(zone.kind, index)];
  if (zone.roof) {
    const stone = materialChoice(
      zone.roof.material ?? USUAL_SLAB,
      ['zones', index, 'roof', 'material'],
      materials,
      'stone',
    );
    choices.push({ ...stone, id: 'roof-material', name: 'Roof of' });
  }
  return { measures, choices, more: bottom + ROOF.thick <= height ? more : [], less };
}

/** Zones from pane to pane as wholes: chosen from the list, since their borders are what is dragged. */
export function stripZoneHandles(
  { zones, glass }: ShapeContent,
  materials: readonly MaterialName[],
): Handle[] {
  return zones.flatMap((zone, index): Handle[] =>
    zone.outline
      ? []
      : [
          {
            id: `zone:${zone.id}`,
            group: 'ground',
            name: `${zone.name ?? zone.id}, the whole zone`,
            ...roofOf(zone, index, { materials, height: glass.height }),
          },
        ],
  );
}
