import type { EnclosureEdit, Finding, MeasuredStart, Unread, WrittenAnalysis } from '@shoreglass/contract';
import {
  type AheadDocument,
  answerWith,
  type FeedingPlan,
  type Hunter,
  type Inquiry,
  type LifeDocument,
  type MemberBatch,
  type OutlookOptions,
  type Plan,
  type Population,
  type RecipeRequest,
  type SplitChange,
  type TrialOrder,
  type TrialProgress,
} from '@shoreglass/engine';
import type { SectionPlan } from '@shoreglass/figures';
import type { CountsReading, CountsWish } from './worker/counts-orders.ts';
import { type EngineThread, startThread } from './worker/engine-thread.ts';
import type { FeedingWish, LifeReading } from './worker/life-orders.ts';
import type { ChangeOver, Edit, EditedText, Recipes, Shelf } from './worker/messages.ts';

export interface OutlookRequest extends OutlookOptions {
  readonly fileName: string;
  readonly text: string;
}

/** A plan at hand, such as one that starts from readings. */
export interface PlanRequest extends OutlookOptions {
  readonly plan: Plan;
}

/** What is told of an outlook as it comes; the last is `complete` or `failed`. */
export type OutlookEvent =
  | { readonly kind: 'plan'; readonly plan: Plan }
  | { readonly kind: 'expected'; readonly document: AheadDocument }
  | { readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly kind: 'complete'; readonly document: AheadDocument }
  | { readonly kind: 'failed'; readonly message: string; readonly findings: readonly Finding[] };

/** What is told of an inquiry as it goes; the last is `answer` or `failed`. */
export type InquiryEvent<Answer> =
  | ({ readonly kind: 'progress' } & TrialProgress)
  | { readonly kind: 'answer'; readonly answer: Answer }
  | { readonly kind: 'failed'; readonly message: string };

const BATCH = 5;
const MOST_THREADS = 4;

/** Looks ahead on a text or a plan in workers; returns the way to stop it, after which nothing more is told. */
export function lookAhead(
  request: OutlookRequest | PlanRequest,
  tell: (event: OutlookEvent) => void,
): () => void {
  const threads: EngineThread[] = [];
  let stopped = false;
  const start = () => {
    const thread = startThread();
    threads.push(thread);
    return thread;
  };
  const stop = () => {
    stopped = true;
    for (const thread of threads) thread.end();
  };
  const say = (event: OutlookEvent) => {
    if (!stopped) tell(event);
  };
  compute(request, { start, say })
    .catch((error: Error) => say({ kind: 'failed', message: error.message, findings: [] }))
    .finally(stop);
  return stop;
}

interface Means {
  readonly start: () => EngineThread;
  readonly say: (event: OutlookEvent) => void;
}

async function compute(request: OutlookRequest | PlanRequest, means: Means): Promise<void> {
  const first = means.start();
  const { days, members, seed } = request;
  const read = 'plan' in request ? { plan: request.plan, findings: [] } : await first.ask(readOrder(request));
  const { plan, findings } = read;
  if (plan) return computePlan(first, plan, { days, members, seed }, means);
  means.say({ kind: 'failed', message: 'The text has errors and cannot be run.', findings });
}

const readOrder = ({ text, fileName }: OutlookRequest) => ({ do: 'read', text, fileName }) as const;

async function computePlan(
  first: EngineThread,
  plan: Plan,
  options: OutlookOptions,
  { start, say }: Means,
): Promise<void> {
  say({ kind: 'plan', plan });
  await first.ask({ do: 'prepare', plan, options });
  say({ kind: 'expected', document: await first.ask({ do: 'expected' }) });
  const others = await Promise.all(
    Array.from({ length: threadCount() - 1 }, () => preparedThread(start(), plan, options)),
  );
  const batches = await allMembers([first, ...others], options.members, say);
  const moved = batches.flatMap(({ series, books }) => [
    series.buffer as ArrayBuffer,
    books.buffer as ArrayBuffer,
  ]);
  say({ kind: 'complete', document: await first.ask({ do: 'summarise', batches }, moved) });
}

async function preparedThread(
  thread: EngineThread,
  plan: Plan,
  options: OutlookOptions,
): Promise<EngineThread> {
  await thread.ask({ do: 'prepare', plan, options });
  return thread;
}

/** Has every thread run batches until none is left; the result does not depend on how many threads there are. */
async function allMembers(
  threads: readonly EngineThread[],
  members: number,
  say: Means['say'],
): Promise<MemberBatch[]> {
  const batches: MemberBatch[] = [];
  let next = 0;
  let done = 0;
  const work = async (thread: EngineThread) => {
    while (next < members) {
      const from = next;
      next = Math.min(members, from + BATCH);
      const batch = await thread.ask({ do: 'members', from, to: next });
      batches.push(batch);
      done += batch.to - batch.from;
      say({ kind: 'progress', done, of: members });
    }
  };
  await Promise.all(threads.map(work));
  return batches;
}

