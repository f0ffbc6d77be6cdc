import type { LibraryData } from '../schema/entries.ts';
import type { Known, Quantity, Risk } from '../schema/quantity.ts';
import { TITLES, wordsOf } from './labels.ts';

/** Lists of the library that have a page for each entry. */
export const PAGE_KINDS = ['organisms', 'plants', 'feeds', 'materials', 'salts', 'waters'] as const;
export type PageKind = (typeof PAGE_KINDS)[number];

export const KIND_NAMES: Readonly<Record<PageKind, string>> = {
  organisms: 'Animals',
  plants: 'Plants',
  feeds: 'Feeds',
  materials: 'Materials',
  salts: 'Salts',
  waters: 'Waters',
};

/** One value of an entry with where it comes from. */
export interface PageValue {
  readonly label: string;
  /** '12.5 mm' */
  readonly text: string;
  /** '11 to 14.5 mm', where a plausible range is given. */
  readonly range?: string;
  readonly basis: Quantity['basis'];
  readonly source: string;
  readonly note?: string;
}

/** What a species stands: where it is fine, and what it survives. */
export interface PageRange {
  readonly label: string;
  readonly unit: string;
  readonly fine?: Bounds;
  readonly survives?: Bounds;
  readonly sources: readonly PageValue[];
}

interface Bounds {
  readonly low?: number;
  readonly high?: number;
}

export interface PageSection {
  readonly title: string;
  readonly values: readonly PageValue[];
}

/** A page of the library: what an entry is, what it needs, every value with its source. */
export interface EntryPage {
  readonly kind: PageKind;
  readonly id: string;
  readonly name: string;
  readonly scientificName?: string;
  /** 'land crab, amphibious' */
  readonly group: string;
  readonly about?: string;
  readonly known?: Known;
  /** Sentences on how it breeds and moves, for animals. */
  readonly ways: readonly string[];
  readonly ranges: readonly PageRange[];
  readonly sections: readonly PageSection[];
  readonly cautions: readonly string[];
  readonly risks: readonly Risk[];
  /** On which of law, welfare, poison and illness nothing is stated, for what lives. */
  readonly unsaid?: string;
  /** Values by basis, most first: 'published' 12. */
  readonly bases: readonly { readonly basis: Quantity['basis']; readonly count: number }[];
}

type Tree = { readonly [key: string]: unknown };

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isQuantity = (value: unknown): value is Quantity =>
  isTree(value) && typeof value.value === 'number' && typeof value.basis === 'string';

/** A number as people write it: four figures, no zeros behind. */
export function figuresOf(value: number): string {
  if (value !== 0 && Math.abs(value) < 1e-3) return value.toExponential(1);
  return String(Number(value.toPrecision(4)));
}

const unitOf = (unit: string): string => (unit === '1' || unit === 'pH' ? '' : ` ${unit}`);

function pageValue(label: string, quantity: Quantity): PageValue {
  const { value, unit, min, max, basis, source, note } = quantity;
  const [low, high] = [min, max].map((bound) => (bound === undefined ? undefined : figuresOf(bound)));
  const range = low && high ? `${low} to ${high}` : low ? `from ${low}` : high ? `up to ${high}` : undefined;
  return {
    label,
    text: `${figuresOf(value)}${unitOf(unit)}`,
    ...(range ? { range: `${range}${unitOf(unit)}` } : {}),
    basis,
    source,
    ...(note ? { note } : {}),
  };
}

/** Groups whose values are parts of a whole, shown in per cent. */
const PARTS: readonly string[] = ['diet', 'place', 'kinds'];

/** Every quantity below a part of a file, in the order of the file. */
function quantitiesIn(part: unknown, path: readonly string[]): PageValue[] {
  const group = path.at(-2) ?? '';
  if (isQuantity(part)) {
    const words = path.slice(1).map((key, depth) => wordsOf(key, path[depth]));
    const shown = PARTS.includes(group) && part.unit === '1' ? inPerCent(part) : part;
    return [pageValue(words.join(': '), shown)];
  }
  if (!isTree(part)) return [];
  return Object.entries(part).flatMap(([key, inner]) => quantitiesIn(inner, [...path, key]));
}

