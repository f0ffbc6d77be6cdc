import type { OutlookOptions } from '@shoreglass/engine';
import { type AheadDocument, expectedRun, type Plan, prepareOutlook, summarise } from '@shoreglass/engine';
import { progressLine } from '../print/progress.ts';
import { allMembers } from './members.ts';

/** Computes the outlook of a plan, showing progress on standard error. */
export async function computeOutlook(plan: Plan, options: OutlookOptions): Promise<AheadDocument> {
  const prepared = prepareOutlook(plan, options);
  const progress = progressLine(`${plan.name}: ${options.days} days`, options.members);
  const expected = expectedRun(prepared);
  const batches = await allMembers({ plan, options }, progress.to);
  progress.end();
  return summarise(prepared, expected, batches);
}
