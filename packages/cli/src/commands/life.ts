import { huntersOf, inhabitantOf, inhabitantsOf, lifePopulationOf, placeFactsOf } from '@shoreglass/contract';
import {
  answersToPest,
  conflictsOf,
  expectedRun,
  feedingPlan,
  type LifeAnswers,
  lifeDocument,
  type Plan,
  prepareOutlook,
  type TargetAdults,
  whatIfAdded,
} from '@shoreglass/engine';
import { library, UnknownEntry } from '@shoreglass/library';
import type { Command } from 'commander';
import { BadInput } from '../exit-codes.ts';
import { lifeText } from '../print/life.ts';
import { progressLine } from '../print/progress.ts';
import { widthUpTo } from '../print/width.ts';
import { allMembers } from '../run/members.ts';
import { readPlanAndContent } from '../run/read-enclosure.ts';
import { wholeNumber } from '../whole-number.ts';
import { showCounts } from './counts.ts';
import { type CountsChoice, WITH_COUNTS, withCountsOptions } from './counts-options.ts';
import { type FeedingChoice, feedingChoice, WITH_HOLD, withFeedingOptions } from './feeding-options.ts';
import { showLifeTable } from './life-table.ts';
import { type Belonging, both, isGiven, refuseAstray } from './options-given.ts';

interface LifeOptions extends FeedingChoice, CountsChoice {
  readonly days: number;
  readonly members: number;
  readonly seed: number;
  readonly add?: Wanted;
  readonly hold?: readonly Wanted[];
  readonly pest?: string;
  readonly from?: number;
  readonly animal?: string;
  readonly temperature?: string;
  readonly json: boolean;
}

interface Wanted {
  readonly species: string;
  readonly count: number;
}

/** Reads 'species:N'. */
function wantedOf(text: string): Wanted {
  const [species = '', number = ''] = text.split(':');
  const count = Number(number);
  if (!species || !(Number.isInteger(count) && count >= 1 && count <= 10_000))
    throw new BadInput(
      `'${text}' is not a species and a number from 1 to 10000. Write it as hyalella-azteca:20.`,
    );
  try {
    library.organism(species);
  } catch (error) {
    if (error instanceof UnknownEntry) throw new BadInput(error.message);
    throw error;
  }
  return { species, count };
}

/** Reads one more 'species:N' beside those before it, each species once. */
function heldOf(text: string, before: readonly Wanted[] = []): Wanted[] {
  const wanted = wantedOf(text);
  if (before.some(({ species }) => species === wanted.species))
    throw new BadInput(
      `--hold names ${wanted.species} twice. Give each species once, with the number wanted.`,
    );
  return [...before, wanted];
}

/** Reads the name of a species. */
function speciesOf(text: string): string {
  return wantedOf(`${text}:1`).species;
}

/** The population of a pest. @throws BadInput when it does not live there */
function pestIn(plan: Plan, species: string): Plan['populations'][number] {
  const pest = plan.populations.find(({ id }) => id === species);
  if (pest) return pest;
  const here = plan.populations.map(({ id }) => id).join(', ');
  throw new BadInput(
    `--pest: ${species} does not live in this enclosure${here ? ` (${here} do)` : ''}. Put it into the file under animals; a few that came along with plants will do.`,
  );
}

function pestAnswers(
  plan: Plan,
  species: string,
  { days, members, seed, from = PEST_NOTICED }: LifeOptions,
): LifeAnswers['pest'] {
  return {
    species,
    name: library.organism(species).name,
    answers: answersToPest(plan, species, {
      days,
      members: Math.min(members, MEMBERS_TO_COMPARE),
      seed,
      hunters: huntersOf(pestIn(plan, species), library, placeFactsOf(plan).expected),
      from: Math.min(from, days - 1),
    }),
  };
}

const WIDEST = 100;
/** Day on which a pest is noticed, where nothing else is said. */
const PEST_NOTICED = 60;
const MEMBERS_TO_COMPARE = 16;

function answersTo(plan: Plan, options: LifeOptions, command: Command): LifeAnswers {
  const { add, hold, pest, days, members, seed } = options;
  const zone = plan.zones[0]?.id ?? '';
  const addition = add
    ? {
        species: add.species,
        adults: add.count,
        effects: whatIfAdded(
          plan,
          { population: lifePopulationOf(library.organism(add.species), zone), adults: add.count },
          { days, members: Math.min(members, MEMBERS_TO_COMPARE), seed },
        ),
      }
    : undefined;
  const targets: TargetAdults = Object.fromEntries(
    (hold ?? []).map(({ species, count }) => [species, count]),
  );
  const fresh = { seed, members: isGiven(command, 'members') ? members : undefined };
  const feeding = hold ? feedingPlan(plan, targets, feedingChoice(options, fresh)) : undefined;
  return {
    ...(addition ? { addition } : {}),
    ...(feeding ? { feeding } : {}),
    ...(pest ? { pest: pestAnswers(plan, pest, options)! } : {}),
  };
}

