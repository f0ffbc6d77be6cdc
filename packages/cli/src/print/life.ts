import type {
  AdditionEffect,
  Conflict,
  FoodCapacity,
  FoodFlow,
  LifeDocument,
  PlantOutlook,
  PopulationOutlook,
} from '@shoreglass/engine';
import { seriesSpec } from '@shoreglass/engine';
import { hunterWords } from '@shoreglass/figures';
import { library } from '@shoreglass/library';
import colours from 'picocolors';
import { type Course, courseLines } from './course.ts';
import { calendarDay } from './dates.ts';
import { type ToldTogether, toldOnce } from './told-once.ts';
import { roomWithin } from './width.ts';
import { underlined, wrapped } from './wrapped.ts';

const SPARK_WIDTH = 30;

const LEAST = 0.01;

function number(value: number): string {
  const size = Math.abs(value);
  if (size >= 100) return value.toFixed(0);
  if (size >= 10) return value.toFixed(1);
  if (size >= 0.995 || value === 0) return String(Number(value.toFixed(1)));
  return size >= LEAST ? value.toPrecision(1) : `${value < 0 ? '-' : ''}<${LEAST}`;
}

const MARKS = { blocking: '!', warning: '!', note: '·' } as const;

/** What does not go together: sentences with the same reason, help and source under one mark. */
function conflictLines(conflicts: readonly Conflict[], width: number): string[] {
  const told = conflicts.map(({ severity, sentence, mend, source, who: [first = ''] }) => ({
    severity,
    message: sentence,
    mend,
    source,
    name: library.data.organisms[first]?.name ?? '',
  }));
  return toldOnce(told).map((each) => togetherLines(each, width));
}

function togetherLines(
  {
    first: { severity, mend, source },
    sentences,
  }: ToldTogether<ReturnType<typeof toldOnce>[number]['first']>,
  width: number,
): string {
  return [
    ...sentences.map(({ text }, at) =>
      wrapped(text, width, '    ', at === 0 ? `  ${MARKS[severity]} ` : '    '),
    ),
    wrapped(`What helps: ${mend}`, width, '    '),
    colours.dim(wrapped(`source: ${source}`, width, '    ')),
  ].join('\n');
}

interface QuantilesByDay {
  readonly q05: readonly number[];
  readonly q50: readonly number[];
  readonly q95: readonly number[];
}

/** A course of the runs from its first to its last day. */
function courseOf(name: string, { q05, q50, q95 }: QuantilesByDay, unit = ''): Course {
  const last = q50.length - 1;
  return {
    name,
    values: q50,
    range: `${number(q50[0] ?? 0)} to ${number(q50[last] ?? 0)}${unit}`,
    spread: `(${number(q05[last] ?? 0)} to ${number(q95[last] ?? 0)})`,
  };
}

/** Courses drawn alike, each with what is told below it. */
function drawn(courses: readonly Course[], below: readonly (readonly string[])[], width: number): string[] {
  const lines = courseLines(courses, { width: roomWithin(width), longest: SPARK_WIDTH, bold: true });
  return lines.flatMap((line, at) => [
    line,
    ...(below[at] ?? []).map((text) => wrapped(text, width, '      ', '    ')),
  ]);
}

function populationLines({ total, stages, born, deaths, slowed }: PopulationOutlook): string[] {
  const last = total.q50.length - 1;
  const end = (series: { q50: readonly number[] } | undefined): string => number(series?.q50[last] ?? 0);
  const causes = Object.entries(deaths)
    .filter(([, count]) => count >= 0.5)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 4)
    .map(([cause, count]) => `${cause} ${number(count)}`);
  return [
    `on the last day ${end(stages.adult)} adults, ${end(stages.juvenile)} young, ${end(stages.brooded)} eggs; ${number(born)} young released over the run`,
    `deaths: ${causes.length > 0 ? causes.join(', ') : 'none'}`,
    ...slowed.map(({ sentence }) => sentence),
  ];
}

function plantLines({ heldBack }: PlantOutlook): string[] {
  const causes = Object.entries(heldBack)
    .filter(([, share]) => share >= 0.1)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 3)
    .map(([cause, share]) => `${cause} ${Math.round(share * 100)} %`);
  return causes.length > 0 ? [`lost of its growth in good light: ${causes.join(', ')}`] : [];
}

function capacityLines({ foodName, production, eaters }: FoodCapacity, width: number): string[] {
  const carried = eaters
    .filter(({ adults }) => adults >= 0.05)
    .map(
      ({ name, adults, withYoung, young, breeds }) =>
        `${number(adults)} ${name} (${withYoung + young > 0 ? `or ${number(withYoung)} small adults with ${number(young)} young` : 'never any young'}${breeds ? '' : '; too little to breed on alone'})`,
    );
  if (carried.length === 0) return [];
  return [
    wrapped(`${foodName}, ${number(production)} mg C a day: ${carried.join('; ')}`, width, '    ', '  '),
  ];
}

function flowLines(flows: readonly FoodFlow[], { populations }: LifeDocument, width: number): string[] {
  return populations.flatMap(({ id, name }) => {
    const own = flows.filter(({ eater }) => eater === id).sort((a, b) => b.mean - a.mean);
    if (own.length === 0) return [`  ${name} eat nothing`];
    const courses = own.map(({ foodName, mean, weekly }) => ({
      name: foodName,
      values: weekly,
      range: `${number(mean)} mg C a week`,
    }));
    return [
      `  ${colours.bold(name)}`,
      ...courseLines(courses, { width: roomWithin(width), indent: '    ', longest: SPARK_WIDTH }),
    ];
  });
}

