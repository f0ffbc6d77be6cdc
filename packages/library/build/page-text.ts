import {
  type EntryPage,
  entryPage,
  KIND_NAMES,
  PAGE_KINDS,
  type PageKind,
  type PageRange,
  type PageValue,
} from '../src/page/entry-page.ts';
import { capital } from '../src/page/labels.ts';
import type { LibraryData } from '../src/schema/entries.ts';
import type { Organism } from '../src/schema/organism.ts';

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

const LEVEL_WORDS = { well: 'well', fairly: 'fairly well', poorly: 'poorly' } as const;
const WIDTH = 30;

/** The line on which a range is drawn: from the lowest to the highest of its bounds and a tenth beyond. */
function scaleOf({ fine = {}, survives = {} }: PageRange): readonly [number, number] {
  const bounds = [fine.low, fine.high, survives.low, survives.high].filter((each) => each !== undefined);
  const [least, most] = [Math.min(...bounds), Math.max(...bounds)];
  const beyond = Math.max(0.15 * (most - least), 0.05 * Math.abs(most), 0.01);
  return [least - beyond, most + beyond];
}

/** A range as signs: thick where it is fine, thin where it survives, dots beyond. */
export function rangeSigns(range: PageRange): string {
  const [from, to] = scaleOf(range);
  const within = (at: number, bounds: PageRange['fine']): boolean =>
    bounds !== undefined && at >= (bounds.low ?? from) && at <= (bounds.high ?? to);
  return Array.from({ length: WIDTH }, (_, i) => {
    const at = from + ((i + 0.5) / WIDTH) * (to - from);
    return within(at, range.fine) ? '━' : within(at, range.survives) ? '─' : '·';
  }).join('');
}

function boundsText({ low, high }: NonNullable<PageRange['fine']>, unit: string): string {
  const text = low === undefined ? `up to ${high}` : high === undefined ? `from ${low}` : `${low} to ${high}`;
  return unit ? `${text} ${unit}` : text;
}

function rangeTable(ranges: readonly PageRange[]): string[] {
  if (ranges.length === 0) return [];
  const rows = ranges.map((range) => {
    const { label, unit, fine, survives } = range;
    return `| ${capital(label)} | \`${rangeSigns(range)}\` | ${fine ? boundsText(fine, unit) : ''} | ${survives ? boundsText(survives, unit) : ''} |`;
  });
  return [
    '## What it stands',
    '',
    'Thick: fine. Thin: survives. Dots: neither.',
    '',
    '| | | fine | survives |',
    '| --- | --- | --- | --- |',
    ...rows,
    '',
  ];
}

function valueRow({ label, text, range = '', basis, source, note }: PageValue): string {
  const remark = note ? `${source}. ${note}` : source;
  return `| ${cell(capital(label))} | ${cell(text)} | ${cell(range)} | ${basis} | ${cell(remark)} |`;
}

function valueTable(title: string, values: readonly PageValue[]): string[] {
  return [
    `## ${title}`,
    '',
    '| | value | plausible | basis | source |',
    '| --- | --- | --- | --- | --- |',
    ...values.map(valueRow),
    '',
  ];
}

/** A page of the library as Markdown. `alone` says what becomes of an animal by itself with ample food. */
function pageText(page: EntryPage, alone?: string): string {
  const {
    name,
    scientificName,
    group,
    about,
    known,
    ways,
    ranges,
    sections,
    cautions,
    risks,
    unsaid,
    bases,
  } = page;
  const sources = ranges.flatMap((range) => range.sources);
  const lines = [
    `# ${capital(name)}`,
    '',
    [scientificName ? `*${scientificName}*` : '', group].filter(Boolean).join(' · '),
    '',
    ...(about ? [about, ''] : []),
    ...(ways.length > 0 ? [ways.join(' '), ''] : []),
    ...(alone ? [alone, ''] : []),
    ...(known
      ? [
          `**Known ${LEVEL_WORDS[known.level]}.** ${known.note} Values by basis: ${bases.map(({ basis, count }) => `${basis} ${count}`).join(', ')}.`,
          '',
        ]
      : []),
    ...(cautions.length > 0 ? ['## To mind', '', ...cautions.map((each) => `- ${each}`), ''] : []),
    ...(risks.length > 0 || unsaid
      ? [
          '## Law, health, safety',
          '',
          ...risks.map(
            ({ kind, text, basis, source }) => `- ${capital(kind)}: ${text} (${basis}: ${source})`,
          ),
          ...(unsaid ? [`- ${unsaid}`] : []),
          '',
        ]
      : []),
    ...rangeTable(ranges),
    ...sections.flatMap(({ title, values }) => valueTable(title, values)),
    ...(sources.length > 0 ? valueTable('Where the ranges come from', sources) : []),
    'Made from the library by `packages/contract/build/build-pages.ts`; change the data file, not this page.',
    '',
  ];
  return lines.join('\n');
}

function indexText(data: LibraryData): string {
  const parts = PAGE_KINDS.flatMap((kind) => {
    const pages = Object.keys(data[kind]).map((id) => entryPage(data, kind, id) as EntryPage);
    const rows = pages.map(
      ({ id, name, scientificName = '', group, known }) =>
        `| [${capital(name)}](${kind}/${id}.md) | ${scientificName ? `*${scientificName}*` : ''} | ${group} | ${known ? LEVEL_WORDS[known.level] : ''} |`,
    );
    return [`## ${KIND_NAMES[kind]}`, '', '| | | | known |', '| --- | --- | --- | --- |', ...rows, ''];
  });
  return [
    '# The library',
    '',
    'Every animal, plant, feed, material, salt and water the program knows, one page each: what it is, what it needs, and',
    'every value with its basis and source. How to add one: [adding to the library](../guide/library.md).',
    '',
    ...parts,
    'Made by `packages/contract/build/build-pages.ts`; change the data files, not these pages.',
    '',
  ].join('\n');
}

/**
 * Every page by its path under docs/library. The same data gives the same texts.
 * @param aloneOf what becomes of an animal by itself with ample food, in a sentence
 */
export function pageFiles(
  data: LibraryData,
  aloneOf: (animal: Organism) => string,
): ReadonlyMap<string, string> {
  const files = new Map<string, string>([['README.md', indexText(data)]]);
  for (const kind of PAGE_KINDS as readonly PageKind[]) {
    for (const id of Object.keys(data[kind])) {
      const alone = kind === 'organisms' ? aloneOf(data.organisms[id]!) : undefined;
      files.set(`${kind}/${id}.md`, pageText(entryPage(data, kind, id) as EntryPage, alone));
    }
  }
  return files;
}
