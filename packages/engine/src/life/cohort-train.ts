import { type Energetics, lengthOf, structureOf } from './energetics.ts';

/** Most free-living cohorts of one population; further ones are merged into their nearest neighbours. */
export const COHORT_LIMIT = 24;

/** How a cohort stands in `CohortTrain.adult`: young, grown up, or resting as a pupa between the two. */
export const YOUNG = 0;
export const GROWN = 1;
export const PUPA = 2;

/**
 * The free-living cohorts of one population, oldest first, as one array per property. Each cohort stands for
 * `count` animals alike; total carbon is sum count (c length^3 + buffer + store).
 * @source de-roos-1988 (escalator boxcar train); merging in place of fixed boxes is derived
 */
export interface CohortTrain {
  size: number;
  readonly count: Float64Array;
  /** Length of the structure [mm]; falls when an animal starves. */
  readonly length: Float64Array;
  /** Longest length reached [mm]. */
  readonly peak: Float64Array;
  /** Length in the middle of the coming day [mm]. */
  readonly middle: Float64Array;
  /** Egg buffer [mol C per animal]. */
  readonly buffer: Float64Array;
  /** Reserve laid up at good meals [mol C per animal]. */
  readonly store: Float64Array;
  /** Age since release, of pupae and what comes of them since that change, in days at the reference temperature [d]. */
  readonly age: Float64Array;
  /** What it eats and can use of food over the mean of its kind [1]; 1 where all are alike. */
  readonly share: Float64Array;
  /** YOUNG, GROWN once puberty is reached, or PUPA. */
  readonly adult: Uint8Array;
}

export interface NewCohort {
  readonly count: number;
  readonly length: number;
  readonly age: number;
  readonly isAdult: boolean;
  /** Reserve and egg buffer [mol C per animal]; none when left out. */
  readonly store?: number;
  readonly buffer?: number;
  /** What it eats over the mean of its kind [1]; 1 when left out. */
  readonly share?: number;
}

/** A train without animals, with room for COHORT_LIMIT cohorts and one more. `derived`. */
export function emptyTrain(): CohortTrain {
  const property = () => new Float64Array(COHORT_LIMIT + 1);
  return {
    size: 0,
    count: property(),
    length: property(),
    peak: property(),
    middle: property(),
    buffer: property(),
    store: property(),
    age: property(),
    share: property(),
    adult: new Uint8Array(COHORT_LIMIT + 1),
  };
}

function move(train: CohortTrain, from: number, to: number): void {
  train.count[to] = train.count[from]!;
  train.length[to] = train.length[from]!;
  train.peak[to] = train.peak[from]!;
  train.middle[to] = train.middle[from]!;
  train.buffer[to] = train.buffer[from]!;
  train.store[to] = train.store[from]!;
  train.age[to] = train.age[from]!;
  train.share[to] = train.share[from]!;
  train.adult[to] = train.adult[from]!;
}

/** Carbon in the living bodies of the train [mol], >= 0. @source derived: sum count (c length^3 + buffer + store). */
export function trainCarbon(train: CohortTrain, energetics: Energetics): number {
  let carbon = 0;
  for (let i = 0; i < train.size; i += 1) {
    carbon += train.count[i]! * bodyCarbonOf(train, energetics, i);
  }
  return carbon;
}

/** Carbon in one animal of cohort i [mol], > 0: structure, egg buffer and store. @source derived. */
export function bodyCarbonOf(train: CohortTrain, energetics: Energetics, i: number): number {
  return structureOf(energetics, train.length[i]!) + train.buffer[i]! + train.store[i]!;
}

/** Takes out cohorts of fewer than `least` animals, which must be booked before; order is kept. */
export function dropEmpty(train: CohortTrain, least: number): void {
  let kept = 0;
  for (let i = 0; i < train.size; i += 1) {
    if (train.count[i]! < least) continue;
    if (kept !== i) move(train, i, kept);
    kept += 1;
  }
  train.size = kept;
}

