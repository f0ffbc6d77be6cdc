import {
  type Hunter,
  type Inquiry,
  type PestAnswer,
  type PestOptions,
  type Plan,
  pestInquiry,
} from '@shoreglass/engine';

/** Against whom, how much a bait takes out, and the hunters that might be put in. */
export interface PestWish {
  readonly pest: string;
  readonly baitTakes: number;
  /** Day of the run on which it is noticed: hunters come, baits begin and less feed is given. */
  readonly from: number;
  readonly hunters: readonly Hunter[];
}

/** Asks what can be done against one that grows too many; loaded only when the question is asked. */
export function askPest(
  plan: Plan,
  { pest, baitTakes, from, hunters }: PestWish,
  options: Pick<PestOptions, 'days' | 'members' | 'seed'>,
): Inquiry<PestAnswer[]> {
  return pestInquiry(plan, pest, { ...options, baitTakes, from, hunters });
}
