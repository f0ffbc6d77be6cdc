import { type Library, type Material, type MaterialUse, nearest } from '@shoreglass/library';
import type { KeyPath } from '../read/problem.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Blend } from '../schema/water.ts';
import type { Remark } from './finding.ts';

type Kind = 'material' | 'plant' | 'animal' | 'feed' | 'water' | 'zone';

/** Peat, moss and soil: layers that may lie loose in the water as well. */
const EXCHANGING = 'exchanging layer';

interface Reference {
  readonly kind: Kind;
  readonly id: string;
  readonly path: KeyPath;
  /** What a material may be used as here. */
  readonly uses?: readonly (MaterialUse | typeof EXCHANGING)[];
}

function blendReferences(blend: Blend, path: KeyPath): Reference[] {
  if (typeof blend === 'string') return [{ kind: 'water', id: blend, path }];
  return blend.map(({ water }, index) => ({ kind: 'water', id: water, path: [...path, index, 'water'] }));
}

function careReferences(content: EnclosureContent): Reference[] {
  const lists = [
    ['routines', content.routines ?? []],
    ['actions', content.actions ?? []],
  ] as const;
  return lists.flatMap(([name, items]) =>
    items.flatMap((item, index): Reference[] => {
      const at = (key: string): KeyPath => [name, index, key];
      switch (item.do) {
        case 'feed':
          return [{ kind: 'feed', id: item.feed, path: at('feed') }];
        case 'water-change':
          return [{ kind: 'water', id: item.water, path: at('water') }];
        case 'add-animals':
        case 'remove-animals':
          return [{ kind: 'animal', id: item.species, path: at('species') }];
        case 'add-carbonate':
          return [{ kind: 'material', id: item.material, path: at('material'), uses: ['carbonate'] }];
        case 'add-litter':
          return [{ kind: 'material', id: item.material, path: at('material'), uses: ['litter'] }];
        case 'trim':
          return item.zone === undefined ? [] : [{ kind: 'zone', id: item.zone, path: at('zone') }];
        default:
          return [];
      }
    }),
  );
}

/** Every name the file uses for something defined elsewhere. */
export function referencesOf(content: EnclosureContent): Reference[] {
  const { zones, water, devices, hardscape = [], plants = [], animals = [] } = content;
  return [
    ...zones.flatMap(({ layers }, zone) =>
      layers.map(
        ({ material }, layer): Reference => ({
          kind: 'material',
          id: material,
          path: ['zones', zone, 'layers', layer, 'material'],
          uses: ['layer', 'litter'],
        }),
      ),
    ),
    ...zones.flatMap(({ roof }, zone): Reference[] =>
      roof?.material === undefined
        ? []
        : [
            {
              kind: 'material',
              id: roof.material,
              path: ['zones', zone, 'roof', 'material'],
              uses: ['stone'],
            },
          ],
    ),
    ...blendReferences(water.fill, ['water', 'fill']),
    ...blendReferences(water['top-off'], ['water', 'top-off']),
    ...(devices?.mister?.water ? blendReferences(devices.mister.water, ['devices', 'mister', 'water']) : []),
    ...hardscape.map(
      ({ material }, index): Reference => ({
        kind: 'material',
        id: material,
        path: ['hardscape', index, 'material'],
        uses: ['wood', 'stone', 'carbonate', 'litter', EXCHANGING],
      }),
    ),
    ...plants.flatMap(({ plant, zone }, index): Reference[] => [
      { kind: 'plant', id: plant, path: ['plants', index, 'plant'] },
      { kind: 'zone', id: zone, path: ['plants', index, 'zone'] },
    ]),
    ...animals.flatMap(({ species, zone }, index): Reference[] => [
      { kind: 'animal', id: species, path: ['animals', index, 'species'] },
      { kind: 'zone', id: zone, path: ['animals', index, 'zone'] },
    ]),
    ...careReferences(content),
  ];
}

