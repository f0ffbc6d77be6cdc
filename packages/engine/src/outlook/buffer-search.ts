import { holdsAll, holdsLow, JUDGED_SERIES, type Judge, type Judged, shareThat } from './buffer-judge.ts';
import { bufferPiece, weighable } from './buffer-piece.ts';
import type { BufferOffer } from './buffer-question.ts';
import type { TrialMember, TrialOrder, TrialRun } from './trial.ts';

/** A part of an inquiry: asks for orders, is given their runs, returns what it found. */
export type Part<Found> = Generator<readonly TrialOrder[], Found, readonly (readonly TrialRun[])[]>;

/** What all searches of one question share. */
export interface SearchSetting {
  readonly days: number;
  readonly seed: number;
  readonly probability: number;
  readonly judge: Judge;
  /** Members used while searching. */
  readonly members: readonly TrialMember[];
  /** Water of the enclosure [m3], from which the masses tried follow. */
  readonly water: number;
  /** The same members without any buffer. */
  readonly without: readonly Judged[];
}

/** A mass of one offer and grain, with the runs made of it. */
export interface Tried {
  readonly mass: number;
  readonly runs: readonly Judged[];
}

export interface Search {
  readonly offer: BufferOffer;
  readonly grain: number;
  readonly tried: readonly Tried[];
  /** The least mass tried that holds the lower limits often enough, if any does. */
  readonly holds?: Tried;
  /** The mass that held every limit most often. */
  readonly closest: Tried;
}

/** Masses tried first, per water [kg/m3 = g/L]; beyond the last nobody would want to go. @source assumed */
const LADDER = [0.1, 0.4, 1.6, 6.4, 25.6] as const;
/** Below the ladder's first rung the search goes down to this part of it. */
const LOWEST_PART = 1 / 16;
/** Halvings of the logarithm of the mass between two rungs: four times becomes 1.2 times. */
const HALVINGS = 3;
/** Steps above the least mass that holds the lower limits, where some members want a little more. */
const HEADROOM = [1.25, 1.6] as const;

/** Runs of one offer and grain, each mass and member once. */
class Trials {
  readonly #tried = new Map<number, Judged[]>();
  readonly #offer: BufferOffer;
  readonly #grain: number;
  readonly #setting: SearchSetting;

  constructor(offer: BufferOffer, grain: number, setting: SearchSetting) {
    this.#offer = offer;
    this.#grain = grain;
    this.#setting = setting;
  }

