import type {
  BandTarget,
  EditValue,
  Finding,
  KeyPath,
  MeasuredStart,
  ShelfCarbonate,
  ShelfSalt,
  ShelfWater,
  Unread,
  WrittenAnalysis,
} from '@shoreglass/contract';
import type {
  AheadDocument,
  MemberBatch,
  OutlookOptions,
  Plan,
  RecipeChoice,
  RecipeRequest,
  RequestProblem,
  SplitChange,
  TrialOrder,
  TrialRun,
  WaterComposition,
} from '@shoreglass/engine';
import type { Rooms } from '../files/rooms.ts';
import type { CountsOrder, CountsResults } from './counts-orders.ts';
import type { LifeOrder, LifeResults } from './life-orders.ts';
import type { ShapeOrder, ShapeResults } from './shape-orders.ts';

/** What the page asks an engine worker to do; every order gets one answer, in order. */
export type Order =
  | { readonly do: 'read'; readonly text: string; readonly fileName: string }
  | { readonly do: 'prepare'; readonly plan: Plan; readonly options: OutlookOptions }
  | { readonly do: 'expected' }
  | { readonly do: 'members'; readonly from: number; readonly to: number }
  | { readonly do: 'summarise'; readonly batches: readonly MemberBatch[] }
  | { readonly do: 'shelf'; readonly text: string; readonly fileName: string }
  | { readonly do: 'edit'; readonly text: string; readonly fileName: string; readonly edits: readonly Edit[] }
  | { readonly do: 'analyse'; readonly written: Readonly<Record<string, string>> }
  | { readonly do: 'recipes'; readonly request: RecipeRequest; readonly compare: boolean }
  | { readonly do: 'start from'; readonly plan: Plan; readonly readings: string }
  | { readonly do: 'change over'; readonly change: ChangeOver }
  | { readonly do: 'hold'; readonly plan: Plan }
  | { readonly do: 'trial'; readonly order: TrialOrder }
  | CountsOrder
  | LifeOrder
  | ShapeOrder;

/** An order with the room series that lie beside its text. */
export type WithRooms<O extends Order = Order> = O & { readonly rooms: Rooms };

/** One value of an enclosure's text changed or, undefined, taken out; a path that ends in a list's length appends to it. */
export interface Edit {
  readonly path: KeyPath;
  readonly value: EditValue | undefined;
}

/** A text after its edits, and what is found in it. */
export interface EditedText {
  readonly text: string;
  readonly findings: readonly Finding[];
}

/** A text as read: its plan where it has no errors. */
export interface ReadText {
  readonly name: string | undefined;
  readonly plan: Plan | undefined;
  readonly findings: readonly Finding[];
}

/** What there is to mix and to buffer with; water names of the file's fill and top-off. */
export interface Shelf {
  readonly waters: readonly ShelfWater[];
  readonly salts: readonly ShelfSalt[];
  readonly carbonates: readonly ShelfCarbonate[];
  /** Waters named by the fill and by the top-off of the file. */
  readonly fill: readonly string[];
  readonly topOff: readonly string[];
  /** Ids of the file's own waters, in their order. */
  readonly own: readonly string[];
  /** What suits those who live there, as targets in the plan's units. */
  readonly suited: readonly BandTarget[];
  /** Ids of the pieces the file lists, in their order. */
  readonly pieces: readonly string[];
  /** Actions the file lists already. */
  readonly actions: number;
}

/** Part of the pool to be replaced by another water, in steps the animals bear. */
export interface ChangeOver {
  readonly plan: Pick<Plan, 'room' | 'changeLimits' | 'populations' | 'water'>;
  /** The pool before: as it was filled, or as last read [°dGH, °dKH]. */
  readonly from: 'fill' | { readonly GH: number; readonly KH: number };
  /** Of the pool [0..1]. */
  readonly fraction: number;
  readonly to: WaterComposition;
}

/** One recipe, or several to compare; or what of the request cannot be. */
export interface Recipes {
  readonly problems: readonly RequestProblem[];
  readonly choices: readonly RecipeChoice[];
}

export interface Results extends ShapeResults, LifeResults, CountsResults {
  readonly read: ReadText;
  readonly prepare: undefined;
  readonly expected: AheadDocument;
  readonly members: MemberBatch;
  readonly summarise: AheadDocument;
  readonly shelf: Shelf;
  readonly edit: EditedText;
  readonly analyse: WrittenAnalysis;
  readonly recipes: Recipes;
  readonly 'start from': MeasuredStart | Unread;
  readonly 'change over': SplitChange;
  readonly hold: undefined;
  readonly trial: readonly TrialRun[];
}

export type Answer = { readonly result: Results[keyof Results] } | { readonly error: string };
