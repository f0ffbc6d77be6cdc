import type { Energetics } from './energetics.ts';

/** Most broods kept apart by their progress. */
export const BROOD_LIMIT = 10;

/** Eggs by their progress to release [0..1], furthest first. */
export interface BroodTrain {
  size: number;
  readonly count: Float64Array;
  readonly progress: Float64Array;
}

/** A train without eggs, with room for BROOD_LIMIT broods and one more. `derived`. */
export function emptyBroods(): BroodTrain {
  return {
    size: 0,
    count: new Float64Array(BROOD_LIMIT + 1),
    progress: new Float64Array(BROOD_LIMIT + 1),
  };
}

/**
 * Carbon of one egg [mol]; its upkeep is spread evenly over its time.
 * egg - (egg - newborn) progress.
 * @source derived: linear use of the egg's store
 */
export function eggCarbonAt(energetics: Energetics, progress: number): number {
  return energetics.eggCarbon - (energetics.eggCarbon - energetics.newbornCarbon) * progress;
}

/** Carbon in all broods [mol], >= 0. @source derived. */
export function broodCarbon(broods: BroodTrain, energetics: Energetics): number {
  let carbon = 0;
  for (let i = 0; i < broods.size; i += 1) {
    carbon += broods.count[i]! * eggCarbonAt(energetics, broods.progress[i]!);
  }
  return carbon;
}

/** Eggs in all broods [1], >= 0. `derived`. */
export function eggCount(broods: BroodTrain): number {
  let eggs = 0;
  for (let i = 0; i < broods.size; i += 1) eggs += broods.count[i]!;
  return eggs;
}

/** Adds fresh eggs as the last brood, merging the two nearest when the train is full. */
export function addBrood(broods: BroodTrain, count: number, progress: number): void {
  broods.count[broods.size] = count;
  broods.progress[broods.size] = progress;
  broods.size += 1;
  if (broods.size > BROOD_LIMIT) mergeNearest(broods);
}

/** Takes out broods of fewer than `least` eggs. */
export function dropEmptyBroods(broods: BroodTrain, least: number): void {
  let kept = 0;
  for (let i = 0; i < broods.size; i += 1) {
    if (broods.count[i]! < least) continue;
    broods.count[kept] = broods.count[i]!;
    broods.progress[kept] = broods.progress[i]!;
    kept += 1;
  }
  broods.size = kept;
}

function mergeNearest(broods: BroodTrain): void {
  let best = 1;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < broods.size; i += 1) {
    const a = broods.count[i - 1]!;
    const b = broods.count[i]!;
    const apart = broods.progress[i - 1]! - broods.progress[i]!;
    const loss = ((a * b) / (a + b)) * apart * apart;
    if (loss < least) {
      least = loss;
      best = i;
    }
  }
  const share = broods.count[best]! / (broods.count[best - 1]! + broods.count[best]!);
  broods.progress[best - 1] =
    broods.progress[best - 1]! + share * (broods.progress[best]! - broods.progress[best - 1]!);
  broods.count[best - 1] = broods.count[best - 1]! + broods.count[best]!;
  for (let i = best + 1; i < broods.size; i += 1) {
    broods.count[i - 1] = broods.count[i]!;
    broods.progress[i - 1] = broods.progress[i]!;
  }
  broods.size -= 1;
}
