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
/** Two masses this close are told apart no further. @source assumed */
const CLOSE_ENOUGH = 1.25;
/** Steps from a mass found at another grain. @source assumed */
const GUESS_STEP = 1.4;
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

/** Members run before a mass may be given up. */
const CHUNK = 8;

/** Whether so many failures are too many for the share asked, whatever the members not yet run do. */
function isHopeless(runs: readonly Judged[], { members, probability }: SearchSetting): boolean {
  const failed = runs.filter((run) => run.member !== 'expected' && !holdsLow(run)).length;
  return failed > members.length * (1 - probability) + 1e-9;
}

/** Whether the lower limits hold in enough members at a mass, run in chunks and given up once that is hopeless. */
function* holdsAt(trials: Trials, mass: number, setting: SearchSetting): Part<boolean> {
  for (let from = 0; from < setting.members.length; from += CHUNK) {
    const [tried] = yield* trials.at([mass], setting.members.slice(0, from + CHUNK));
    if (isHopeless(tried!.runs, setting)) return false;
  }
  return true;
}

function shareHeld({ runs }: Tried): number {
  return runs.some(({ member }) => member !== 'expected') ? shareThat(runs, holdsAll).share : -1;
}

/** A mass that holds the lower limits and one that does not, or was not found to. */
interface Bracket {
  readonly low: number;
  readonly high: number;
}

/** Climbs the ladder from where the expected run holds, or its top, until enough members do; -1 when none does. */
function* climb(trials: Trials, ladder: readonly number[], setting: SearchSetting): Part<number> {
  const expected = yield* trials.at(ladder, ['expected']);
  const first = expected.findIndex(({ runs }) => runs.every(holdsLow));
  for (let rung = first < 0 ? ladder.length - 1 : first; rung < ladder.length; rung += 1)
    if (yield* holdsAt(trials, ladder[rung]!, setting)) return rung;
  return -1;
}

/** A bracket from the ladder; the expected run is no bound for the members, so it goes down too while they hold. */
function* onLadder(trials: Trials, setting: SearchSetting): Part<Bracket | undefined> {
  const ladder = LADDER.map((perWater) => weighable(perWater * setting.water));
  let rung = yield* climb(trials, ladder, setting);
  if (rung < 0) return undefined;
  while (rung > 0 && (yield* holdsAt(trials, ladder[rung - 1]!, setting))) rung -= 1;
  const high = ladder[rung]!;
  return { low: rung > 0 ? ladder[rung - 1]! : high * LOWEST_PART, high };
}

/** A bracket around a mass that is likely right, stepping up or down from it; undefined past the ladder's ends. */
function* around(trials: Trials, guess: number, setting: SearchSetting): Part<Bracket | undefined> {
  const least = LADDER[0] * LOWEST_PART * setting.water;
  const most = LADDER.at(-1)! * setting.water;
  let mass = weighable(guess);
  if (yield* holdsAt(trials, mass, setting)) {
    while (mass / GUESS_STEP >= least) {
      const less = weighable(mass / GUESS_STEP);
      if (less >= mass || !(yield* holdsAt(trials, less, setting))) return { low: less, high: mass };
      mass = less;
    }
    return { low: mass / GUESS_STEP, high: mass };
  }
  while (mass * GUESS_STEP <= most) {
    const more = weighable(mass * GUESS_STEP);
    if (yield* holdsAt(trials, more, setting)) return { low: mass, high: more };
    mass = more;
  }
  return undefined;
}

function* halve(trials: Trials, { low, high }: Bracket, setting: SearchSetting): Part<number> {
  let [under, over] = [low, high];
  while (over / under > CLOSE_ENOUGH) {
    const middle = weighable(Math.sqrt(under * over));
    if (middle >= over) break;
    if (yield* holdsAt(trials, middle, setting)) over = middle;
    else under = middle;
  }
  return over;
}

/**
 * Searches the least mass of one offer and grain that holds the lower limits in enough members, by a ladder of masses
 * four times apart, or around a guess, and halving between the two masses found, all with the same members; then looks
 * a little above it.
 * @param guess a mass that is likely right [kg], from another grain
 * @source derived: bracketing and bisection on the logarithm of the mass with common random numbers
 */
function* searchMass(
  { offer, grain, guess }: { readonly offer: BufferOffer; readonly grain: number; readonly guess?: number },
  setting: SearchSetting,
): Part<Search> {
  const trials = new Trials(offer, grain, setting);
  const guessed = guess === undefined ? undefined : yield* around(trials, guess, setting);
  const bracket = guessed ?? (yield* onLadder(trials, setting));
  if (!bracket) return summary(trials, offer, grain);
  const mass = yield* halve(trials, bracket, setting);
  let [holds] = (yield* trials.at([mass], setting.members)) as [Tried];
  const least = holds;
  for (const more of HEADROOM) {
    if (shareHeld(holds) >= setting.probability) break;
    [holds] = (yield* trials.at([weighable(least.mass * more)], setting.members)) as [Tried];
  }
  return { ...summary(trials, offer, grain), holds: least };
}

/** Mass over grain that a search came to [kg/m]: what a search of another grain or material starts from. */
function massPerGrain({ holds, grain }: Search): number | undefined {
  return holds && holds.mass / grain;
}

/**
 * Searches all grains of an offer: the middle one first, the others from what it came to, since the surface that
 * dissolves goes with mass over grain.
 * @param perGrain mass over grain that is likely right [kg/m], from another material
 * @source derived
 */
function* searchOffer(offer: BufferOffer, setting: SearchSetting, perGrain?: number): Part<Search[]> {
  const { grains } = offer;
  const search = (grain: number, known: number | undefined): Part<Search> =>
    searchMass({ offer, grain, ...(known !== undefined && { guess: known * grain }) }, setting);
  const middle = grains[Math.floor(grains.length / 2)]!;
  const first = yield* search(middle, perGrain);
  const known = massPerGrain(first);
  const others = yield* together(
    grains.filter((grain) => grain !== middle).map((grain) => search(grain, known)),
  );
  return grains.map((grain) => (grain === middle ? first : others.find((other) => other.grain === grain)!));
}

/** Searches every grain of every offer, the first offer first and the others from what it came to. @source derived */
export function* searchOffers(offers: readonly BufferOffer[], setting: SearchSetting): Part<Search[]> {
  const [head, ...rest] = offers;
  if (!head) return [];
  const first = yield* searchOffer(head, setting);
  const known = first.flatMap((search) => massPerGrain(search) ?? [])[0];
  const others = yield* together(rest.map((offer) => searchOffer(offer, setting, known)));
  return [...first, ...others.flat()];
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
function* together<Found>(parts: readonly Part<Found>[]): Part<Found[]> {
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
