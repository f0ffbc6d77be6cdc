import type { EnclosureFile } from '@shoreglass/contract';
import { create } from 'zustand';
import { changed, type History, historyOf, standingAt } from './history.ts';

interface Histories {
  readonly byId: Readonly<Record<string, History>>;
  /** What was done last to a file, as a sentence, and to which. */
  readonly told: { readonly id: string; readonly words: string } | undefined;
}

/** Everything done to each file since the page was opened, in whatever place: one way back for all of them. */
export const useFileHistories = create<Histories>(() => ({ byId: {}, told: undefined }));

/** The history of a file, stood at a text of it: what the server has unless another is given. */
export function historyFor({ id, text }: Pick<EnclosureFile, 'id' | 'text'>, at = text): History {
  return standingAt(useFileHistories.getState().byId[id] ?? historyOf(text), at);
}

export function keepHistory(id: string, history: History): void {
  useFileHistories.setState(({ byId }) => ({ byId: { ...byId, [id]: history } }));
}

/** Says of a file what was done to it. */
export function tellOf(id: string, words: string): void {
  useFileHistories.setState({ told: { id, words } });
}

/** A text was saved in place of another, perhaps under another name. */
export function recordSaved(before: Pick<EnclosureFile, 'id' | 'text'>, after: EnclosureFile, words: string) {
  keepHistory(after.id, changed(historyFor(before), { text: after.text, words }));
}
