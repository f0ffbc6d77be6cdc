import type { EditValue } from '@shoreglass/contract';
import type { SoundLife } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';

/** Animals of one entry as they are written; empty words leave a key out. */
export interface AnimalRow {
  /** Position in the file's list; none for a newcomer. */
  readonly at?: number;
  readonly species: string;
  readonly name: string;
  readonly zone: string;
  readonly adults: string;
  readonly juveniles: string;
  /** Days after the start. */
  readonly after: string;
  /** That they come along with plants by accident [%]; surely there when empty. */
  readonly chance: string;
}

export interface PlantRow {
  readonly at?: number;
  readonly plant: string;
  readonly name: string;
  readonly zone: string;
  /** Of the ground of its zone, or of the pool [%]. */
  readonly cover: string;
  readonly fragments: boolean;
  /** That it comes along by accident [%]; surely there when empty. */
  readonly chance: string;
}

/** Who is to live here, as it stands on the sheet. */
export interface Draft {
  readonly animals: readonly AnimalRow[];
  readonly plants: readonly PlantRow[];
}

/** Names of species as the library gives them. */
export type NameOf = (list: 'animals' | 'plants', id: string) => string;

const written = (value: number | undefined): string => (value === undefined ? '' : String(value));
/** Shares are written with at most one digit: 12.5. */
const percentOf = (share: number): string => String(Number((share * 100).toFixed(1)));

/** What the file says, as a draft without changes. */
export function draftOf({ animals, plants }: SoundLife, nameOf: NameOf): Draft {
  return {
    animals: animals.map(({ species, name, zone, adults, juveniles, after, chance }, at) => ({
      at,
      species,
      name: name ?? nameOf('animals', species),
      zone,
      adults: written(adults),
      juveniles: written(juveniles),
      after: written(after),
      chance: chance === undefined ? '' : percentOf(chance),
    })),
    plants: plants.map(({ plant, name, zone, cover, start, chance }, at) => ({
      at,
      plant,
      name: name ?? nameOf('plants', plant),
      zone,
      cover: percentOf(cover),
      fragments: start === 'fragments',
      chance: chance === undefined ? '' : percentOf(chance),
    })),
  };
}

/** What of a draft cannot be written yet; undefined where all can. */
export function draftProblem({ animals, plants }: Draft): string | undefined {
  for (const { name, adults, juveniles, after } of animals) {
    for (const [what, text] of [
      ['adults', adults],
      ['young', juveniles],
    ] as const)
      if (text !== '' && !/^\d{1,4}$/.test(text.trim()))
        return `${name}: ${what} must be a whole number from 0 to 9999, not "${text}".`;
    if (Number(adults || 0) + Number(juveniles || 0) < 1)
      return `${name}: say how many come, adults or young; or take them out.`;
    if (after !== '' && !/^\d{1,4}(\.\d+)?$/.test(after.trim()))
      return `${name}: the day they come must be a number of days, not "${after}".`;
  }
  for (const { name, cover } of plants)
    if (!/^\d{1,3}(\.\d+)?$/.test(cover.trim()) || Number(cover) > 100)
      return `${name}: cover must be a number from 0 to 100 %, not "${cover}".`;
  for (const { name, chance } of [...animals, ...plants])
    if (chance !== '' && !(/^\d{1,3}(\.\d+)?$/.test(chance.trim()) && Number(chance) <= 100))
      return `${name}: the chance must be a number from 0 to 100 %, not "${chance}".`;
  return undefined;
}

const counted = (text: string): number | undefined => (text.trim() === '' ? undefined : Number(text));
const shareText = (text: string): string | undefined =>
  text.trim() === '' ? undefined : `${Number(text)} %`;
const daysText = (text: string): string | undefined =>
  text.trim() === '' || Number(text) === 0 ? undefined : `${Number(text)} d`;

function given(entries: Readonly<Record<string, EditValue | undefined>>): EditValue {
  return Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as EditValue;
}

const animalEntry = ({ species, zone, adults, juveniles, after, chance }: AnimalRow): EditValue =>
  given({
    species,
    zone,
    adults: counted(adults),
    juveniles: counted(juveniles),
    after: daysText(after),
    chance: shareText(chance),
  });

const plantEntry = ({ plant, zone, cover, fragments, chance }: PlantRow): EditValue =>
  given({
    plant,
    zone,
    cover: `${Number(cover)} %`,
    start: fragments ? 'fragments' : undefined,
    chance: shareText(chance),
  });

