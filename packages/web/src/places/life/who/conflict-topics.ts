import type { Conflict, ConflictKind } from '@shoreglass/engine';
import { capital } from '../../../outlook/turning-words.ts';

/** Remarks of one kind and weight. */
export interface Topic {
  /** "Eaten by others" */
  readonly heading: string;
  readonly severity: Conflict['severity'];
  /** As they were found, each with its own reason and source. */
  readonly conflicts: readonly Conflict[];
  /** The same, told as shortly as can be: what holds for several animals stands once, with their names. */
  readonly told: readonly Told[];
}

/** A sentence that stands for one remark or for several, with what would resolve all of them. */
export interface Told {
  readonly sentence: string;
  readonly mend: string;
  readonly conflicts: readonly Conflict[];
}

/** Headings, what kills first and most surely first. */
const HEADINGS: Readonly<Record<ConflictKind, string>> = {
  copper: 'Poisonous water',
  salt: 'Too salty or too fresh',
  toxin: 'Poisonous animals',
  drowning: 'Drowning',
  eaten: 'Eaten by others',
  'too soon': 'Moving in too soon',
  range: 'Water and climate that do not suit',
  space: 'Too little room',
  'way out': 'Ways out of the enclosure',
  calcium: 'Too little calcium',
  mouth: 'No prey that fits',
  leftovers: 'Feed that is left over',
  few: 'Too few to begin with',
  'never breeds': 'Never any young',
  guests: 'Uninvited guests',
  disease: 'Health and hygiene',
  law: 'Law and release',
  welfare: 'Welfare',
};
const RANK = Object.keys(HEADINGS) as ConflictKind[];

/** Topics of remarks: what will probably go wrong before what is worth knowing, then by how much harm it does. */
export function topicsOf(conflicts: readonly Conflict[], nameOf: (id: string) => string): Topic[] {
  return (['warning', 'note'] as const).flatMap((severity) =>
    RANK.flatMap((kind): Topic[] => {
      const own = conflicts.filter((each) => each.severity === severity && each.kind === kind);
      if (own.length === 0) return [];
      const told = toldOf(own, nameOf).sort((a, b) => b.conflicts.length - a.conflicts.length);
      return [{ heading: HEADINGS[kind], severity, conflicts: own, told }];
    }),
  );
}

type NameOf = (id: string) => string;

/** Remarks of one kind and weight, in as few sentences as tell them. */
function toldOf(conflicts: readonly Conflict[], nameOf: NameOf): Told[] {
  const kind = conflicts[0]?.kind;
  if (kind === 'eaten') return byHunter(conflicts, nameOf);
  if (kind === 'toxin' && conflicts.every(({ who }) => who.length > 1)) return poison(conflicts, nameOf);
  const pairs = kind === 'range' ? conflicts.filter(({ who }) => who.length > 1) : [];
  const others = conflicts.filter((each) => !pairs.includes(each));
  return [...alike(others, nameOf), ...byOneOfPair(pairs, nameOf)];
}

/** Where the sentences of several are the same but for the name, it is told once with all names. */
function alike(conflicts: readonly Conflict[], nameOf: NameOf): Told[] {
  const frames = new Map<string, Conflict[]>();
  for (const conflict of conflicts) {
    const key = `${frameOf(conflict, nameOf)?.join('…') ?? conflict.sentence} ${conflict.mend}`;
    frames.set(key, [...(frames.get(key) ?? []), conflict]);
  }
  return [...frames.values()].flatMap((same): Told[] => {
    const [first] = same;
    if (!first) return [];
    const frame = same.length > 1 ? frameOf(first, nameOf) : undefined;
    if (!frame) return same.map(singly);
    const names = namesOf(same.flatMap(({ who }) => who.slice(0, 1)).map(nameOf));
    return [{ sentence: capital(frame.join(names)), mend: first.mend, conflicts: same }];
  });
}

