import type { History, Step } from './history.ts';

/** Characters a kept history may take; steps furthest from the text on the desk are left out first. */
const MOST_CHARACTERS = 400_000;

/** A text as what differs from a neighbouring one: so many characters alike before and behind, and what stands between. */
type Difference = readonly [head: number, tail: number, middle: string];
type KeptStep = readonly [words: string, ...Difference];

interface KeptHistory {
  readonly text: string;
  /** From the text outwards: each step differs from the one before it in the list. */
  readonly past: readonly KeptStep[];
  readonly future: readonly KeptStep[];
}

/** A history as one short text: steps as what changed in them; nothing when the text alone is too long to keep. */
export function textOfHistory({ text, past, future }: History, most = MOST_CHARACTERS): string | undefined {
  const room = most - text.length;
  if (room < 0) return undefined;
  const back = differences(text, [...past].reverse(), room);
  const on = differences(text, future, room - back.length);
  const kept: KeptHistory = { text, past: back.steps, future: on.steps };
  return JSON.stringify(kept);
}

/** What a short text says; nothing when it cannot be read. */
export function historyOfText(kept: string): History | undefined {
  try {
    const { text, past, future } = JSON.parse(kept) as Partial<KeptHistory>;
    if (typeof text !== 'string' || !Array.isArray(past) || !Array.isArray(future)) return undefined;
    return {
      text,
      past: applied(text, past).reverse(),
      future: applied(text, future),
      merge: undefined,
    };
  } catch {
    return undefined;
  }
}

/** Whether a text is on the desk now or was at some step. */
export function holds({ text, past, future }: History, wanted: string): boolean {
  return text === wanted || [...past, ...future].some((step) => step.text === wanted);
}

/** Characters that a step takes beside its words and what changed. */
const AROUND = 24;

function differences(from: string, steps: readonly Step[], room: number) {
  const kept: KeptStep[] = [];
  let [before, length] = [from, 0];
  for (const { text, words } of steps) {
    const difference = differenceOf(before, text);
    length += difference[2].length + words.length + AROUND;
    if (length > room) break;
    kept.push([words, ...difference]);
    before = text;
  }
  return { steps: kept, length: Math.min(length, room) };
}

function differenceOf(from: string, to: string): Difference {
  const shorter = Math.min(from.length, to.length);
  let head = 0;
  while (head < shorter && from[head] === to[head]) head++;
  let tail = 0;
  while (tail < shorter - head && from[from.length - 1 - tail] === to[to.length - 1 - tail]) tail++;
  return [head, tail, to.slice(head, to.length - tail)];
}

/** @throws TypeError when a step is none */
function applied(from: string, steps: readonly unknown[]): Step[] {
  let before = from;
  return steps.map((step) => {
    if (!isStep(step, before.length)) throw new TypeError('Not a step of a history.');
    const [words, head, tail, middle] = step;
    before = before.slice(0, head) + middle + before.slice(before.length - tail);
    return { text: before, words };
  });
}

function isStep(step: unknown, length: number): step is KeptStep {
  if (!Array.isArray(step) || step.length !== 4) return false;
  const [words, head, tail, middle] = step as unknown[];
  const isCount = (value: unknown): value is number => Number.isInteger(value) && (value as number) >= 0;
  return (
    typeof words === 'string' &&
    typeof middle === 'string' &&
    isCount(head) &&
    isCount(tail) &&
    head + tail <= length
  );
}
