/** A text as it was, and what was done to it next. */
export interface Step {
  readonly text: string;
  readonly words: string;
}

/** The text on the desk, with everything that can be undone and done again. */
export interface History {
  readonly past: readonly Step[];
  readonly text: string;
  readonly future: readonly Step[];
  /** Changes under the same key that follow one another are undone together. */
  readonly merge: string | undefined;
}

const MOST_STEPS = 300;

export function historyOf(text: string): History {
  return { past: [], text, future: [], merge: undefined };
}

export interface Change {
  readonly text: string;
  /** What was done, as a short clause: "Water level". */
  readonly words: string;
  readonly merge?: string | undefined;
}

/** The desk after a change; what was undone before can no longer be done again. */
export function changed(history: History, { text, words, merge }: Change): History {
  if (text === history.text) return history;
  const together = merge !== undefined && merge === history.merge && history.past.length > 0;
  const past = together ? history.past : [...history.past, { text: history.text, words }].slice(-MOST_STEPS);
  return { past, text, future: [], merge };
}

/** The desk before the last change. */
export function undone(history: History): History {
  const last = history.past.at(-1);
  if (!last) return history;
  return {
    past: history.past.slice(0, -1),
    text: last.text,
    future: [{ text: history.text, words: last.words }, ...history.future],
    merge: undefined,
  };
}

/** The desk after the change that was undone last. */
export function redone(history: History): History {
  const [next, ...rest] = history.future;
  if (!next) return history;
  return {
    past: [...history.past, { text: history.text, words: next.words }],
    text: next.text,
    future: rest,
    merge: undefined,
  };
}

/** No more changes join those made so far. */
export function settled(history: History): History {
  return history.merge === undefined ? history : { ...history, merge: undefined };
}

/**
 * The history stood at a text: back or on to the step that holds it, or, where no step does, with that text as one change
 * more, made elsewhere.
 */
export function standingAt(history: History, text: string): History {
  const reached = (step: (from: History) => History): History | undefined => {
    let [at, next] = [history, step(history)];
    while (next !== at && next.text !== text) [at, next] = [next, step(next)];
    return next.text === text ? next : undefined;
  };
  if (history.text === text) return history;
  return (
    reached(undone) ?? reached(redone) ?? changed(history, { text, words: 'What was changed elsewhere' })
  );
}