interface Listed<Row> {
  readonly list: 'animals' | 'plants';
  readonly before: readonly Row[];
  readonly rows: readonly Row[];
  readonly changed: (before: Row, row: Row) => readonly { key: string; value: EditValue | undefined }[];
  readonly entry: (row: Row) => EditValue;
}

/** Values that changed, then newcomers at the end, then, from the last, who is taken out. */
function listEdits<Row extends { readonly at?: number }>(listed: Listed<Row>): Edit[] {
  const { list, before, rows, changed, entry } = listed;
  const kept = rows.flatMap((row) => (row.at === undefined ? [] : [{ row, at: row.at }]));
  const added = rows.filter(({ at }) => at === undefined);
  const changes = kept.flatMap(({ row, at }) =>
    changed(before[at] as Row, row).map(({ key, value }) => ({ path: [list, at, key], value })),
  );
  const additions =
    before.length === 0 && added.length > 0
      ? [{ path: [list], value: added.map(entry) as unknown as EditValue }]
      : added.map((row, more) => ({ path: [list, before.length + more], value: entry(row) }));
  const gone = before.flatMap((_, at) => (kept.some((each) => each.at === at) ? [] : [at])).reverse();
  const empties = gone.length > 0 && gone.length === before.length && added.length === 0;
  const removals = empties
    ? [{ path: [list], value: undefined }]
    : gone.map((at) => ({ path: [list, at], value: undefined }));
  return [...changes, ...additions, ...removals];
}

/** The changes of the file that make it say what the draft says, in the order in which they are to be made. */
export function draftEdits(before: Draft, draft: Draft): Edit[] {
  const differ = <Row>(a: Row, b: Row, key: keyof Row) => a[key] !== b[key];
  return [
    ...listEdits<AnimalRow>({
      list: 'animals',
      before: before.animals,
      rows: draft.animals,
      entry: animalEntry,
      changed: (was, row) => [
        ...(differ(was, row, 'zone') ? [{ key: 'zone', value: row.zone }] : []),
        ...(differ(was, row, 'adults') ? [{ key: 'adults', value: counted(row.adults) }] : []),
        ...(differ(was, row, 'juveniles') ? [{ key: 'juveniles', value: counted(row.juveniles) }] : []),
        ...(differ(was, row, 'after') ? [{ key: 'after', value: daysText(row.after) }] : []),
        ...(differ(was, row, 'chance') ? [{ key: 'chance', value: shareText(row.chance) }] : []),
      ],
    }),
    ...listEdits<PlantRow>({
      list: 'plants',
      before: before.plants,
      rows: draft.plants,
      entry: plantEntry,
      changed: (was, row) => [
        ...(differ(was, row, 'zone') ? [{ key: 'zone', value: row.zone }] : []),
        ...(differ(was, row, 'cover') ? [{ key: 'cover', value: `${Number(row.cover)} %` }] : []),
        ...(differ(was, row, 'fragments')
          ? [{ key: 'start', value: row.fragments ? 'fragments' : undefined }]
          : []),
        ...(differ(was, row, 'chance') ? [{ key: 'chance', value: shareText(row.chance) }] : []),
      ],
    }),
  ];
}

const listedNames = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;

/** What the draft changes, as a sentence. */
export function draftWords(before: Draft, draft: Draft): string {
  const rows = [...draft.animals, ...draft.plants];
  const old = [...before.animals, ...before.plants];
  const added = rows.filter(({ at }) => at === undefined).map(({ name }) => name);
  const alike = (one: object, other: object) => JSON.stringify(one) === JSON.stringify(other);
  const left = old.filter((was) => !rows.some((row) => alike(was, row)));
  const changed = rows
    .filter((row) => row.at !== undefined && left.some((was) => same(was, row)))
    .map(({ name }) => name);
  const gone = left.filter((was) => !rows.some((row) => same(was, row))).map(({ name }) => name);
  const parts = [
    added.length > 0 ? `${listedNames(added)} added` : '',
    changed.length > 0 ? `${listedNames(changed)} changed` : '',
    gone.length > 0 ? `${listedNames(gone)} taken out` : '',
  ].filter((part) => part !== '');
  const sentence = parts.join('; ');
  return sentence === '' ? '' : `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}

function same(was: AnimalRow | PlantRow, row: AnimalRow | PlantRow): boolean {
  return was.at !== undefined && was.at === row.at && 'species' in was === 'species' in row;
}
