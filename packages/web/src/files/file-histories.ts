import type { EnclosureFile } from '@shoreglass/contract';
import { useMemo } from 'react';
import { create } from 'zustand';
import { changed, type History, historyOf, standingAt } from './history.ts';
import { historyOfText, holds, textOfHistory } from './history-text.ts';

interface Histories {
  readonly byId: Readonly<Record<string, History>>;
  /** What was done last to a file, as a sentence, and to which. */
  readonly told: { readonly id: string; readonly words: string } | undefined;
}

/** Everything done to each file in this tab, in whatever place: one way back for all of them. */
export const useFileHistories = create<Histories>(() => ({ byId: {}, told: undefined }));

/** The history of a file, stood at a text of it: what the server has unless another is given. */
export function historyFor(file: Opened, at = file.text): History {
  return standingAt(useFileHistories.getState().byId[file.id] ?? historyKept(file), at);
}

/** The same, kept up to date. */
export function useHistoryFor(file: Opened): History {
  const { id, text } = file;
  const here = useFileHistories((state) => state.byId[id]);
  const kept = useMemo(() => historyKept({ id, text }), [id, text]);
  return standingAt(here ?? kept, text);
}

type Opened = Pick<EnclosureFile, 'id' | 'text'>;

export function keepHistory(id: string, history: History): void {
  useFileHistories.setState(({ byId }) => ({ byId: { ...byId, [id]: history } }));
  const text = textOfHistory(history);
  inTab((storage) => {
    // Removed first, so that nothing outdated is left where there is no room for more.
    storage.removeItem(keyOf(id));
    if (text !== undefined) storage.setItem(keyOf(id), text);
  });
}

const keyOf = (id: string) => `shoreglass.history.${id}`;

/**
 * What this tab keeps over a reload, also one the browser makes by itself after a while in the background. A history in
 * which the text of the server does not occur is of another state of the file, and counts for nothing.
 */
function historyKept({ id, text }: Opened): History {
  const kept = inTab((storage) => storage.getItem(keyOf(id)));
  const history = typeof kept === 'string' ? historyOfText(kept) : undefined;
  return history && holds(history, text) ? history : historyOf(text);
}

/** The tab's own storage; where there is none or it is full, steps last as long as the page. */
function inTab<T>(use: (storage: Storage) => T): T | undefined {
  try {
    return use(sessionStorage);
  } catch {
    return undefined;
  }
}

/** Says of a file what was done to it. */
export function tellOf(id: string, words: string): void {
  useFileHistories.setState({ told: { id, words } });
}

/** A text was saved in place of another, perhaps under another name. */
export function recordSaved(before: Pick<EnclosureFile, 'id' | 'text'>, after: EnclosureFile, words: string) {
  keepHistory(after.id, changed(historyFor(before), { text: after.text, words }));
}
