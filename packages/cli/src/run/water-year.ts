import {
  type EnclosureContent,
  type MeasuredStart,
  sourceWaters,
  type WaterDocument,
} from '@shoreglass/contract';
import {
  type AheadDocument,
  type BufferAnswer,
  type BufferQuestion,
  changeLimits,
  expectedRun,
  feltWater,
  type Inquiry,
  type OutlookOptions,
  type PieceEffect,
  type Plan,
  piecesWithEffect,
  prepareOutlook,
  type SplitChange,
  sizeBuffer,
  summarise,
  withAndWithout,
} from '@shoreglass/engine';
import { progressLine } from '../print/progress.ts';
import { inquire, type TrialThreads, trialThreads } from './inquire.ts';
import { allMembers } from './members.ts';

/** Series of the water, in the order in which they are shown. */
const WATER_SERIES = [
  'pH',
  'pHSwing',
  'KH',
  'GH',
  'conductivity',
  'dissolvedOrganicCarbon',
  'totalAmmonia',
  'nitrite',
  'nitrate',
  'phosphate',
  'copper',
  'oxygen',
  'oxygenLow',
  'oxygenHigh',
  'waterTemperature',
] as const;

export interface WaterYear {
  readonly plan: Plan;
  readonly content: EnclosureContent;
  readonly options: OutlookOptions;
  readonly measured?: MeasuredStart;
  readonly change?: SplitChange;
  readonly question?: Omit<BufferQuestion, 'seed'>;
}

async function outlook(plan: Plan, options: OutlookOptions): Promise<AheadDocument> {
  const prepared = prepareOutlook(plan, options);
  const progress = progressLine(`${plan.name}, the water of ${options.days} days`, options.members);
  const expected = expectedRun(prepared);
  const batches = await allMembers({ plan, options }, (done) => progress.to(done));
  progress.end();
  return summarise(prepared, expected, batches);
}

async function asked<Answer>(
  threads: TrialThreads,
  inquiry: Inquiry<Answer>,
  { title, runs }: { readonly title: string; readonly runs: number },
): Promise<Answer> {
  const progress = progressLine(title, runs);
  const answer = await inquire(threads, inquiry, ({ done, expected }) => progress.to(done, expected));
  progress.end();
  return answer;
}

/** Members of the small ensemble of pieces, fewer where the outlook itself has fewer. */
const PIECE_MEMBERS = 24;
const RUNS_A_BUFFER = 300;

interface Asked {
  readonly pieces: PieceEffect[];
  readonly buffer: BufferAnswer | undefined;
}

async function ask({ plan, options, question }: WaterYear): Promise<Asked> {
  const { days, seed } = options;
  const threads = trialThreads(plan);
  try {
    const members = Math.min(PIECE_MEMBERS, options.members);
    const pieces = await asked(threads, withAndWithout(plan, { days, seed, members }), {
      title: 'With and without each piece',
      runs: (1 + members) * (1 + piecesWithEffect(plan).length),
    });
    if (!question) return { pieces, buffer: undefined };
    const buffer = await asked(threads, sizeBuffer(plan, { ...question, seed }), {
      title: 'Buffer',
      runs: RUNS_A_BUFFER,
    });
    return { pieces, buffer };
  } finally {
    await threads.end();
  }
}

/** The water of a plan over its days as one document, progress shown on standard error. */
export async function waterYear(year: WaterYear): Promise<WaterDocument> {
  const { plan, content, options, measured, change } = year;
  const ahead = await outlook(plan, options);
  const { pieces, buffer } = await ask(year);
  const shown = new Set<string>(WATER_SERIES);
  return {
    enclosure: ahead.enclosure,
    run: ahead.run,
    waters: sourceWaters(content, plan),
    start: feltWater({ composition: plan.water.fill, temperature: plan.room.temperature.mean }, plan.room),
    ...(measured && { measured: { readings: measured.readings, inferred: measured.inferred } }),
    series: Object.fromEntries(
      WATER_SERIES.flatMap((id) => (ahead.series[id] ? [[id, ahead.series[id]]] : [])),
    ),
    turningPoints: ahead.turningPoints.filter(({ subject }) => shown.has(subject)),
    budgets: ahead.budgets,
    pieces,
    changeLimits: changeLimits(plan),
    ...(change && { change }),
    ...(buffer && { buffer }),
    notModelled: ahead.notModelled,
  };
}
