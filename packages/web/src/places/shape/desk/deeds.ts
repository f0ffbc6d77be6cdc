import type { EnclosureEdit } from '@shoreglass/contract';
import type { LengthUnit } from '@shoreglass/figures';
import type { SoundShape } from '../../../worker/shape-orders.ts';
import type { Handle, ShapeContent, Write } from '../handles/handle.ts';
import type { PartDeed } from './hand-panel.tsx';
import { writeIn } from './moves.ts';
import { added, lampPanel, NEW_PARTS, type NewPart, pathOfPart } from './new-parts.ts';
import { freshId, newCave, newIsland, newStream, newWall, stripOfLand } from './new-zones.ts';
import type { Command } from './shape-desk-store.ts';

type Edits = (shape: SoundShape, write: Write) => readonly EnclosureEdit[];

/** What can be done with a part besides changing its measures. */
export function deedsFor(handle: Handle | undefined, content: ShapeContent, unit: LengthUnit): PartDeed[] {
  const write = writeIn(unit);
  const deed: Deed = (words, edits, more = {}) => {
    const command: Command = {
      words,
      ...(handle ? { about: handle.id } : {}),
      edits: (shape) => edits(shape, write),
    };
    return { words, command, ...more };
  };
  if (!handle)
    return [
      deed('Draw an island', newIsland),
      deed('Draw a cave', newCave),
      ...(stripOfLand(content) ? [deed('Draw a stream', newStream)] : []),
      deed('Build a wall along the back', newWall),
      deed('Add a stone', addStone),
      deed('Add a branch', addBranch),
      ...lampDeeds(content, deed),
      ...NEW_PARTS.flatMap((part) => newPartDeeds(part, content, deed)),
    ];
  return [...placedDeeds(handle, content, deed), ...optionDeeds(handle, deed)];
}

function newPartDeeds(part: NewPart, content: ShapeContent, deed: Deed): PartDeed[] {
  const how = added(part, content);
  if (!how) return [];
  const edits: Edits = (shape, write) => how.edits(shape.content, write);
  return [
    deed(`Add: ${part.name.toLowerCase()}`, edits, {
      list: 'Add equipment or an opening',
      short: part.name,
      takesUp: how.handle,
    }),
  ];
}

/** Keys a part can be given, and those it can do without. */
function optionDeeds({ name, more = [], less = [] }: Handle, deed: Deed): PartDeed[] {
  return [
    ...more.map((option) =>
      deed(`${name}, give it: ${option.name.toLowerCase()}`, () => [option.edit], {
        list: 'Give it also',
        short: option.name,
      }),
    ),
    ...less.map((option) =>
      deed(`${name}, without: ${option.name.toLowerCase()}`, () => [option.edit], {
        list: 'Leave out',
        short: option.name,
      }),
    ),
  ];
}

function placedDeeds(handle: Handle, content: ShapeContent, deed: Deed): PartDeed[] {
  const [kind, id = '', place = ''] = handle.id.split(':');
  if (kind === 'ground') return stripDeeds(id, content, deed);
  if (kind === 'layer') return layerDeeds(id, Number(place), content, deed);
  if (kind === 'corner') return cornerDeeds(id, Number(place), content, deed);
  if (kind === 'zone') return zoneDeeds(id, content, deed);
  if (kind === 'point') return pointDeeds(id, Number(place), content, deed);
  if (kind === 'piece') return [deed(`Take ${handle.name} away`, (shape) => withoutPiece(shape, id))];
  const path = pathOfPart(handle, content);
  return path ? [deed(`Take ${handle.name} away`, () => [{ path, value: undefined }])] : [];
}

type Deed = (words: string, edits: Edits, more?: Omit<PartDeed, 'words' | 'command'>) => PartDeed;

function stripDeeds(id: string, content: ShapeContent, deed: Deed): PartDeed[] {
  const zone = content.zones.find((each) => each.id === id);
  if (!zone) return [];
  const name = zone.name ?? zone.id;
  return [
    deed(`Split ${name} in two`, (shape, write) => splitZone(shape, id, write)),
    ...(content.zones.length > 1
      ? [deed(`Take ${name} away`, (shape, write) => withoutZone(shape, id, write))]
      : []),
  ];
}

function zoneDeeds(id: string, content: ShapeContent, deed: Deed): PartDeed[] {
  const zone = content.zones.find((each) => each.id === id);
  if (!zone?.outline) return stripDeeds(id, content, deed);
  return [deed(`Take ${zone.name ?? zone.id} away`, (shape, write) => withoutZone(shape, id, write))];
}

