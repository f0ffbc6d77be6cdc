import type { Finding } from '@shoreglass/contract';
import type { AheadDocument, MemberBatch, OutlookOptions, Plan } from '@shoreglass/engine';

/** What the page asks an engine worker to do; every order gets one answer, in order. */
export type Order =
  | { readonly do: 'read'; readonly text: string; readonly fileName: string }
  | { readonly do: 'prepare'; readonly plan: Plan; readonly options: OutlookOptions }
  | { readonly do: 'expected' }
  | { readonly do: 'members'; readonly from: number; readonly to: number }
  | { readonly do: 'summarise'; readonly batches: readonly MemberBatch[] };

/** A text as read: its plan where it has no errors. */
export interface ReadText {
  readonly name: string | undefined;
  readonly plan: Plan | undefined;
  readonly findings: readonly Finding[];
}

export interface Results {
  readonly read: ReadText;
  readonly prepare: undefined;
  readonly expected: AheadDocument;
  readonly members: MemberBatch;
  readonly summarise: AheadDocument;
}

export type Answer = { readonly result: Results[keyof Results] } | { readonly error: string };