const inPerCent = (quantity: Quantity): Quantity => ({ ...quantity, value: 100 * quantity.value, unit: '%' });

const NO_SECTION = new Set(['tolerances', 'survives', 'risks', 'known', 'ways']);

function sectionsOf(entry: Tree): PageSection[] {
  const single = Object.entries(entry).flatMap(([key, part]) =>
    isQuantity(part) ? [pageValue(wordsOf(key), part)] : [],
  );
  const grouped = Object.entries(entry).flatMap(([key, part]): PageSection[] => {
    if (NO_SECTION.has(key) || isQuantity(part) || !isTree(part)) return [];
    const values = quantitiesIn(part, [key]);
    return values.length > 0 ? [{ title: TITLES[key] ?? wordsOf(key), values }] : [];
  });
  return single.length > 0 ? [...grouped, { title: TITLES.values ?? 'Values', values: single }] : grouped;
}

type Spans = Readonly<
  Record<string, { low?: Quantity | undefined; high?: Quantity | undefined } | undefined>
>;

function boundsOf(span: Spans[string]): Bounds | undefined {
  if (!span) return undefined;
  const { low, high } = span;
  return { ...(low ? { low: low.value } : {}), ...(high ? { high: high.value } : {}) };
}

function rangesOf(fineSpans: Spans = {}, survivedSpans: Spans = {}): PageRange[] {
  const names = [...new Set([...Object.keys(fineSpans), ...Object.keys(survivedSpans)])];
  return names.flatMap((name): PageRange[] => {
    const fine = boundsOf(fineSpans[name]);
    const survives = boundsOf(survivedSpans[name]);
    const label = wordsOf(name);
    const parts = [
      ['fine from', fineSpans[name]?.low],
      ['fine up to', fineSpans[name]?.high],
      ['survives from', survivedSpans[name]?.low],
      ['survives up to', survivedSpans[name]?.high],
    ] as const;
    const given = parts.flatMap(([word, quantity]) =>
      quantity ? [{ word, quantity, value: pageValue(`${label}: ${word}`, quantity) }] : [],
    );
    const [first] = given;
    if (!first) return [];
    return [
      {
        label,
        unit: unitOf(first.quantity.unit).trim(),
        ...(fine ? { fine } : {}),
        ...(survives ? { survives } : {}),
        sources: given.map(({ value }) => value),
      },
    ];
  });
}

const MATING_WORDS = {
  'two sexes': 'Needs both sexes to breed.',
  'self-fertile': 'Breeds without a mate of the other sex.',
  division: 'Multiplies by division or buds.',
} as const;
const BROOD_WORDS = { carried: 'Carries its eggs.', laid: 'Lays its eggs.' } as const;
const DEVELOPMENT_WORDS = {
  direct: 'Young are like their parents.',
  'water larvae': 'Its larvae live in water and change.',
  pupa: 'Its larvae rest as pupae and become insects that do not eat.',
  'brackish larvae': 'Its larvae need salt water: in fresh water its number never grows.',
} as const;
const ACTIVE_WORDS = {
  day: 'Awake by day.',
  night: 'Awake at night.',
  twilight: 'Most awake at dusk and dawn.',
  always: 'Eats at all hours.',
} as const;
const OWN_KIND_WORDS = {
  never: '',
  'when hungry': 'Eats its own kind when hungry.',
  often: 'Eats its own kind.',
} as const;

function waysOf(animal: LibraryData['organisms'][string]): string[] {
  const { ways = {}, mating, brood, development = 'direct' } = animal;
  const sentences = [
    MATING_WORDS[mating],
    mating === 'division' ? '' : BROOD_WORDS[brood],
    mating === 'division' ? '' : DEVELOPMENT_WORDS[development],
    animal.active ? ACTIVE_WORDS[animal.active.when] : '',
    ways.climbsGlass ? 'Climbs glass.' : '',
    ways.jumps ? 'Jumps.' : '',
    ways.flies ? 'Flies.' : '',
    ways.needsTightLid ? 'Needs a tight lid.' : '',
    ways.needsWayOut ? 'Must find a way out of the water.' : '',
    ways.moults ? 'Moults.' : '',
    animal.shellMineral === 'aragonite'
      ? 'Its shell is aragonite, which acid water eats sooner than calcite.'
      : '',
    ways.growsOn === false ? 'Stops growing when grown up.' : '',
    OWN_KIND_WORDS[ways.eatsOwnKind ?? 'never'],
  ];
  return sentences.filter((sentence) => sentence !== '');
}