/** What a layer that is put in is made of at first, and how thick it is [m]. */
const FRESH_LAYER = { kind: 'drainage', material: 'expanded-clay', thickness: 0.02 } as const;

function layerDeeds(id: string, position: number, content: ShapeContent, deed: Deed): PartDeed[] {
  const index = content.zones.findIndex((zone) => zone.id === id);
  const count = content.zones[index]?.layers.length ?? 0;
  const rewritten = (change: (all: Layers) => Layers): Edits => {
    return (shape, write) => {
      const layers = shape.content.zones[index]?.layers ?? [];
      return [{ path: ['zones', index, 'layers'], value: layersWritten(change(layers), write) }];
    };
  };
  const under = (all: Layers) => [...all.slice(0, position), FRESH_LAYER, ...all.slice(position)];
  return [
    deed('Put a layer under it', rewritten(under)),
    ...(count > 1
      ? [
          deed('Take this layer away', () => [
            { path: ['zones', index, 'layers', position], value: undefined },
          ]),
        ]
      : []),
  ];
}

type Layers = ShapeContent['zones'][number]['layers'];

function layersWritten(layers: Layers, write: Write) {
  return layers.map(({ kind, material, name, thickness }) => ({
    kind,
    material,
    ...(name === undefined ? {} : { name }),
    ...(thickness === undefined ? {} : { thickness: write(thickness) }),
  }));
}

/** The right half becomes a zone of its own, with the same layers; the ground stays as it is. */
function splitZone({ content, plan }: SoundShape, id: string, write: Write): EnclosureEdit[] {
  const index = content.zones.findIndex((zone) => zone.id === id);
  const [zone, drawn] = [content.zones[index], plan.zones[index]];
  if (zone?.from === undefined || zone.to === undefined || !drawn) return [];
  const x = Math.round(((zone.from + zone.to) / 2) * 200) / 200;
  const share = (x - zone.from) / (zone.to - zone.from);
  const middle = drawn.groundStart + share * (drawn.groundEnd - drawn.groundStart);
  const across = zone.ground?.front !== undefined || zone.ground?.back !== undefined;
  const ground = across
    ? {
        front: write(zone.ground?.front ?? zone.ground?.back ?? 0),
        back: write(zone.ground?.back ?? zone.ground?.front ?? 0),
      }
    : { left: write(middle), right: write(drawn.groundEnd) };
  const fresh = {
    id: freshId(content.zones, `${id}-right`),
    name: `${zone.name ?? zone.id}, right`,
    kind: zone.kind,
    from: write(x),
    to: write(zone.to),
    ground,
    layers: layersWritten(zone.layers, write),
  };
  return [
    { path: ['zones', index, 'to'], value: write(x) },
    ...(across ? [] : [{ path: ['zones', index, 'ground', 'right'], value: write(middle) }]),
    { path: ['zones', content.zones.length], value: fresh },
  ];
}

/** The neighbour on the left, or else on the right, takes the room of a strip; under an outline lies ground already. */
function withoutZone({ content }: SoundShape, id: string, write: Write): EnclosureEdit[] {
  const index = content.zones.findIndex((zone) => zone.id === id);
  const gone = content.zones[index];
  if (!gone) return [];
  const near = (a: number | undefined, b: number | undefined) =>
    a !== undefined && b !== undefined && Math.abs(a - b) < 5e-4;
  const left = content.zones.findIndex((zone) => near(zone.to, gone.from));
  const right = content.zones.findIndex((zone) => near(zone.from, gone.to));
  const grown: EnclosureEdit[] =
    gone.outline || (left < 0 && right < 0)
      ? []
      : left >= 0
        ? [{ path: ['zones', left, 'to'], value: write(gone.to ?? 0) }]
        : [{ path: ['zones', right, 'from'], value: write(gone.from ?? 0) }];
  return [...grown, { path: ['zones', index], value: undefined }];
}

function cornerDeeds(id: string, corner: number, content: ShapeContent, deed: Deed): PartDeed[] {
  const index = content.zones.findIndex((zone) => zone.id === id);
  const corners = content.zones[index]?.outline ?? [];
  const rewritten = (change: (all: typeof corners) => typeof corners): Edits => {
    return (shape, write) => {
      const now = shape.content.zones[index]?.outline ?? [];
      const value = change(now).map(({ x, y, ground }) => ({
        x: write(x),
        y: write(y),
        ...(ground === undefined ? {} : { ground: write(ground) }),
      }));
      return [{ path: ['zones', index, 'outline'], value }];
    };
  };
  return [
    deed(
      'Add a corner after this',
      rewritten((all) => withBetween(all, corner, true)),
    ),
    ...(corners.length > 3
      ? [
          deed('Take this corner away', () => [
            { path: ['zones', index, 'outline', corner], value: undefined },
          ]),
        ]
      : []),
  ];
}

