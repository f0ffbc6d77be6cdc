import {
  type ComputedBeside,
  type CountsAnswer,
  countsAnswer,
  type Problem,
  readCounts,
} from '@shoreglass/contract';
import { library, type Organism, UnknownEntry } from '@shoreglass/library';

/** Counts as typed, and what is asked of them. */
export interface CountsWish {
  readonly text: string;
  /** Id of the species; one that the library does not hold is told by its counts alone. */
  readonly species: string;
  readonly below: number;
  /** Days after the last count; as many as were counted when left out. */
  readonly within?: number;
  readonly computed?: ComputedBeside;
}

export interface CountsOrder {
  readonly do: 'counts';
  readonly wish: CountsWish;
}

/** What is wrong with the text, or what it tells. */
export type CountsReading =
  | { readonly problems: readonly Problem[]; readonly answer?: undefined }
  | {
      readonly answer: CountsAnswer;
      /** Day that the first line names, where it names days. */
      readonly firstDay?: number;
      readonly problems?: undefined;
    };

export interface CountsResults {
  readonly counts: CountsReading;
}

function animalOf(species: string): Organism | undefined {
  try {
    return library.organism(species);
  } catch (error) {
    if (error instanceof UnknownEntry) return undefined;
    throw error;
  }
}

export function carryOutCounts({ wish }: CountsOrder): CountsReading {
  const { text, species, computed, below, within } = wish;
  const written = readCounts(text, 'counts');
  if (written.problems) return { problems: written.problems };
  const animal = animalOf(species);
  const request = { below, ...(within === undefined ? {} : { within }), ...(animal ? { animal } : {}) };
  const { firstDay } = written;
  return {
    answer: countsAnswer(written, request, computed),
    ...(firstDay === undefined ? {} : { firstDay }),
  };
}
