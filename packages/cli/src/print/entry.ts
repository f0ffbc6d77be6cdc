import type { AnimalCheck, TakenTrait } from '@shoreglass/contract';
import { type EntryPage, figuresOf } from '@shoreglass/library';
import colours from 'picocolors';
import { fitted } from './wrapped.ts';

const KNOWN = { well: 'well', fairly: 'fairly well', poorly: 'poorly' } as const;

function pageLines({
  name,
  scientificName,
  group,
  about,
  known,
  bases,
  cautions,
  risks,
  unsaid,
}: EntryPage): string[] {
  return [
    colours.bold(name) + (scientificName ? `  ${scientificName}` : ''),
    `  ${group}`,
    ...(about ? [`  ${about}`] : []),
    ...(known ? [`  Known ${KNOWN[known.level]}: ${known.note}`] : []),
    `  Values by basis: ${bases.map(({ basis, count }) => `${basis} ${count}`).join(', ')}`,
    ...(cautions.length + risks.length > 0 || unsaid
      ? [`\n${colours.underline('Law, health, safety')}`]
      : []),
    ...cautions.map((caution) => `  ${caution}`),
    ...risks.map(({ kind, text }) => `  ${kind}: ${text}`),
    ...(unsaid ? [`  ${unsaid}`] : []),
  ];
}

const unitOf = (unit: string): string => (unit === '1' ? '' : ` ${unit}`);

function traitLines(traits: readonly TakenTrait[], from: TakenTrait['from']): string[] {
  const those = traits.filter((trait) => trait.from === from);
  if (those.length === 0) return [];
  return [
    `\n${colours.underline(`${those.length} ${those.length === 1 ? 'trait' : 'traits'} from ${from}`)}`,
    ...those.map(
      ({ id, value, unit, meaning }) =>
        `  ${id} = ${figuresOf(value)}${unitOf(unit)}  ${colours.dim(meaning)}`,
    ),
  ];
}

function trialLine({ trial }: AnimalCheck): string {
  const { founders, days, adults, young, eggs, firstYoung, closure } = trial;
  const born = firstYoung === undefined ? 'no young' : `first young on day ${firstYoung}`;
  return `  ${founders} adults by themselves, well fed, ${days} days: ${adults.toFixed(1)} adults, ${young.toFixed(1)} young, ${eggs.toFixed(0)} eggs; ${born}. Budgets close to ${closure.toExponential(0)}.`;
}

/** What a sound file of an animal says and what becomes of it. */
export function animalText(check: AnimalCheck): string {
  const { page, traits, remarks } = check;
  const lines = [
    ...pageLines(page),
    `\n${colours.underline('Trial in an invented box')}`,
    trialLine(check),
    `  ${check.alone}`,
    ...(remarks.length > 0
      ? [`\n${colours.underline('Worth a look')}`, ...remarks.map((remark) => `  ${remark}`)]
      : []),
    ...traitLines(traits, 'the file'),
    ...traitLines(traits, 'a rule'),
    ...traitLines(traits, 'the usual'),
  ];
  return fitted(lines.join('\n'));
}

/** What a sound file of any other entry says. */
export function entryText(page: EntryPage): string {
  const values = page.sections.flatMap(({ title, values: those }) => [
    `\n${colours.underline(title)}`,
    ...those.map(
      ({ label, text, range, basis }) =>
        `  ${label} = ${text}${range ? ` (${range})` : ''}  ${colours.dim(basis)}`,
    ),
  ]);
  return fitted([...pageLines(page), ...values].join('\n'));
}