/** What stands before and after the name of the first of those concerned; nothing where it does not stand just once. */
function frameOf({ sentence, who }: Conflict, nameOf: NameOf): string[] | undefined {
  const [first] = who;
  if (first === undefined) return undefined;
  const [name, begun] = [nameOf(first), capital(nameOf(first))];
  const parts = sentence.startsWith(begun)
    ? ['', sentence.slice(begun.length)]
    : sentence.split(name).slice(0, 3);
  return parts.length === 2 && !parts.some((part) => part.includes(name)) ? parts : undefined;
}

function byHunter(conflicts: readonly Conflict[], nameOf: NameOf): Told[] {
  const hunters = [...new Set(conflicts.map(({ who }) => who[1]))];
  return hunters.flatMap((hunter): Told[] => {
    const own = conflicts.filter(({ who }) => who[1] === hunter);
    const [first] = own;
    if (!first || hunter === undefined || own.length === 1) return own.map(singly);
    const prey = namesOf(own.flatMap(({ who }) => who.slice(0, 1)).map(nameOf));
    const sentence =
      first.severity === 'warning'
        ? `${capital(nameOf(hunter))} eat ${prey}, of any size.`
        : `${capital(nameOf(hunter))} eat the small of ${prey}, or eat them now and then.`;
    const mend =
      first.severity === 'warning'
        ? `Keep either ${nameOf(hunter)} or those they eat; or count these as food, and keep a culture of them apart.`
        : 'Give the small cover: moss, fine plants, litter, stones; or rear them apart.';
    return [{ sentence, mend, conflicts: own }];
  });
}

/** Several that are poisonous, among the same others. */
function poison(conflicts: readonly Conflict[], nameOf: NameOf): Told[] {
  const [first] = conflicts;
  if (!first || conflicts.length === 1) return conflicts.map(singly);
  const names = namesOf(conflicts.flatMap(({ who }) => who.slice(0, 1)).map(nameOf));
  const sentence = `${capital(names)} give off or carry poison and would share air and water with each other and all the others.`;
  return [{ sentence, mend: first.mend, conflicts }];
}

/** Of pairs, whoever stands in most of them is told first, with all it does not go with. */
function byOneOfPair(pairs: readonly Conflict[], nameOf: NameOf): Told[] {
  const told: Told[] = [];
  let left = pairs;
  while (left.length > 0) {
    const centre = concerned(left)[0]?.id ?? '';
    const own = left.filter(({ who }) => who.includes(centre));
    const [first] = own;
    if (!first || own.length < 2) return [...told, ...left.map(singly)];
    const names = namesOf(own.flatMap(({ who }) => who.filter((id) => id !== centre)).map(nameOf));
    const either = `keep either ${nameOf(centre)} or the others.`;
    told.push(
      first.severity === 'warning'
        ? {
            sentence: `${capital(nameOf(centre))} fit together with none of these: ${names}. No water or air suits both.`,
            mend: capital(either),
            conflicts: own,
          }
        : {
            sentence: `${capital(nameOf(centre))} share only a narrow range of water or air with ${names}.`,
            mend: `Hold the water and air that suit both, or ${either}`,
            conflicts: own,
          },
    );
    left = left.filter((each) => !own.includes(each));
  }
  return told;
}

const singly = (conflict: Conflict): Told => ({
  sentence: conflict.sentence,
  mend: conflict.mend,
  conflicts: [conflict],
});

/** "scuds, snails and newts". */
export function namesOf(names: readonly string[]): string {
  const unlike = [...new Set(names)];
  if (unlike.length < 2) return unlike.join('');
  return `${unlike.slice(0, -1).join(', ')} and ${unlike.at(-1)}`;
}

export interface Concerned {
  readonly id: string;
  /** How many of the remarks would be gone without it. */
  readonly count: number;
}

/** Those on whom remarks turn, by how many would be gone without them, most first. */
export function concerned(conflicts: readonly Conflict[]): Concerned[] {
  const counts = new Map<string, number>();
  for (const { kind, who } of conflicts)
    for (const id of kind === 'eaten' || kind === 'range' ? who : who.slice(0, 1))
      counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts].map(([id, count]) => ({ id, count })).sort((a, b) => b.count - a.count);
}