/** A plan that starts with the water as read, and what had to be inferred; or what cannot be read. */
export function startFrom(plan: Plan, readings: string): Promise<MeasuredStart | Unread> {
  return readingThread().ask({ do: 'start from', plan, readings });
}

/** Replacing part of the pool, split over as many days as those who live there need. */
export function splitOver(change: ChangeOver): Promise<SplitChange> {
  return readingThread().ask({ do: 'change over', change });
}

/** Answers a question that needs runs, in workers; returns the way to stop it, after which nothing more is told. */
export function inquire<Answer>(
  plan: Plan,
  inquiry: Inquiry<Answer>,
  tell: (event: InquiryEvent<Answer>) => void,
): () => void {
  const threads = Array.from({ length: threadCount() }, () => startThread());
  let stopped = false;
  const stop = () => {
    stopped = true;
    for (const thread of threads) thread.end();
  };
  const say = (event: InquiryEvent<Answer>) => {
    if (!stopped) tell(event);
  };
  const answer = async () => {
    const ready = threads.map((thread) => thread.ask({ do: 'hold', plan }));
    await Promise.all(ready);
    let turn = 0;
    const ask = (order: TrialOrder) => {
      turn += 1;
      return (threads[turn % threads.length] as EngineThread).ask({ do: 'trial', order });
    };
    return answerWith(inquiry, ask, (so) => say({ kind: 'progress', ...so }));
  };
  answer()
    .then((result) => say({ kind: 'answer', answer: result }))
    .catch((error: Error) => say({ kind: 'failed', message: error.message }))
    .finally(stop);
  return stop;
}

/** Where there are more than two processors, one is left to the page. */
function threadCount(): number {
  const processors = navigator.hardwareConcurrency;
  return Math.min(MOST_THREADS, processors > 2 ? processors - 1 : processors);
}

let reading: EngineThread | undefined;

function readingThread(): EngineThread {
  reading ??= startThread();
  return reading;
}

function readText(text: string, fileName: string) {
  return readingThread().ask({ do: 'read', text, fileName });
}

/** What a text's water can be mixed of and buffered with. */
export function shelfOfText(text: string, fileName: string): Promise<Shelf> {
  return readingThread().ask({ do: 'shelf', text, fileName });
}

/** A text with values changed, comments kept, and what is found in it then. */
export function editText(text: string, fileName: string, edits: readonly Edit[]): Promise<EditedText> {
  return readingThread().ask({ do: 'edit', text, fileName, edits });
}

/** A typed water report, read. */
export function analyse(written: Readonly<Record<string, string>>): Promise<WrittenAnalysis> {
  return readingThread().ask({ do: 'analyse', written });
}

/** How to mix a water: the closest recipe, or several to compare. */
export function recipesFor(request: RecipeRequest, compare: boolean): Promise<Recipes> {
  return readingThread().ask({ do: 'recipes', request, compare });
}

/** What is found in a text, and the name it gives its enclosure. */
export async function checkText(text: string, fileName: string) {
  const { name, findings } = await readText(text, fileName);
  return { name, findings };
}

/** What the section drawing of a text needs; null where the text has errors. */
export async function sectionOfText(text: string, fileName: string): Promise<SectionPlan | null> {
  return (await readText(text, fileName)).plan ?? null;
}

/** Who lives in a text, or would after edits, and what does not go together. */
export function lifeOfText(
  text: string,
  fileName: string,
  edits: readonly EnclosureEdit[],
): Promise<LifeReading> {
  return readingThread().ask({ do: 'life', text, fileName, edits });
}

/** Who eats what, what each food carries, births and deaths, by the expected run. */
export function communityOf(
  plan: Plan,
  { days, seed }: { readonly days: number; readonly seed: number },
): Promise<LifeDocument> {
  return readingThread().ask({ do: 'community', plan, days, seed });
}

/** A species of the library as a population without animals. */
export function newcomerOf(species: string, zone: string): Promise<Population> {
  return readingThread().ask({ do: 'newcomer', species, zone });
}

/** Animals of the library that could be put in against one of those who live here, and would be fine in its room. */
export function huntersOf(pest: Pick<Population, 'id' | 'zone'>, plan: Plan): Promise<readonly Hunter[]> {
  return readingThread().ask({ do: 'hunters', pest, plan });
}

/** What typed counts tell, or what is wrong with them. */
export function readingOfCounts(wish: CountsWish): Promise<CountsReading> {
  return readingThread().ask({ do: 'counts', wish });
}

/** How to feed for the adults wanted, by trial runs in a worker of its own; and the way to stop them. */
export function planFeeding(
  plan: Plan,
  wish: FeedingWish,
): { readonly answer: Promise<FeedingPlan>; readonly stop: () => void } {
  const thread = startThread();
  const answer = thread.ask({ do: 'feeding', plan, wish }).finally(() => thread.end());
  return { answer, stop: () => thread.end() };
}
