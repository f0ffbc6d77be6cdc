import type { Choice, Handle, ShapeContent } from './handle.ts';

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

/** Zones from pane to pane as wholes: chosen from the list, since their borders are what is dragged. */
export function stripZoneHandles({ zones }: ShapeContent): Handle[] {
  return zones.flatMap((zone, index): Handle[] =>
    zone.outline
      ? []
      : [
          {
            id: `zone:${zone.id}`,
            group: 'ground',
            name: `${zone.name ?? zone.id}, the whole zone`,
            measures: [],
            choices: [kindChoice(zone.kind, index)],
          },
        ],
  );
}
