import { create } from 'zustand';
import type { NewcomerList } from './newcomer.ts';

interface NewcomerSearch {
  readonly list: NewcomerList;
  /** Words of the name. */
  readonly text: string;
  readonly habitat: string;
  look(search: Partial<Pick<NewcomerSearch, 'list' | 'text' | 'habitat'>>): void;
}

/** Whom one looks for to bring in; a page of the library can put its own entry there. */
export const useNewcomerSearch = create<NewcomerSearch>((set) => ({
  list: 'animals',
  text: '',
  habitat: '',
  look: (search) => set(search),
}));