  /** Runs the members at the masses, those that were run already left out; returns them by mass. */
  *at(masses: readonly number[], members: readonly TrialMember[]): Part<readonly Tried[]> {
    const orders = masses.flatMap((mass) => {
      const known = this.#tried.get(mass)?.map(({ member }) => member) ?? [];
      const missing = members.filter((member) => !known.includes(member));
      return missing.length > 0 ? [{ mass, order: this.#order(mass, missing) }] : [];
    });
    const answers = orders.length > 0 ? yield orders.map(({ order }) => order) : [];
    for (const [o, { mass }] of orders.entries()) {
      const judged = answers[o]!.map((run) => this.#setting.judge.judge(run));
      this.#tried.set(mass, [...(this.#tried.get(mass) ?? []), ...judged]);
    }
    return masses.map((mass) => ({ mass, runs: this.#tried.get(mass)! }));
  }

  all(): Tried[] {
    return [...this.#tried].map(([mass, runs]) => ({ mass, runs })).sort((a, b) => a.mass - b.mass);
  }

  #order(mass: number, members: readonly TrialMember[]): TrialOrder {
    const { days, seed } = this.#setting;
    return {
      change: { pieces: [bufferPiece(this.#offer, mass, this.#grain)] },
      days,
      seed,
      members,
      series: JUDGED_SERIES,
    };
  }
}

/** Whether the lower limits hold in enough members; false when only the expected run was made. */
function holdsOften({ runs }: Tried, { probability }: SearchSetting): boolean {
  const members = runs.filter(({ member }) => member !== 'expected');
  return members.length > 0 && shareThat(members, holdsLow).share >= probability;
}

function shareHeld({ runs }: Tried): number {
  return runs.some(({ member }) => member !== 'expected') ? shareThat(runs, holdsAll).share : -1;
}

/** Climbs the ladder from where the expected run holds, or its top, until enough members do. */
function* climb(trials: Trials, ladder: readonly number[], setting: SearchSetting): Part<number> {
  const expected = yield* trials.at(ladder, ['expected']);
  const first = expected.findIndex(({ runs }) => runs.every(holdsLow));
  let rung = first < 0 ? ladder.length - 1 : first;
  while (rung < ladder.length) {
    const [tried] = yield* trials.at([ladder[rung]!], setting.members);
    if (holdsOften(tried!, setting)) return rung;
    rung += 1;
  }
  return -1;
}

/** Goes down the ladder while the rung below holds too: the expected run is no bound for the members. */
function* descend(
  trials: Trials,
  ladder: readonly number[],
  from: number,
  setting: SearchSetting,
): Part<number> {
  let rung = from;
  while (rung > 0) {
    const [below] = yield* trials.at([ladder[rung - 1]!], setting.members);
    if (!holdsOften(below!, setting)) return rung;
    rung -= 1;
  }
  return rung;
}

function* halve(trials: Trials, bracket: readonly [number, number], setting: SearchSetting): Part<Tried> {
  let [low, high] = bracket;
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = Math.sqrt(low * high);
    const [tried] = yield* trials.at([middle], setting.members);
    if (holdsOften(tried!, setting)) high = middle;
    else low = middle;
  }
  const [found] = yield* trials.at([weighable(high)], setting.members);
  return found!;
}

/**
 * Searches the least mass of one offer and grain that holds the lower limits in enough members, by a ladder of masses
 * four times apart and halving between two rungs, all with the same members; then looks a little above it.
 * @source derived: bracketing and bisection on the logarithm of the mass with common random numbers
 */
export function* searchMass(offer: BufferOffer, grain: number, setting: SearchSetting): Part<Search> {
  const trials = new Trials(offer, grain, setting);
  const ladder = LADDER.map((perWater) => perWater * setting.water);
  const climbed = yield* climb(trials, ladder, setting);
  if (climbed < 0) return summary(trials, offer, grain);
  const rung = yield* descend(trials, ladder, climbed, setting);
  const high = ladder[rung]!;
  const low = rung > 0 ? ladder[rung - 1]! : high * LOWEST_PART;
  let holds = yield* halve(trials, [low, high], setting);
  if (!holdsOften(holds, setting)) [holds] = (yield* trials.at([high], setting.members)) as [Tried];
  for (const more of HEADROOM) {
    if (shareHeld(holds) >= setting.probability) break;
    yield* trials.at([weighable(holds.mass * more)], setting.members);
  }
  return { ...summary(trials, offer, grain), holds };
}

function summary(trials: Trials, offer: BufferOffer, grain: number): Omit<Search, 'holds'> {
  const tried = trials.all();
  const closest = tried.reduce((best, each) => (shareHeld(each) > shareHeld(best) ? each : best));
  return { offer, grain, tried, closest };
}

/** A drop test's tenth [dKH]: less is the integrator's accuracy, not the buffer's doing. */
const SAME = 0.05;

/** Whether in every member a larger mass never lowered the least carbonate hardness. @source derived */
export function isMonotone(tried: readonly Tried[]): boolean {
  const last = new Map<TrialMember, number>();
  for (const { runs } of tried) {
    for (const { member, leastKH } of runs) {
      if (leastKH < (last.get(member) ?? 0) - SAME) return false;
      last.set(member, leastKH);
    }
  }
  return true;
}

/** Runs several parts side by side: each round asks for the orders of all that are not done. @source derived */
export function* together<Found>(parts: readonly Part<Found>[]): Part<Found[]> {
  const steps = parts.map((part) => part.next());
  while (steps.some(({ done }) => !done)) {
    const orders = steps.map((step) => (step.done ? [] : step.value));
    const answers = yield orders.flat();
    let at = 0;
    for (const [p, step] of steps.entries()) {
      if (step.done) continue;
      const own = answers.slice(at, at + orders[p]!.length);
      at += orders[p]!.length;
      steps[p] = parts[p]!.next(own);
    }
  }
  return steps.map((step) => step.value as Found);
}
