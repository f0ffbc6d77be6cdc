import { create } from 'zustand';
import { recall, remember } from '../app/kept.ts';

/** Length, number of runs and seed of the outlooks in the app. */
export interface RunChoice {
  readonly days: number;
  readonly members: number;
  readonly seed: number;
}

/** What may be chosen of each, and what it is until something is. */
export const RUN_LIMITS = {
  days: { least: 100, most: 730, usual: 300 },
  members: { least: 20, most: 500, usual: 200 },
  seed: { least: 0, most: 4_294_967_295, usual: 1 },
} as const;

export const USUAL_RUN: RunChoice = {
  days: RUN_LIMITS.days.usual,
  members: RUN_LIMITS.members.usual,
  seed: RUN_LIMITS.seed.usual,
};

const KEY = 'run';

interface Choice {
  readonly run: RunChoice;
  choose(run: RunChoice): void;
}

/** How the keeper wants the year run, remembered on this device. */
export const useRunChoice = create<Choice>((set) => ({
  run: readRun(recall(KEY)),
  choose: (run) => {
    remember(KEY, JSON.stringify(run));
    set({ run });
  },
}));

/** What was remembered; the usual for whatever is missing or out of range. */
export function readRun(kept: string | undefined): RunChoice {
  let said: Partial<Record<keyof RunChoice, unknown>> = {};
  try {
    said = (JSON.parse(kept ?? '{}') ?? {}) as typeof said;
  } catch {
    // It was not written by this app; the usual holds.
  }
  const one = (key: keyof RunChoice): number => (fits(key, said[key]) ? said[key] : USUAL_RUN[key]);
  return { days: one('days'), members: one('members'), seed: one('seed') };
}

export function fits(key: keyof RunChoice, value: unknown): value is number {
  const { least, most } = RUN_LIMITS[key];
  return typeof value === 'number' && Number.isInteger(value) && value >= least && value <= most;
}
