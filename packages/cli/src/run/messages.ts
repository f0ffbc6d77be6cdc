import type { MemberBatch, OutlookOptions, Plan } from '@shoreglass/engine';

/** Sent once to each worker as its data. */
export interface WorkerTask {
  readonly plan: Plan;
  readonly options: OutlookOptions;
}
/** Members to run: `from` included, `to` excluded. */
export interface Order {
  readonly from: number;
  readonly to: number;
}
export type Answer = { readonly batch: MemberBatch } | { readonly error: string };
