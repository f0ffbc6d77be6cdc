import type { Plan, TrialRun } from '@shoreglass/engine';

/** Sent once to each worker as its data; orders follow as messages, answered one by one in their order. */
export interface TrialTask {
  readonly plan: Plan;
}
export type TrialAnswer = { readonly runs: readonly TrialRun[] } | { readonly error: string };
