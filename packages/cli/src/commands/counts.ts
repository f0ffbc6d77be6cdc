import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import {
  type ComputedBeside,
  countsAnswer,
  firstDayInRun,
  problemLine,
  readCounts,
  type WrittenCounts,
} from '@shoreglass/contract';
import type { Command } from 'commander';
import { BadInput } from '../exit-codes.ts';
import { countsText } from '../print/counts.ts';
import { widthUpTo } from '../print/width.ts';
import { computeOutlook } from '../run/outlook.ts';
import { readPlan } from '../run/read-enclosure.ts';
import { type CountsChoice, NOT_OF_COUNTS } from './counts-options.ts';
import { animalOf, temperatureOf } from './life-table.ts';
import { type Belonging, both, refuseAstray } from './options-given.ts';

/** What `life --counts` is asked beside the counts. */
export interface CountsOptions extends CountsChoice {
  readonly animal?: string;
  readonly temperature?: string;
  readonly members: number;
  readonly seed: number;
  readonly json: boolean;
}

const OF_A_FILE: Belonging = {
  options: ['members', 'seed'],
  say: both('asks about an enclosure file.'),
  mend: both('Give the file as well, or leave it out.'),
};

const WIDEST = 100;
const LONGEST_RUN = 1500;
const MOST_BYTES = 1_000_000;

/** Counts of a file of the user's. @throws BadInput with one line per problem */
function countsAt(path: string): WrittenCounts {
  const mend = 'Give a file with one count a line, such as: 2026-03-01, 12';
  if (!existsSync(path)) throw new BadInput(`There is no file ${path}. ${mend}`);
  const about = statSync(path);
  if (!about.isFile()) throw new BadInput(`${path} is not a file. ${mend}`);
  if (about.size > MOST_BYTES)
    throw new BadInput(`${path} holds ${about.size} bytes, too many for counts. ${mend}`);
  const written = readCounts(readFileSync(path, 'utf8'), basename(path));
  if (written.problems) throw new BadInput(written.problems.map(problemLine).join('\n'), written.problems);
  return written;
}

/** The computed numbers of a population of an enclosure, up to the last count. @throws BadInput */
async function computedNumbers(
  file: string,
  written: WrittenCounts,
  { animal, members, seed }: CountsOptions,
): Promise<ComputedBeside> {
  const plan = readPlan(file);
  const living = plan.populations.map(({ id }) => id).join(', ');
  const here = living ? `; ${living} do` : '';
  if (animal === undefined)
    throw new BadInput(`Say with --animal whom the counts are of${living ? `: ${living}` : ''}.`);
  if (!plan.populations.some(({ id }) => id === animal))
    throw new BadInput(`--animal: ${animal} does not live in this enclosure${here}.`);
  const last = firstDayInRun(written, plan.startDate) + (written.series.counts.at(-1)?.day ?? 0);
  if (!(last >= 1 && last <= LONGEST_RUN))
    throw new BadInput(
      `The last count lies on day ${last} of the enclosure's run, which begins on ${plan.startDate}. Counts can be set beside days 1 to ${LONGEST_RUN}; correct the file's start, or leave the file out.`,
    );
  const outlook = await computeOutlook(plan, {
    days: Math.min(Math.ceil(last) + 1, LONGEST_RUN),
    members,
    seed,
  });
  return {
    enclosure: plan.name,
    startDate: plan.startDate,
    numbers: outlook.series[`population:${animal}`]!,
  };
}

/** `life --counts`: what a keeper's counts tell. @throws BadInput */
export async function showCounts(
  file: string | undefined,
  options: CountsOptions,
  command: Command,
): Promise<void> {
  const { counts = '', animal, temperature, threshold, below, within, json } = options;
  refuseAstray(command, NOT_OF_COUNTS);
  if (file === undefined) refuseAstray(command, OF_A_FILE);
  if (temperature !== undefined && animal === undefined)
    throw new BadInput('--temperature goes with --animal: name the species whose growth it is asked for.');
  const written = countsAt(counts);
  if (threshold !== undefined && !written.series.warmth)
    throw new BadInput(
      `--threshold asks about warmth, and ${basename(counts)} has no columns 'coldest' and 'warmest'. Add them, or leave the option out.`,
    );
  const species = animal === undefined ? undefined : animalOf(animal);
  const computed = file === undefined ? undefined : await computedNumbers(file, written, options);
  const answer = countsAnswer(
    written,
    {
      ...(below === undefined ? {} : { below }),
      ...(within === undefined ? {} : { within }),
      ...(threshold === undefined ? {} : { threshold: temperatureOf(threshold, '--threshold') }),
      ...(species ? { animal: species } : {}),
      ...(temperature === undefined ? {} : { temperature: temperatureOf(temperature) }),
    },
    computed,
  );
  process.stdout.write(
    json ? `${JSON.stringify(answer)}\n` : `${countsText(answer, basename(counts), widthUpTo(WIDEST))}\n`,
  );
}
