import { type AnimalState, somaShare, structureOf } from './energetics.ts';
import { feedingSquare } from './growth-curve.ts';
import type { LivingPopulation } from './living-population.ts';
import { surfaceOf } from './place.ts';
import { satiety } from './sublethal.ts';

/** Rise of intake per part of body and store missing, and the most it rises [1]. @source assumed: largest rations of fish are three to four times those that keep them */
const CATCH_UP = 15;
const MOST_CATCH_UP = 2;
/**
 * How much more filterers that live on scarce food filter, over their usual, as their screens grow [1].
 * @source lampert-1994 for screens that grow at scarce food (recalled); the number is chosen so that the model meets the
 * lengths of Daphnia magna at 0.1 mg C/L (preuss-2009)
 */
const SCREENS = 3;
/** Store made per carbon put by. @source jager-2013 Table 1, as for the egg buffer (assumed) */
const STORE_YIELD = 0.95;
/** Part of the full store that growth and eggs leave for hungry days [1], and pace at which they spend the rest on a day without food [1/d]. @source assumed */
const KEPT = 0.5;
const SPENDING = 0.5;

/**
 * Sets how much more than ample the hungry eat [1], 0 to 2: 15 times the part of the best body mass that is missing
 * (`appetite`), and of the reserves that is missing (`greed`), means over feeding surface.
 * @source assumed: compensatory feeding after hunger is general among animals; the numbers are judgement
 */
export function setAppetite(population: LivingPopulation): void {
  const { train, energetics } = population;
  let all = 0;
  let lost = 0;
  let unstored = 0;
  for (let i = 0; i < train.size; i += 1) {
    const surface = train.count[i]! * surfaceOf(population, i);
    const shrunk = train.length[i]! / train.peak[i]!;
    all += surface;
    if (shrunk < 1) lost += surface * (1 - shrunk * shrunk * shrunk);
    if (energetics.store > 0) unstored += surface * missingStore(population, i);
  }
  population.appetite = all > 0 ? Math.min(MOST_CATCH_UP, (CATCH_UP * lost) / all) : 0;
  population.greed = all > 0 ? Math.min(MOST_CATCH_UP, (CATCH_UP * unstored) / all) : 0;
}

/** Part of a full store that counts as full [1], rounding aside. */
const FULL = 1 - 1e-6;

/** Store that an animal of cohort i that went hungry lacks over its well-fed body [1], up to what it can gorge. */
function missingStore({ train, energetics }: LivingPopulation, i: number): number {
  const structure = structureOf(energetics, train.length[i]!);
  const held = train.store[i]! / structure;
  return held < FULL * energetics.store ? (energetics.mostStore - held) / (1 + energetics.store) : 0;
}

/**
 * How much more than ample a population wants today [1], 0 to 2: what hunger asks for, or at meals that sate what the
 * stores ask for. Stores fill at rich meals only: with p the part of the largest intake that food allows, by p^8, so
 * that steady scarce food is eaten as without stores.
 * Filterers used to scarce food filter up to four times as much, 1 + 3 (1 - fullness), as far as they can pass it on.
 * @param sated p [0..1]
 * @source assumed
 */
export function extraIntake(population: LivingPopulation, sated: number): number {
  const { appetite, greed, diet } = population;
  const square = sated * sated;
  const fourth = square * square;
  const hungry = Math.max(appetite, greed * fourth * fourth);
  if (!diet.filters || sated === 0) return hungry;
  return Math.max(hungry, Math.min(1 / sated - 1, SCREENS * (1 - satiety(population))));
}

/**
 * Puts by or spends the reserve of an animal of cohort i, and leaves in `state` what its day has to live on.
 * What it assimilated beyond ample growth and the regain of what it lost is put by, as far as there is room (for some
 * more than the always fed hold, see the trait `gorge`) and
 * nitrogen and phosphorus for the body's fixed composition; the rest is respired. With less than ample food the
 * upper half of the store pays for growth and eggs, half of it a day and never more than ample food would give; once that
 * does not cover upkeep, the store pays the upkeep of a starving animal, before its body does. Where the water takes part
 * of their appetite, what it leaves is ample: want of appetite is no hunger.
 * @returns change of the store [mol C per animal]
 * @source jager-2015 (DEBkiss with a store for hungry times); rules of filling and spending assumed
 */
export function useStore(population: LivingPopulation, i: number, rate: number, state: AnimalState): number {
  const { train, energetics, slowing } = population;
  const square = feedingSquare(energetics, state.length) * train.share[i]!;
  const ample = slowing.kept * rate * energetics.assimilation * square;
  if (state.carbon < ample) return spend(population, i, rate, { state, ample });
  const best = structureOf(energetics, train.peak[i]!);
  const body = structureOf(energetics, train.length[i]!);
  const useful =
    ample +
    (Math.max(0, best - body) * (1 + energetics.store)) /
      (energetics.growthYield * somaShare(energetics, state.length));
  const surplus = state.carbon - useful;
  if (surplus <= 0) return 0;
  const part = surplus / state.carbon;
  const put = Math.max(
    0,
    Math.min(
      energetics.mostStore * body - train.store[i]!,
      STORE_YIELD * surplus,
      (part * state.nitrogen) / energetics.nitrogenPerCarbon,
      (part * state.phosphorus) / energetics.phosphorusPerCarbon,
    ),
  );
  state.carbon = useful;
  state.nitrogen -= put * energetics.nitrogenPerCarbon;
  state.phosphorus -= put * energetics.phosphorusPerCarbon;
  train.store[i] = train.store[i]! + put;
  return put;
}

interface ShortDay {
  readonly state: AnimalState;
  /** Assimilation at ample food [mol]. */
  readonly ample: number;
}

function spend(
  { train, energetics, traits }: LivingPopulation,
  i: number,
  rate: number,
  { state, ample }: ShortDay,
): number {
  const held = train.store[i]!;
  if (held <= 0) return 0;
  const mature = Math.min(state.length, energetics.puberty);
  const upkeep =
    rate *
    (energetics.upkeep * state.length * state.length * state.length +
      energetics.maturityUpkeep * mature * mature * mature);
  const kept = KEPT * energetics.store * structureOf(energetics, state.length);
  const spare = held - kept;
  const forGrowth = spare > 0 ? Math.min(1, SPENDING * rate) * spare : 0;
  const wanted =
    state.carbon + forGrowth > upkeep
      ? forGrowth
      : traits.starvedUpkeep * upkeep - state.buffer - state.carbon;
  const spent = Math.max(0, Math.min(held, wanted, ample - state.carbon));
  state.carbon += spent;
  state.nitrogen += spent * energetics.nitrogenPerCarbon;
  state.phosphorus += spent * energetics.phosphorusPerCarbon;
  train.store[i] = Math.max(0, held - spent);
  return -spent;
}

/**
 * Carbon of an animal of cohort i without eggs over that of its best and well-fed body [0..1].
 * @source derived
 */
export function conditionOf({ train, energetics }: LivingPopulation, i: number): number {
  const shrunk = train.length[i]! / train.peak[i]!;
  const { store } = energetics;
  const held = store > 0 ? train.store[i]! / structureOf(energetics, train.peak[i]!) : 0;
  return Math.min(1, (shrunk * shrunk * shrunk + held) / (1 + store));
}
