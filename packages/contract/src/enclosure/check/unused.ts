import type { Library } from '@shoreglass/library';
import type { KeyPath } from '../read/problem.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Remark } from './finding.ts';
import { referencesOf } from './references.ts';

const note = (path: KeyPath, message: string, mend: string): Remark => ({
  severity: 'note',
  path,
  message,
  mend,
});

interface Counted {
  readonly adults?: number | undefined;
  readonly juveniles?: number | undefined;
}

const isNobody = ({ adults = 0, juveniles = 0 }: Counted): boolean => adults + juveniles === 0;

function unusedWaters(content: EnclosureContent): Remark[] {
  const used = new Set(referencesOf(content).flatMap(({ kind, id }) => (kind === 'water' ? [id] : [])));
  return (content.waters ?? []).flatMap(({ id, name = id }, index) =>
    used.has(id)
      ? []
      : [
          note(
            ['waters', index, 'id'],
            `the water ${name} is described and used nowhere`,
            `Name it by its id ${id} under water.fill, water.top-off, a mister or a water-change, or take it out.`,
          ),
        ],
  );
}

/** Animals of whom none is there and none comes. */
function missingAnimals({ animals = [], actions = [] }: EnclosureContent, library: Library): Remark[] {
  const coming = new Set(
    actions.flatMap((care) => (care.do === 'add-animals' && !isNobody(care) ? [care.species] : [])),
  );
  return animals.flatMap((one, index) =>
    !isNobody(one) || coming.has(one.species)
      ? []
      : [
          note(
            ['animals', index, 'species'],
            `${one.name ?? library.data.organisms[one.species]?.name ?? one.species} are listed, and none is there or ever comes`,
            'Give adults or juveniles, add them by an action (do: add-animals), or take the entry out.',
          ),
        ],
  );
}

/** Care that touches nobody. */
function idleCare({ routines = [], actions = [] }: EnclosureContent): Remark[] {
  const lists = [
    ['routines', routines],
    ['actions', actions],
  ] as const;
  return lists.flatMap(([list, items]) =>
    items.flatMap((care, index) =>
      (care.do === 'add-animals' || care.do === 'remove-animals') && isNobody(care)
        ? [
            note(
              [list, index, 'do'],
              `${care.do} of ${care.species} names no adults and no juveniles, so that nothing is done`,
              'Give adults: 10 or juveniles: 10, or take it out.',
            ),
          ]
        : [],
    ),
  );
}

function barePlantings({ plants = [] }: EnclosureContent, library: Library): Remark[] {
  return plants.flatMap(({ plant, name, cover }, index) =>
    cover > 0
      ? []
      : [
          note(
            ['plants', index, 'cover'],
            `${name ?? library.data.plants[plant]?.name ?? plant} covers 0 % of its ground: none is planted`,
            'Give the part of the ground it covers at the start, such as 10 %, or take it out.',
          ),
        ],
  );
}

/** What a file describes and never uses: waters, animals, plantings, and care that does nothing. */
export function unusedRemarks(content: EnclosureContent, library: Library): Remark[] {
  return [
    ...unusedWaters(content),
    ...missingAnimals(content, library),
    ...idleCare(content),
    ...barePlantings(content, library),
  ];
}
