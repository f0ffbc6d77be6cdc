import { create } from 'zustand';
import type { Draft } from './draft.ts';

interface Drafts {
  /** Id and version of the file it belongs to. */
  readonly of: string;
  readonly draft: Draft | undefined;
  keep(of: string, draft: Draft | undefined): void;
}

/** What stands on the sheet and is not in the file yet; kept while the page is open, so that other sheets can be looked at. */
export const useDrafts = create<Drafts>((set) => ({
  of: '',
  draft: undefined,
  keep: (of, draft) => set({ of, draft }),
}));