/** The list with the mean of an item and the next one put between them. */
function withBetween<T extends object>(all: readonly T[], at: number, around: boolean): T[] {
  const from = all[at];
  const to = all[at + 1] ?? (around ? all[0] : undefined);
  const other = to ?? all[at - 1];
  if (!from || !other) return [...all];
  const mean = Object.fromEntries(
    Object.entries(from).map(([key, value]) => {
      const beside = (other as Record<string, unknown>)[key];
      if (typeof value !== 'number' || typeof beside !== 'number') return [key, value];
      // Past the last point the course goes on as it came.
      return [key, to ? (value + beside) / 2 : key === 'thick' ? value : value + (value - beside) / 2];
    }),
  ) as T;
  return [...all.slice(0, at + 1), mean, ...all.slice(at + 1)];
}

function pointDeeds(id: string, point: number, content: ShapeContent, deed: Deed): PartDeed[] {
  const index = (content.hardscape ?? []).findIndex((piece) => piece.id === id);
  const course = content.hardscape?.[index]?.course ?? [];
  type Course = typeof course;
  const rewritten = (change: (all: Course) => Course): Edits => {
    return (shape, write) => {
      const now = shape.content.hardscape?.[index]?.course ?? [];
      const { glass } = shape.content;
      const value = change(now).map(({ x, y, z, thick }) => ({
        x: write(Math.min(glass.length, Math.max(0, x))),
        ...(y === undefined ? {} : { y: write(y) }),
        z: write(Math.min(glass.height, Math.max(0, z))),
        thick: write(thick),
      }));
      return [{ path: ['hardscape', index, 'course'], value }];
    };
  };
  return [
    deed(
      'Add a point after this',
      rewritten((all) => withBetween(all, point, false)),
    ),
    ...(course.length > 1
      ? [
          deed('Take this point away', () => [
            { path: ['hardscape', index, 'course', point], value: undefined },
          ]),
        ]
      : []),
  ];
}

function withoutPiece({ content }: SoundShape, id: string): EnclosureEdit[] {
  const pieces = content.hardscape ?? [];
  const index = pieces.findIndex((piece) => piece.id === id);
  if (index < 0) return [];
  return [{ path: pieces.length === 1 ? ['hardscape'] : ['hardscape', index], value: undefined }];
}

function addPiece({ content }: SoundShape, piece: Readonly<Record<string, unknown>>): EnclosureEdit[] {
  const { hardscape } = content;
  return hardscape
    ? [{ path: ['hardscape', hardscape.length], value: piece }]
    : [{ path: ['hardscape'], value: [piece] }];
}

function addStone(shape: SoundShape, write: Write): readonly EnclosureEdit[] {
  const { content, plan } = shape;
  const wet = plan.zones.find(({ kind }) => kind === 'pool') ?? plan.zones[0];
  const x = wet ? (wet.from + wet.to) / 2 : content.glass.length / 2;
  const floor = wet ? (wet.groundStart + wet.groundEnd) / 2 : 0;
  return addPiece(shape, {
    id: freshId(content.hardscape ?? [], 'stone'),
    name: 'Stone',
    material: 'slate',
    mass: write(0.8, 'mass'),
    course: [{ x: write(x), z: write(floor + 0.03), thick: write(0.06) }],
  });
}

function addBranch(shape: SoundShape, write: Write): readonly EnclosureEdit[] {
  const { content, plan } = shape;
  const { length, height } = content.glass;
  const ground = Math.max(
    ...plan.zones.map(({ groundStart, groundEnd }) => Math.max(groundStart, groundEnd)),
  );
  const z = Math.min(height * 0.8, ground + 0.03);
  return addPiece(shape, {
    id: freshId(content.hardscape ?? [], 'branch'),
    name: 'Branch',
    material: 'alder-wood',
    mass: write(0.3, 'mass'),
    course: [
      { x: write(length * 0.35), z: write(z), thick: write(0.03) },
      { x: write(length * 0.65), z: write(Math.min(height * 0.95, z + 0.08)), thick: write(0.02) },
    ],
  });
}

/** A lamp that hangs over the whole cover is given a place, to be moved from there. */
function lampDeeds({ devices, glass }: ShapeContent, deed: Deed): PartDeed[] {
  return (devices?.lamps ?? []).flatMap(({ name, panel }, index) => {
    if (panel) return [];
    return [
      deed(`Hang up ${name ?? 'the lamp'}`, (_, write) => [
        { path: ['devices', 'lamps', index, 'panel'], value: lampPanel(glass, write) },
      ]),
    ];
  });
}
