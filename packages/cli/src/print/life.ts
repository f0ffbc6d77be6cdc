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
import { hunterWords, sparkline } from '@shoreglass/figures';
import colours from 'picocolors';
import { calendarDay } from './dates.ts';
import { wrapped } from './wrapped.ts';

const SPARK_WIDTH = 30;

function number(value: number): string {
  const size = Math.abs(value);
  if (size >= 100) return value.toFixed(0);
  if (size >= 10) return value.toFixed(1);
  return size >= 0.995 || value === 0 ? String(Number(value.toFixed(1))) : value.toPrecision(1);
}

function conflictLines({ severity, sentence, mend, source }: Conflict, width: number): string {
  const mark = severity === 'warning' ? '!' : '·';
  return [
    `  ${mark} ${wrapped(sentence, width - 2, '    ').trimStart()}`,
    wrapped(`What helps: ${mend}`, width, '    '),
    colours.dim(wrapped(`source: ${source}`, width, '    ')),
  ].join('\n');
}

function populationLines({ name, total, stages, born, deaths }: PopulationOutlook): string[] {
  const last = total.q50.length - 1;
  const end = (series: { q50: readonly number[] } | undefined): string => number(series?.q50[last] ?? 0);
  const causes = Object.entries(deaths)
    .filter(([, count]) => count >= 0.5)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 4)
    .map(([cause, count]) => `${cause} ${number(count)}`);
  return [
    `  ${colours.bold(name)}  ${sparkline(total.q50, SPARK_WIDTH)}  ${number(total.q50[0] ?? 0)} to ${end(total)} ${colours.dim(`(${number(total.q05[last] ?? 0)} to ${number(total.q95[last] ?? 0)})`)}`,
    `    on the last day ${end(stages.adult)} adults, ${end(stages.juvenile)} young, ${end(stages.brooded)} eggs; ${number(born)} young released over the run`,
    `    deaths: ${causes.length > 0 ? causes.join(', ') : 'none'}`,
  ];
}

function plantLines({ name, zone, cover, heldBack }: PlantOutlook): string[] {
  const last = cover.q50.length - 1;
  const causes = Object.entries(heldBack)
    .filter(([, share]) => share >= 0.1)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 3)
    .map(([cause, share]) => `${cause} ${Math.round(share * 100)} %`);
  return [
    `  ${colours.bold(`${name} (${zone})`)}  ${sparkline(cover.q50, SPARK_WIDTH)}  ${number(cover.q50[0] ?? 0)} to ${number(cover.q50[last] ?? 0)} % ${colours.dim(`(${number(cover.q05[last] ?? 0)} to ${number(cover.q95[last] ?? 0)})`)}`,
    ...(causes.length > 0 ? [`    lost of its growth in good light: ${causes.join(', ')}`] : []),
  ];
}

function capacityLines({ foodName, production, eaters }: FoodCapacity): string[] {
  const carried = eaters
    .filter(({ adults }) => adults >= 0.05)
    .map(
      ({ name, adults, withYoung, young, breeds }) =>
        `${number(adults)} ${name} (${withYoung + young > 0 ? `or ${number(withYoung)} small adults with ${number(young)} young` : 'never any young'}${breeds ? '' : '; too little to breed on alone'})`,
    );
  if (carried.length === 0) return [];
  return [`  ${foodName}, ${number(production)} mg C a day: ${carried.join('; ')}`];
}

function flowLines(flows: readonly FoodFlow[], document: LifeDocument): string[] {
  return document.populations.flatMap(({ id, name }) => {
    const own = flows.filter(({ eater }) => eater === id).sort((a, b) => b.mean - a.mean);
    if (own.length === 0) return [`  ${name} eat nothing`];
    return [
      `  ${colours.bold(name)}`,
      ...own.map(
        ({ foodName, mean, weekly }) =>
          `    ${foodName.padEnd(34)} ${sparkline(weekly, SPARK_WIDTH)}  ${number(mean)} mg C a week`,
      ),
    ];
  });
}

function effectLines(effects: readonly AdditionEffect[]): string[] {
  return effects.map(({ series, without, with: included, difference }) => {
    const { name, unit } = seriesSpec(series as never);
    const change = `${difference.q50 >= 0 ? '+' : ''}${number(difference.q50)}`;
    return `  ${name.padEnd(40)} ${number(without.q50)} without, ${number(included.q50)} with: ${change} ${unit} ${colours.dim(`(${number(difference.q10)} to ${number(difference.q90)} in 4 runs of 5)`)}`;
  });
}

function pestLines({ answers }: NonNullable<LifeDocument['pest']>): string[] {
  const [nothing] = answers;
  return answers.flatMap((answer) => {
    const { kind, name, pest, gone, others, hunter } = answer;
    const end = `${number(pest.q50)} on the last day ${colours.dim(`(${number(pest.q10)} to ${number(pest.q90)} in 4 runs of 5)`)}`;
    const none = gone > 0 ? `, none left in ${Math.round(100 * gone)} % of the runs` : '';
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
      `  ${colours.bold(name)}: ${end}${none}`,
      ...(told.length > 0 ? [`    others: ${told.join('; ')}`] : []),
      ...(after === undefined ? [] : [`    ${after}`]),
    ];
  });
}

/** The community for people, as text for a terminal `width` characters wide. */
export function lifeText(document: LifeDocument, width: number): string {
  const { enclosure, run, conflicts, capacity, populations, plants, flows, rivals, addition, feeding, pest } =
    document;
  const title = (text: string): string => `\n${colours.underline(text)}`;
  return [
    `\n${colours.bold(enclosure.name)}, ${run.days} days from ${calendarDay(enclosure.startDate, 0)}, ${run.members} runs, seed ${run.seed}`,
    title('What does not go together'),
    ...(conflicts.length > 0 ? conflicts.map((each) => conflictLines(each, width)) : ['  Nothing found.']),
    title('Numbers, median of the runs: first to last day (5 to 95 %)'),
    ...(populations.length > 0 ? populations.flatMap(populationLines) : ['  No animals in the file.']),
    ...(plants.length > 0
      ? [
          title('Cover of plants, median of the runs: first to last day (5 to 95 %)'),
          ...plants.flatMap(plantLines),
        ]
      : []),
    title('What each food carries: full-grown adults kept alive, or a population that holds its number'),
    ...capacity.flatMap(capacityLines),
    title('Who eats what, expected run'),
    ...flowLines(flows, document),
    ...(rivals.length > 0
      ? [title('Who takes whose food'), ...rivals.map(({ sentence }) => wrapped(sentence, width, '  '))]
      : []),
    ...(addition
      ? [
          title(`With ${addition.adults} ${addition.species} added, on the last day`),
          ...effectLines(addition.effects),
        ]
      : []),
    ...(feeding
      ? [title('How to feed'), ...feeding.sentences.map((sentence) => wrapped(sentence, width, '  '))]
      : []),
    ...(pest ? [title(`What can be done against ${pest.name}`), ...pestLines(pest)] : []),
    '',
  ].join('\n');
}
