import { TRAIT_DEFAULTS, TRAIT_IDS, TRAIT_SPECS, type TraitId } from '@shoreglass/engine';
import {
  ENTRY_SCHEMAS,
  type EntryPage,
  entryPage,
  library,
  type Organism,
  type PageKind,
} from '@shoreglass/library';
import { animalTraitsOf } from '../enclosure/plan/animal-traits.ts';
import { parseYaml } from '../enclosure/read/parse-yaml.ts';
import type { Problem } from '../enclosure/read/problem.ts';
import { idOf, problemsOf } from '../enclosure/read/read-enclosure.ts';
import { aloneOf } from './life-alone.ts';
import { libraryWith, type Trial, trialOf } from './trial.ts';

/** A trait as the engine will take it, and where it comes from. */
export interface TakenTrait {
  readonly id: TraitId;
  readonly meaning: string;
  readonly unit: string;
  readonly value: number;
  readonly from: 'the file' | 'a rule' | 'the usual';
}

/** What is to be said about a sound file of one animal. */
export interface AnimalCheck {
  readonly organism: Organism;
  readonly page: EntryPage;
  readonly traits: readonly TakenTrait[];
  /** What the rules had to settle, what is worth adding, what the trial showed. */
  readonly remarks: readonly string[];
  readonly trial: Trial;
  /** What becomes of it by itself with ample food, in a sentence. */
  readonly alone: string;
}

export type EntryCheck =
  | { readonly kind: 'organisms'; readonly animal: AnimalCheck; readonly problems?: undefined }
  | { readonly kind: Exclude<PageKind, 'organisms'>; readonly page: EntryPage; readonly problems?: undefined }
  | { readonly problems: readonly Problem[] };

/** What the schema says in its own words: how it is recognised, as a sentence for people, and how it is mended. */
const PLAIN: readonly (readonly [RegExp, string, string])[] = [
  [/^.*received undefined$/, 'is missing', ''],
  [/^Unrecognized key.*$/, 'is no key of such a file', 'Check its spelling.'],
  [/^Invalid input: expected (.*?),? received .*$/, 'must be a $1', ''],
  [/^Too small: expected string to have >=(\d+) characters$/, 'has fewer than $1 letters', 'Write it out.'],
  [/^Too big: expected string to have <=(\d+) characters$/, 'has more than $1 letters', 'Shorten it.'],
  [/^(is given in ('.*'), not .*)$/, '$1', 'Write value and unit in $2.'],
  [/^(.* is outside .*)$/, '$1', 'Check the number and its unit.'],
  [/^(shares of .*)$/, '$1', 'Make them add up to 1.'],
];

function inPlainWords(problem: Problem): Problem {
  const found = PLAIN.find(([pattern]) => pattern.test(problem.message));
  if (!found)
    return problem.mend === '' ? { ...problem, mend: HOW } : { ...problem, mend: `${problem.mend} ${HOW}` };
  const [pattern, words, mend] = found;
  const put = (into: string): string => problem.message.replace(pattern, into);
  return {
    ...problem,
    message: put(words),
    mend: mend === '' ? HOW : `${put(mend)} ${HOW}`,
  };
}

const HOW = 'docs/guide/library.md says how it is written.';

/** Keys by which a file of each list is told from the others; the first that fits. */
const MARKS: readonly (readonly [PageKind, readonly string[]])[] = [
  ['organisms', ['mating', 'brood', 'lifeHistory', 'leastFounders', 'habitat']],
  ['plants', ['fullCoverBiomass', 'light']],
  ['feeds', ['dryMatter', 'decay']],
  ['salts', ['formula', 'solubility']],
  ['waters', ['ions', 'origin']],
  ['materials', ['use']],
];

function kindOf(value: unknown): PageKind | undefined {
  if (typeof value !== 'object' || value === null || 'shoreglass' in value) return undefined;
  return MARKS.find(([, keys]) => keys.some((key) => key in value))?.[0];
}

/** Whether a text is a file of the library rather than an enclosure. Never throws. */
export function isLibraryEntry(text: string, fileName: string): boolean {
  const parsed = parseYaml(text, fileName);
  return !('problems' in parsed) && kindOf(parsed.value) !== undefined;
}