/** What a series is called, populations by the names people use. */
function seriesName(series: string): string {
  const [, id, stage] = /^population:([^:]+)(?::(.+))?$/.exec(series) ?? [];
  const animal = id === undefined ? undefined : library.data.organisms[id];
  if (!animal) return seriesSpec(series as never).name;
  return stage === undefined ? animal.name : `${animal.name}, ${stage}`;
}

/** Part of what was there that a difference must come to for its own line [1]. */
const NOTABLE = 0.01;

const isNotable = ({ without, with: included, difference: { q10, q50, q90 } }: AdditionEffect): boolean =>
  Math.max(...[q10, q50, q90].map(Math.abs)) >
  Math.max(LEAST, NOTABLE * Math.max(Math.abs(without.q50), Math.abs(included.q50)));

function effectLines(effects: readonly AdditionEffect[], width: number): string[] {
  const same = effects.filter((each) => !isNotable(each)).map(({ series }) => seriesName(series));
  return [
    ...effects.filter(isNotable).map(({ series, without, with: included, difference }) => {
      const { unit } = seriesSpec(series as never);
      const change = `${difference.q50 >= 0 ? '+' : ''}${number(difference.q50)}`;
      const spread = colours.dim(`(${number(difference.q10)} to ${number(difference.q90)} in 4 runs of 5)`);
      const text = `${seriesName(series)}: ${number(without.q50)} without, ${number(included.q50)} with: ${`${change} ${unit}`.trim()} ${spread}`;
      return wrapped(text, width, '    ', '  ');
    }),
    ...(same.length > 0 ? [wrapped(`Hardly changed: ${same.join('; ')}.`, width, '    ', '  ')] : []),
  ];
}

function pestLines({ answers }: NonNullable<LifeDocument['pest']>, width: number): string[] {
  const [nothing] = answers;
  return answers.flatMap((answer) => {
    const { kind, name, pest, gone, runs, others, hunter } = answer;
    const end = `${number(pest.q50)} on the last day ${colours.dim(`(${number(pest.q10)} to ${number(pest.q90)} in 4 runs of 5)`)}`;
    const none = gone > 0 ? `, none left in ${Math.round(gone * runs)} of ${runs} runs` : '';
    const changed = others.filter(({ id, end: { q50 } }) => {
      const before = nothing?.others.find((other) => other.id === id)?.end.q50 ?? 0;
      return kind !== 'nothing' && id !== hunter?.id && Math.abs(q50 - before) > 0.1 * Math.max(before, 1);
    });
    const told = changed.map(({ id, name: called, end: { q50 } }) => {
      const before = nothing?.others.find((other) => other.id === id)?.end.q50 ?? 0;
      return `${called} ${number(q50)} instead of ${number(before)}`;
    });
    const after = hunterWords(answer);
    return [
      wrapped(`${colours.bold(name)}: ${end}${none}`, width, '      ', '  '),
      ...(told.length > 0 ? [wrapped(`others: ${told.join('; ')}`, width, '      ', '    ')] : []),
      ...(after === undefined ? [] : [wrapped(after, width, '      ', '    ')]),
    ];
  });
}

/** The community for people, as text for a terminal `width` characters wide. */
export function lifeText(document: LifeDocument, width: number): string {
  const { enclosure, run, conflicts, capacity, populations, plants, flows, rivals, addition, feeding, pest } =
    document;
  const title = (text: string): string => `\n${underlined(text, width)}`;
  return [
    `\n${colours.bold(enclosure.name)}, ${run.days} days from ${calendarDay(enclosure.startDate, 0)}, ${run.members} runs, seed ${run.seed}`,
    title('What does not go together'),
    ...(conflicts.length > 0 ? conflictLines(conflicts, width) : ['  Nothing found.']),
    title('Numbers, median of the runs: first to last day (5 to 95 %)'),
    ...(populations.length > 0
      ? drawn(
          populations.map(({ name, total }) => courseOf(name, total)),
          populations.map(populationLines),
          width,
        )
      : ['  No animals in the file.']),
    ...(plants.length > 0
      ? [
          title('Cover of plants, median of the runs: first to last day (5 to 95 %)'),
          ...drawn(
            plants.map(({ name, zone, cover }) => courseOf(`${name} (${zone})`, cover, ' %')),
            plants.map(plantLines),
            width,
          ),
        ]
      : []),
    title('What each food carries: full-grown adults kept alive, or a population that holds its number'),
    ...capacity.flatMap((food) => capacityLines(food, width)),
    title('Who eats what, expected run'),
    ...flowLines(flows, document, width),
    ...(rivals.length > 0
      ? [title('Who takes whose food'), ...rivals.map(({ sentence }) => wrapped(sentence, width, '  '))]
      : []),
    ...(addition
      ? [
          title(
            `With ${addition.adults} ${seriesName(`population:${addition.species}`)} added, on the last day`,
          ),
          ...effectLines(addition.effects, width),
        ]
      : []),
    ...(feeding
      ? [title('How to feed'), ...feeding.sentences.map((sentence) => wrapped(sentence, width, '  '))]
      : []),
    ...(pest ? [title(`What can be done against ${pest.name}`), ...pestLines(pest, width)] : []),
    '',
  ].join('\n');
}
