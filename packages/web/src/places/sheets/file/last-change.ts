import { create } from 'zustand';

/** The last change a sheet made to an enclosure file, so that it can be taken back. */
export interface Change {
  /** File it was made in. */
  readonly id: string;
  /** What was changed, as a sentence. */
  readonly words: string;
  /** The text as it was; nothing once the change was taken back. */
  readonly before: string | undefined;
}

interface LastChange {
  readonly change: Change | undefined;
  tell(change: Change | undefined): void;
}

export const useLastChange = create<LastChange>((set) => ({
  change: undefined,
  tell: (change) => set({ change }),
}));