/** What asks about an enclosure file; beside one animal by itself it would be passed over in silence. */
const OF_A_FILE: Belonging = {
  options: ['days', 'members', 'seed', 'add', 'hold', 'pest', 'from', 'place', 'at'],
  say: [
    'asks about an enclosure file and cannot go with --animal.',
    'ask about an enclosure file and cannot go with --animal.',
  ],
  mend: [
    'Leave it out, or give the file in place of --animal.',
    'Leave them out, or give the file in place of --animal.',
  ],
};

/** What asks about one animal by itself. */
const OF_AN_ANIMAL: Belonging = {
  options: ['temperature'],
  say: both('goes with --animal; an enclosure file has its own climate.'),
  mend: both('Leave it out, or set the room in the file.'),
};

const WITH_PEST: Belonging = {
  options: ['from'],
  to: 'pest',
  say: both('goes with --pest:'),
  mend: both('name the species that grows too many.'),
};

/** Refuses what one kind of question is not asked. @throws BadInput */
function refuseMixed(file: string | undefined, options: LifeOptions, command: Command): void {
  const { animal, days, from } = options;
  if (animal !== undefined) {
    if (file !== undefined)
      throw new BadInput('Give an enclosure file, or --animal with one animal, not both.');
    refuseAstray(command, OF_A_FILE);
    return;
  }
  if (file === undefined) throw new BadInput('Give an enclosure file, or --animal with one animal.');
  for (const each of [OF_AN_ANIMAL, WITH_PEST, WITH_HOLD]) refuseAstray(command, each);
  if (from !== undefined && from >= days)
    throw new BadInput(
      `--from ${from} comes after the last day of a run of ${days} days. Give a day before it, or more --days.`,
    );
}

async function showLife(file: string | undefined, options: LifeOptions, command: Command): Promise<void> {
  const { animal, temperature } = options;
  if (options.counts !== undefined) return showCounts(file, options, command);
  refuseAstray(command, WITH_COUNTS);
  const columns = widthUpTo(WIDEST);
  refuseMixed(file, options, command);
  if (animal !== undefined || file === undefined) {
    showLifeTable(
      { animal: animal ?? '', json: options.json, ...(temperature === undefined ? {} : { temperature }) },
      columns,
    );
    return;
  }
  const { plan, content } = readPlanAndContent(file);
  const { days, members, seed, add, pest, json } = options;
  if (pest !== undefined) pestIn(plan, pest);
  const inhabitants = inhabitantsOf(content, library);
  const joined =
    add && !inhabitants.some(({ id }) => id === add.species)
      ? [...inhabitants, inhabitantOf(library.organism(add.species), add.count)]
      : inhabitants;
  const conflicts = conflictsOf(joined, placeFactsOf(plan));
  const prepared = prepareOutlook(plan, { days, members, seed });
  const progress = progressLine(`${plan.name}: ${days} days`, members);
  const expected = expectedRun(prepared);
  const batches = await allMembers({ plan, options: { days, members, seed } }, progress.to);
  progress.end();
  const answers = answersTo(plan, options, command);
  const document = lifeDocument(prepared, { expected, batches }, conflicts, answers);
  process.stdout.write(json ? `${JSON.stringify(document)}\n` : `${lifeText(document, columns)}\n`);
}

/** `shoreglass life FILE`: who can live together, what they eat, how many there will be. */
export function addLife(program: Command): void {
  const command = program
    .command('life')
    .description('tell who can live together in an enclosure, what each food carries, how many there will be')
    .argument('[file]', 'enclosure file (YAML), or the name of an example; none with --animal')
    .option('--days <days>', 'length of the outlook, 1 to 1500', wholeNumber(1, 1500), 300)
    .option('--members <runs>', 'runs in the ensemble, 2 to 2000', wholeNumber(2, 2000), 50)
    .option('--seed <number>', 'same seed, same answer', wholeNumber(0, 4294967295), 1)
    .option('--add <species:N>', 'show what adding N adults on the first day does', wantedOf)
    .option(
      '--hold <species:N>',
      'find how to feed so that N adults are held; may be given several times',
      heldOf,
    );
  withCountsOptions(withFeedingOptions(command))
    .option('--pest <species>', 'compare what can be done against a species that grows too many', speciesOf)
    .option(
      '--from <day>',
      `with --pest: day of the run on which hunters come, baits begin and less feed is given; ${PEST_NOTICED} when left out`,
      wholeNumber(0, 1499),
    )
    .option(
      '--animal <species>',
      'the life table of one animal of the library, or of your file of one, by itself with ample food',
    )
    .option('--temperature <T>', 'with --animal: of its water and air, as 24 or "75 °F"')
    .option('--json', 'print one JSON document (docs/schema/life.schema.json) and nothing else', false)
    .action(showLife);
}
