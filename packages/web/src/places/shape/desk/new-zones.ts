import type { EnclosureEdit } from '@shoreglass/contract';
import type { SoundShape } from '../../../worker/shape-orders.ts';
import type { ShapeContent, Write } from '../handles/handle.ts';

/** A name that no part of the list has yet: "island", "island-2". */
export function freshId(taken: readonly { readonly id: string }[], wanted: string): string {
  const isFree = (id: string) => taken.every((part) => part.id !== id);
  if (isFree(wanted)) return wanted;
  for (let number = 2; ; number++) if (isFree(`${wanted}-${number}`)) return `${wanted}-${number}`;
}

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly ground?: number;
}

const writtenCorners = (corners: readonly Corner[], write: Write) =>
  corners.map(({ x, y, ground }) => ({
    x: write(x),
    y: write(y),
    ...(ground === undefined ? {} : { ground: write(ground) }),
  }));

const square = (x: number, y: number, reach: number): Corner[] => [
  { x: x - reach, y: y - reach },
  { x: x + reach, y: y - reach },
  { x: x + reach, y: y + reach },
  { x: x - reach, y: y + reach },
];

function addZone({ zones }: ShapeContent, zone: Readonly<Record<string, unknown>>): EnclosureEdit[] {
  return [{ path: ['zones', zones.length], value: zone }];
}

/** What a zone in the middle of the widest one lies in, and how far it may reach. */
function inTheWidest({ content, plan }: SoundShape) {
  const { glass } = content;
  const widest = [...plan.zones].sort((a, b) => b.to - b.from - (a.to - a.from))[0];
  if (!widest) return undefined;
  return {
    widest,
    x: (widest.from + widest.to) / 2,
    y: glass.width / 2,
    reach: Math.min(0.08, (widest.to - widest.from) / 4, glass.width / 4),
  };
}

/** Four corners in the middle of the widest zone, a little higher than its ground and the water. */
export function newIsland(shape: SoundShape, write: Write): EnclosureEdit[] {
  const { content } = shape;
  const { glass, water, zones } = content;
  const place = inTheWidest(shape);
  const land = zones.find(({ kind }) => kind === 'bank') ?? zones[0];
  if (!place || !land) return [];
  const { widest, x, y, reach } = place;
  const top = Math.min(glass.height, Math.max(water.level, widest.groundStart, widest.groundEnd) + 0.03);
  return addZone(content, {
    id: freshId(zones, 'island'),
    name: 'Island',
    kind: 'island',
    outline: writtenCorners(
      square(x, y, reach).map((corner) => ({ ...corner, ground: top })),
      write,
    ),
    layers: [{ kind: 'substrate', material: land.layers.at(-1)?.material ?? 'fine-gravel' }],
  });
}

/** Room in a cave that is drawn, and thickness of the slab over it [m]. */
const CAVE = { room: 0.06, slab: 0.02 } as const;

/** A level floor in the widest zone with a slab above it. */
export function newCave(shape: SoundShape, write: Write): EnclosureEdit[] {
  const { content } = shape;
  const { glass, zones } = content;
  const place = inTheWidest(shape);
  if (!place) return [];
  const { widest, x, y, reach } = place;
  const floor = Math.max(widest.groundStart, widest.groundEnd);
  const top = Math.min(glass.height, floor + CAVE.room + CAVE.slab);
  return addZone(content, {
    id: freshId(zones, 'cave'),
    name: 'Cave',
    kind: 'cave',
    outline: writtenCorners(square(x, y, reach), write),
    ground: { left: write(floor) },
    roof: { bottom: write(top - CAVE.slab), top: write(top) },
    layers: [
      {
        kind: 'substrate',
        material: zones.find(({ id }) => id === widest.id)?.layers.at(-1)?.material ?? 'fine-gravel',
      },
    ],
  });
}

/** Thickness of a wall that is built along the back, and how far it stays below the rim [m]. */
const WALL = { thick: 0.04, below: 0.05 } as const;

/** Foam along the back pane, from side to side. */
export function newWall({ content }: SoundShape, write: Write): EnclosureEdit[] {
  const { glass, zones } = content;
  const front = glass.width - Math.min(WALL.thick, glass.width / 4);
  return addZone(content, {
    id: freshId(zones, 'backdrop'),
    name: 'Backdrop',
    kind: 'wall',
    outline: writtenCorners(
      [
        { x: 0, y: front },
        { x: glass.length, y: front },
        { x: glass.length, y: glass.width },
        { x: 0, y: glass.width },
      ],
      write,
    ),
    ground: { left: write(Math.max(glass.height / 2, glass.height - WALL.below)) },
    layers: [{ kind: 'foam', material: 'expanding-foam' }],
  });
}

/** Half the width of a stream that is drawn, and how deep it is cut into the land [m]. */
const STREAM = { half: 0.03, deep: 0.01 } as const;

/** Land from pane to pane that falls along the box, through which a stream can run. */
export function stripOfLand({ zones }: ShapeContent): ShapeContent['zones'][number] | undefined {
  return zones.find(
    ({ kind, from, ground }) =>
      kind === 'bank' && from !== undefined && (ground?.left ?? ground?.right) !== undefined,
  );
}

/** A bed across the land, a little lower than it. */
export function newStream({ content }: SoundShape, write: Write): EnclosureEdit[] {
  const land = stripOfLand(content);
  if (land?.from === undefined || land.to === undefined) return [];
  const { from, to, ground } = land;
  const bed = (side: 'left' | 'right') =>
    Math.max(0, (ground?.[side] ?? ground?.left ?? ground?.right ?? 0) - STREAM.deep);
  const [front, back] = [content.glass.width / 2 - STREAM.half, content.glass.width / 2 + STREAM.half];
  return addZone(content, {
    id: freshId(content.zones, 'stream'),
    name: 'Stream',
    kind: 'stream',
    outline: writtenCorners(
      [
        { x: from, y: front, ground: bed('left') },
        { x: to, y: front, ground: bed('right') },
        { x: to, y: back, ground: bed('right') },
        { x: from, y: back, ground: bed('left') },
      ],
      write,
    ),
    layers: [{ kind: 'substrate', material: 'fine-gravel' }],
  });
}
