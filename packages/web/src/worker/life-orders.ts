import {
  type EnclosureContent,
  type EnclosureEdit,
  editEnclosure,
  type Finding,
  feedOf,
  huntersOf,
  inhabitantsOf,
  lifePopulationOf,
  placeFactsOf,
} from '@shoreglass/contract';
import {
  type Conflict,
  conflictsOf,
  expectedLifeDocument,
  expectedRun,
  type FeedingPlan,
  feedingPlan,
  type Hunter,
  type LifeDocument,
  type Plan,
  type Population,
  prepareOutlook,
  type TargetAdults,
} from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { openText } from './open-text.ts';

/** What the Life place asks of an engine worker. */
export type LifeOrder =
  | {
      readonly do: 'life';
      readonly text: string;
      readonly fileName: string;
      readonly edits: readonly EnclosureEdit[];
    }
  | { readonly do: 'community'; readonly plan: Plan; readonly days: number; readonly seed: number }
  | { readonly do: 'newcomer'; readonly species: string; readonly zone: string }
  | { readonly do: 'hunters'; readonly pest: Pick<Population, 'id' | 'zone'>; readonly plan: Plan }
  | { readonly do: 'feeding'; readonly plan: Plan; readonly wish: FeedingWish };

/** How many adults are to be held, on which feed and given how often. */
export interface FeedingWish {
  readonly targets: TargetAdults;
  readonly feed: string;
  /** Days from one feeding to the next. */
  readonly everyDays: number;
  /** Where most of those wanted live when left out. */
  readonly onLand?: boolean;
  /** Of the day at which it is given; as the day begins when left out. */
  readonly hour?: number;
}

/** A text after its edits: what it says, and who would live in it where nothing stands in the way. */
export interface LifeReading {
  readonly text: string;
  readonly findings: readonly Finding[];
  readonly sound?: SoundLife;
}

export interface SoundLife {
  readonly plan: Plan;
  readonly zones: readonly Pick<EnclosureContent['zones'][number], 'id' | 'name' | 'kind'>[];
  readonly animals: NonNullable<EnclosureContent['animals']>;
  readonly plants: NonNullable<EnclosureContent['plants']>;
  readonly routines: NonNullable<EnclosureContent['routines']>;
  readonly actions: NonNullable<EnclosureContent['actions']>;
  /** What a mister sprays in a day [m3]; undefined where there is none. */
  readonly mist: number | undefined;
  readonly conflicts: readonly Conflict[];
  /** How many of a species make a start, by its id. */
  readonly leastFounders: Readonly<Record<string, number>>;
}

export interface LifeResults {
  readonly life: LifeReading;
  readonly community: LifeDocument;
  readonly newcomer: Population;
  readonly hunters: readonly Hunter[];
  readonly feeding: FeedingPlan;
}

const LEAST_MEMBERS = 2;

export function carryOutLife(order: LifeOrder): LifeResults[keyof LifeResults] {
  switch (order.do) {
    case 'life':
      return readLife(order);
    case 'community':
      return communityBy(order);
    case 'newcomer':
      return lifePopulationOf(library.organism(order.species), order.zone);
    case 'hunters':
      return huntersOf(order.pest, library, placeFactsOf(order.plan).expected);
    case 'feeding': {
      const { targets, feed, ...how } = order.wish;
      return feedingPlan(order.plan, targets, { feed: feedOf(feed, library), ...how });
    }
  }
}

/** Edits follow one another: each finds the text as the one before left it. */
function readLife({ text: before, fileName, edits }: Extract<LifeOrder, { do: 'life' }>): LifeReading {
  const text = edits.reduce((so, { path, value }) => editEnclosure(so, path, value), before);
  const { document, plan, findings } = openText(text, fileName);
  if (!document || !plan) return { text, findings };
  const { zones, animals = [], plants = [], routines = [], actions = [] } = document.content;
  const inhabitants = inhabitantsOf(document.content, library);
  const conflicts = conflictsOf(inhabitants, placeFactsOf(plan));
  return {
    text,
    findings,
    sound: {
      plan,
      zones: zones.map(({ id, name, kind }) => ({ id, kind, ...(name === undefined ? {} : { name }) })),
      animals,
      plants,
      routines,
      actions,
      mist: document.content.devices?.mister?.amount,
      conflicts,
      leastFounders: Object.fromEntries(
        inhabitants.map(({ id, leastFounders }) => [id, leastFounders.value]),
      ),
    },
  };
}

/** The expected run only: the spread is that of the outlook the page has already. */
function communityBy({ plan, days, seed }: Extract<LifeOrder, { do: 'community' }>): LifeDocument {
  const prepared = prepareOutlook(plan, { days, members: LEAST_MEMBERS, seed });
  return expectedLifeDocument(prepared, expectedRun(prepared), []);
}