function basesOf(entry: Tree): EntryPage['bases'] {
  const counts = new Map<Quantity['basis'], number>();
  const walk = (part: unknown): void => {
    if (isQuantity(part)) counts.set(part.basis, (counts.get(part.basis) ?? 0) + 1);
    else if (isTree(part)) for (const inner of Object.values(part)) walk(inner);
  };
  walk(entry);
  return [...counts].map(([basis, count]) => ({ basis, count })).sort((a, b) => b.count - a.count);
}

function groupOf(kind: PageKind, entry: Tree): string {
  const word = (key: string): string => String(entry[key] ?? '');
  switch (kind) {
    case 'organisms':
      return `${word('group')}, ${word('habitat') === 'water' ? 'water' : word('habitat')}`;
    case 'plants':
      return `${word('group')} plant`;
    case 'materials':
      return word('use') === 'build' ? `for building: ${word('made')}` : word('use');
    case 'salts':
      return word('formula');
    case 'waters':
      return `${word('origin')} water`;
    case 'feeds':
      return 'feed';
  }
}

/** What a keeper asks of what lives, by the risks that would answer it. */
const ASKED: readonly (readonly [string, readonly Risk['kind'][]])[] = [
  ['law', ['law', 'invasive']],
  ['welfare', ['welfare']],
  ['poison', ['toxin']],
  ['illness that people catch', ['zoonosis', 'disease']],
];

/** What nothing is stated of: silence is no clearance. */
function unsaidOf(kind: PageKind, risks: readonly Risk[]): string | undefined {
  if (kind !== 'organisms' && kind !== 'plants') return undefined;
  const asked =
    kind === 'plants' ? ASKED.filter(([, [first]]) => first === 'law' || first === 'toxin') : ASKED;
  const open = asked
    .filter(([, kinds]) => !risks.some((risk) => kinds.includes(risk.kind)))
    .map(([words]) => words);
  if (open.length === 0) return undefined;
  const last = open[open.length - 1];
  const words = open.length === 1 ? last : `${open.slice(0, -1).join(', ')} and ${last}`;
  return `Of ${words} nothing particular is known here; that is no clearance. Ask your authority${kind === 'organisms' ? ', and a vet' : ''}.`;
}

/** The page of an entry; undefined when the library holds none of that name. */
export function entryPage(data: LibraryData, kind: PageKind, id: string): EntryPage | undefined {
  const list: Readonly<Record<string, unknown>> = data[kind];
  const found = Object.hasOwn(list, id) ? list[id] : undefined;
  if (!isTree(found)) return undefined;
  const entry = found as Tree & {
    name: string;
    scientificName?: string;
    about?: string;
    use?: string;
    known?: Known;
    cautions?: string[];
    risks?: Risk[];
    tolerances?: Spans;
    survives?: Spans;
  };
  const risks = entry.risks ?? [];
  const unsaid = unsaidOf(kind, risks);
  const about = entry.about ?? (kind === 'salts' ? entry.use : undefined);
  return {
    kind,
    id,
    name: entry.name,
    group: groupOf(kind, entry),
    ...(entry.scientificName ? { scientificName: entry.scientificName } : {}),
    ...(about ? { about } : {}),
    ...(entry.known ? { known: entry.known } : {}),
    ways: kind === 'organisms' ? waysOf(data.organisms[id] as LibraryData['organisms'][string]) : [],
    ranges: rangesOf(entry.tolerances, entry.survives),
    sections: sectionsOf(entry),
    cautions: entry.cautions ?? [],
    risks,
    ...(unsaid ? { unsaid } : {}),
    bases: basesOf(entry),
  };
}
