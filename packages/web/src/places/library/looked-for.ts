import { create } from 'zustand';
import type { Wanted } from './find-entries.ts';

interface LookedFor {
  readonly wanted: Wanted;
  look(wanted: Wanted): void;
}

/** What is looked for in the library; it stays while the page is open, so that coming back from an entry finds it again. */
export const useLookedFor = create<LookedFor>((set) => ({
  wanted: { text: '', list: '', habitat: '', need: '' },
  look: (wanted) => set({ wanted }),
}));