/** Puts a cohort in its place by age, merging two others first when the train is full. */
export function addCohort(train: CohortTrain, energetics: Energetics, cohort: NewCohort): void {
  insert(train, energetics, cohort, cohort.store ?? 0);
}

function insert(
  train: CohortTrain,
  energetics: Energetics,
  cohort: Omit<NewCohort, 'store'>,
  store: number,
): void {
  let place = train.size;
  while (place > 0 && train.age[place - 1]! < cohort.age) {
    move(train, place - 1, place);
    place -= 1;
  }
  train.count[place] = cohort.count;
  train.length[place] = cohort.length;
  train.peak[place] = cohort.length;
  train.middle[place] = cohort.length;
  train.buffer[place] = cohort.buffer ?? 0;
  train.store[place] = store;
  train.age[place] = cohort.age;
  train.share[place] = cohort.share ?? 1;
  train.adult[place] = cohort.isAdult ? GROWN : YOUNG;
  train.size += 1;
  if (train.size > COHORT_LIMIT) mergeNearest(train, energetics);
}

/** Puts a cohort in as `addCohort`, with the store of the always fed. */
export function addWellFed(
  train: CohortTrain,
  energetics: Energetics,
  cohort: Omit<NewCohort, 'store'>,
): void {
  insert(train, energetics, cohort, energetics.store * structureOf(energetics, cohort.length));
}

/** The youngest cohort older than one that eats the same share; -1 when there is none. */
function olderKin({ share }: CohortTrain, younger: number): number {
  let older = younger - 1;
  while (older >= 0 && share[older] !== share[younger]) older -= 1;
  return older;
}

/**
 * Merges the two neighbours of one stage and share whose merging loses least: n1 n2/(n1 + n2) times the squared distance in
 * length and age, both relative. Count, structure, best structure, buffer and store are conserved, age is averaged.
 * @source derived: the increase of the sum of squares when two groups are joined
 */
function mergeNearest(train: CohortTrain, energetics: Energetics): void {
  const { size, share, adult, count, length, age } = train;
  const { end, growthRate } = energetics;
  let best = -1;
  let kin = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < size; i += 1) {
    const older = share[i - 1] === share[i] ? i - 1 : olderKin(train, i);
    if (older < 0 || adult[older] !== adult[i]) continue;
    const apart = (length[older]! - length[i]!) / end;
    const time = (age[older]! - age[i]!) * growthRate;
    const loss = ((count[older]! * count[i]!) / (count[older]! + count[i]!)) * (apart * apart + time * time);
    if (loss < least) {
      least = loss;
      best = i;
      kin = older;
    }
  }
  if (best > 0) mergeIntoOlder(train, energetics, kin, best);
}

function mergeIntoOlder(train: CohortTrain, energetics: Energetics, older: number, younger: number): void {
  const a = train.count[older]!;
  const b = train.count[younger]!;
  const share = b / (a + b);
  const mixed = (values: Float64Array): number =>
    values[older]! + share * (values[younger]! - values[older]!);
  const mixedLength = (values: Float64Array): number => {
    const first = structureOf(energetics, values[older]!);
    return lengthOf(energetics, first + share * (structureOf(energetics, values[younger]!) - first));
  };
  train.length[older] = mixedLength(train.length);
  train.peak[older] = mixedLength(train.peak);
  train.middle[older] = mixedLength(train.middle);
  train.buffer[older] = mixed(train.buffer);
  train.store[older] = mixed(train.store);
  train.age[older] = mixed(train.age);
  train.count[older] = a + b;
  for (let i = younger + 1; i < train.size; i += 1) move(train, i, i - 1);
  train.size -= 1;
  if (younger - older > 1) putInOrder(train, older);
}

/** Moves a cohort that has become younger behind those that are older than it now. */
function putInOrder(train: CohortTrain, from: number): void {
  const spare = train.size;
  move(train, from, spare);
  let place = from;
  while (place + 1 < spare && train.age[place + 1]! > train.age[spare]!) {
    move(train, place + 1, place);
    place += 1;
  }
  move(train, spare, place);
}
