import type { CountsAnswer } from '@shoreglass/contract';
import type { CountTopic } from '@shoreglass/engine';
import { isoDay } from '@shoreglass/figures';
import colours from 'picocolors';
import { table } from './table.ts';
import { underlined, wrapped } from './wrapped.ts';

const ROWS = 40;

const TOPICS: readonly CountTopic[] = ['growth', 'limit', 'falling', 'stages', 'warmth'];
const HEADINGS: Readonly<Record<CountTopic, string>> = {
  growth: 'Growth',
  limit: 'Limit',
  falling: 'Falling below',
  stages: 'Stages',
  warmth: 'Warmth',
};

/** The date of a day of the counts, or the day itself. */
function dayText(startDate: string | undefined, day: number): string {
  return startDate === undefined ? `day ${day}` : isoDay(startDate, Math.round(day));
}

/** A number of animals, with a digit behind the point where they are few. */
const number = (animals: number): string =>
  String(animals < 10 ? Number(animals.toFixed(1)) : Math.round(animals));

const between = (low: number, high: number): string => `${number(low)} to ${number(high)}`;

/** Counts beside the curve laid through them, and beside the computed numbers of the day. */
function countRows({ startDate, counts, fitted, computed, byEffort }: CountsAnswer): string[][] {
  const head = [
    startDate === undefined ? 'day' : 'date',
    byEffort ? 'by effort' : 'counted',
    ...(fitted.length > 0 ? ['curve', '95 %'] : []),
    ...(computed ? ['computed', 'nine runs in ten'] : []),
  ];
  const rows = counts.map(({ day, number: animals }, i) => {
    const curve = fitted[i];
    const beside = computed?.counts.find((each) => Math.abs(each.day - day - computed.firstDay) < 1e-6);
    return [
      dayText(startDate, day),
      number(animals),
      ...(curve ? [number(curve.value), between(curve.low, curve.high)] : []),
      ...(computed ? (beside ? [number(beside.middle), between(beside.low, beside.high)] : ['', '']) : []),
    ];
  });
  return [
    head,
    ...(rows.length > ROWS ? [...rows.slice(0, ROWS / 2), ['…'], ...rows.slice(-ROWS / 2)] : rows),
  ];
}

/** What the sentences of a topic say, and whose methods they are. */
function topicLines({ sentences }: CountsAnswer, topic: CountTopic, width: number): string[] {
  const told = sentences.filter(({ about }) => about === topic);
  if (told.length === 0) return [];
  const sources = [...new Set(told.map(({ source }) => source))].join('; ');
  return [
    '',
    underlined(HEADINGS[topic], width),
    ...told.map(({ text }) => wrapped(text, width, '  ')),
    colours.dim(wrapped(sources, width, '  ')),
  ];
}

const CURVES = {
  limit: 'The curve grows towards a limit; 95 % is of the curve, not of single counts.',
  trend: 'The curve grows or falls steadily; 95 % is of the curve, not of single counts.',
} as const;

/** What counts tell, for people. */
export function countsText(answer: CountsAnswer, file: string, width: number): string {
  const { counts, startDate, drawn, species, computed, cautions } = answer;
  const span = (counts.at(-1)?.day ?? 0) - (counts[0]?.day ?? 0);
  const of = species ? ` of ${species.name}` : '';
  const from = startDate === undefined ? '' : ` from ${startDate}`;
  const beside = species?.sentences ?? [];
  return [
    colours.bold(
      `${file}: ${counts.length} ${counts.length === 1 ? 'count' : 'counts'}${of} in ${span} days${from}`,
    ),
    '',
    table(countRows(answer), { width, hasHead: true }),
    ...(drawn ? [colours.dim(wrapped(CURVES[drawn], width, '  '))] : []),
    ...TOPICS.flatMap((topic) => topicLines(answer, topic, width)),
    ...(species && beside.length > 0
      ? [
          '',
          underlined('Beside the species by itself', width),
          ...beside.map((text) => wrapped(text, width, '  ')),
        ]
      : []),
    ...(computed
      ? [
          '',
          underlined(`Beside what is computed for ${computed.enclosure}`, width),
          wrapped(computed.sentence, width, '  '),
        ]
      : []),
    '',
    underlined('To mind', width),
    ...cautions.map((text) => wrapped(text, width, '    ', '  - ')),
  ].join('\n');
}