function takenTraits(organism: Organism): { traits: TakenTrait[]; remarks: readonly string[] } {
  const { traits, remarks } = animalTraitsOf(organism);
  const taken = TRAIT_IDS.map((id): TakenTrait => {
    const { median } = traits.priors[id];
    const stated = organism.traits?.[id] !== undefined;
    const usual =
      !stated && id in TRAIT_DEFAULTS && median === TRAIT_DEFAULTS[id as keyof typeof TRAIT_DEFAULTS];
    const { meaning, unit } = TRAIT_SPECS[id];
    return { id, meaning, unit, value: median, from: stated ? 'the file' : usual ? 'the usual' : 'a rule' };
  });
  return { traits: taken, remarks };
}

/** What a file may leave out and a keeper will miss. */
function worthAdding({ known, tolerances, risks, place, space, ways, preyKind, about }: Organism): string[] {
  const lacking: [boolean, string][] = [
    [about === undefined, 'Say in a sentence or two what it is and how it lives (about).'],
    [known === undefined, 'Say how well its numbers are known (known: level and note).'],
    [
      tolerances === undefined,
      'Give the ranges in which it is fine (tolerances): without them nobody is warned.',
    ],
    [risks === undefined, 'Say what the law, health and welfare ask for (risks).'],
    [place === undefined, 'Say where it spends its time (place).'],
    [space === undefined, 'Say how much space the smallest group needs (space).'],
    [ways === undefined, 'Say whether it climbs, jumps, moults and drowns (ways).'],
    [preyKind === undefined, 'Nobody will hunt it: give preyKind if others eat it.'],
  ];
  return lacking.filter(([isLacking]) => isLacking).map(([, sentence]) => sentence);
}

function trialRemarks(
  { staysFinite, closure, founders, adults, young, eggs, days }: Trial,
  organism: Organism,
): string[] {
  const never = organism.development === 'brackish larvae';
  return [
    ...(staysFinite && closure < 1e-9
      ? []
      : ['The trial does not keep its budgets closed; check the values for slips of unit.']),
    ...(adults + young < founders / 2
      ? [
          `Of ${founders} founders ${Math.round(adults)} lived and ${Math.round(young)} young came within ${days} days, fed well in water that should suit it: check ranges, diet and masses.`,
        ]
      : []),
    ...(never && young > 0 ? ['It had young although its larvae need salt water.'] : []),
    ...(!never && young + eggs < 0.5
      ? [
          `No eggs and no young within ${days} days: right for slow breeders, else check age at maturity, broods and diet.`,
        ]
      : []),
  ];
}

const TRIAL_DAYS = 120;

/**
 * Reads and checks a file of one entry of the library: every problem with its place, or what it says, which traits
 * come from rules, what is worth adding, and what a trial in an invented box shows. Never throws for what a text holds.
 */
export function checkEntry(text: string, fileName: string): EntryCheck {
  const parsed = parseYaml(text, fileName);
  if ('problems' in parsed) return { problems: parsed.problems };
  const kind = kindOf(parsed.value);
  const whole = (message: string, mend: string): EntryCheck => ({
    problems: [{ file: fileName, line: 1, column: 1, path: '', message, mend }],
  });
  if (!kind) return whole('is no entry of the library', 'Start from a file of packages/library/data.');
  const result = ENTRY_SCHEMAS[kind].safeParse(parsed.value);
  if (!result.success) return { problems: problemsOf(result.error, parsed, fileName).map(inPlainWords) };
  const entry = result.data;
  if (entry.id !== idOf(fileName))
    return whole(
      `names itself '${entry.id}'`,
      `Call the file ${entry.id}.yaml, or the entry ${idOf(fileName)}.`,
    );
  if (kind !== 'organisms') {
    const page = entryPage({ ...library.data, [kind]: { [entry.id]: entry } }, kind, entry.id);
    return page ? { kind, page } : whole('has no page', 'Check its name.');
  }
  return checkAnimal(entry as Organism, whole);
}

function checkAnimal(organism: Organism, whole: (message: string, mend: string) => EntryCheck): EntryCheck {
  try {
    const { traits, remarks } = takenTraits(organism);
    const trial = trialOf(organism, TRIAL_DAYS);
    const page = entryPage(libraryWith(organism).data, 'organisms', organism.id);
    if (!page) return whole('has no page', 'Check its name.');
    const all = [...remarks, ...worthAdding(organism), ...trialRemarks(trial, organism)];
    return {
      kind: 'organisms',
      animal: { organism, page, traits, remarks: all, trial, alone: aloneOf(organism) },
    };
  } catch (error) {
    return whole(error instanceof Error ? error.message : 'cannot be run', 'Mend what the sentence names.');
  }
}