function knownNames(content: EnclosureContent, { data }: Library): Readonly<Record<Kind, readonly string[]>> {
  return {
    material: Object.keys(data.materials),
    plant: Object.keys(data.plants),
    animal: Object.keys(data.organisms),
    feed: Object.keys(data.feeds),
    water: [...(content.waters ?? []).map(({ id }) => id), ...Object.keys(data.waters)],
    zone: content.zones.map(({ id }) => id),
  };
}

/** Names that lead nowhere, and materials used for what they are not. */
export function referenceRemarks(content: EnclosureContent, library: Library): Remark[] {
  const known = knownNames(content, library);
  return referencesOf(content).flatMap(({ kind, id, path, uses }): Remark[] => {
    if (!known[kind].includes(id)) {
      const near = nearest(id, known[kind]);
      const all = known[kind].slice(0, 12).join(', ');
      return [
        {
          severity: 'blocking',
          path,
          message:
            kind === 'zone'
              ? `there is no zone '${id}' in this file`
              : `the library holds no ${kind} '${id}'`,
          mend: near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `Known: ${all}.`,
        },
      ];
    }
    if (!uses) return [];
    const { use, name } = library.material(id);
    const fits = (each: Material): boolean =>
      uses.includes(each.use) ||
      (uses.includes(EXCHANGING) && each.use === 'layer' && each.exchange !== undefined);
    if (fits(library.material(id))) return [];
    const fitting = known.material.filter((each) => fits(library.material(each)));
    return [
      {
        severity: 'blocking',
        path,
        message: `${name} is ${use === 'layer' ? 'a material for layers' : use === 'build' ? 'for building the box' : use} and cannot be used here`,
        mend: `Use one of ${fitting.slice(0, 12).join(', ')}.`,
      },
    ];
  });
}

const OWN_NAME = 'Give each its own name, or join the two.';

function repeated(
  names: readonly string[],
  path: (index: number) => KeyPath,
  { what, mend = OWN_NAME }: { readonly what: string; readonly mend?: string },
): Remark[] {
  return names.flatMap((name, index): Remark[] =>
    names.indexOf(name) < index
      ? [
          {
            severity: 'blocking',
            path: path(index),
            message: `${what} '${name}' is there twice`,
            mend,
          },
        ]
      : [],
  );
}

/** Names that should be given once. */
export function repeatedRemarks({
  zones,
  waters = [],
  hardscape = [],
  animals = [],
}: EnclosureContent): Remark[] {
  const ids = (items: readonly { readonly id: string }[]) => items.map(({ id }) => id);
  return [
    ...repeated(ids(zones), (index) => ['zones', index, 'id'], { what: 'the zone' }),
    ...repeated(ids(waters), (index) => ['waters', index, 'id'], { what: 'the water' }),
    ...repeated(ids(hardscape), (index) => ['hardscape', index, 'id'], { what: 'the piece' }),
    ...repeated(
      animals.map(({ species }) => species),
      (index) => ['animals', index, 'species'],
      {
        what: 'the species',
        mend: 'Join the two: all animals of a species stand in one entry, with one zone.',
      },
    ),
  ];
}

/**
 * Animals added or removed later must have an entry of their own, so that their zone and name are known; what repeats must
 * not end before it begins.
 */
export function careRemarks({ animals = [], routines = [], actions = [] }: EnclosureContent): Remark[] {
  const listed = new Set(animals.map(({ species }) => species));
  const lists = [
    ['routines', routines],
    ['actions', actions],
  ] as const;
  const unknown = lists.flatMap(([list, items]) =>
    items.flatMap((care, index): Remark[] =>
      'species' in care && !listed.has(care.species)
        ? [
            {
              severity: 'blocking',
              path: [list, index, 'species'],
              message: `${care.species} is not listed under animals`,
              mend: 'List it there with its zone; adults and juveniles may be left out when all come later.',
            },
          ]
        : [],
    ),
  );
  const never = routines.flatMap(({ after = 0, until = after }, index): Remark[] =>
    until < after
      ? [
          {
            severity: 'blocking',
            path: ['routines', index, 'until'],
            message: `until (${until} d) is before after (${after} d), so that this is never done`,
            mend: 'Give a later day, or leave until out to go on to the end.',
          },
        ]
      : [],
  );
  return [...unknown, ...never];
}
