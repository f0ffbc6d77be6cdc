import { cbrt, exp, exp10, log } from '../numerics/elementary.ts';
import type { PreyKind, TraitValues } from './traits.ts';
import type { WaterConditions } from './water-stress.ts';

/** What of the water makes animals eat less, grow slower and lay fewer eggs, short of killing them. */
export const SLOWING_CAUSES = ['lack of oxygen', 'ammonia', 'nitrite', 'nitrate', 'copper'] as const;
export type SlowingCause = (typeof SLOWING_CAUSES)[number];

/** Place on the curve at which a fifth is lost: root of 0.1. */
const AT_A_FIFTH = 0.31622776601683794;
/**
 * Width of the curve from nothing to all, as a power of e [1]: half is lost at 1.6 times what takes a fifth, nothing
 * below 0.45 of it, all at 5.8 times. @source assumed: chronic tests of one species rarely tell more than a factor of two apart
 */
const WIDTH = 2.56;
/** Dose below which nothing is lost, over that at which a fifth is [1]. */
const STARTS = exp(-AT_A_FIFTH * WIDTH);
/** The same for eggs where `eggSensitivity` is the most it may be, 20 [1]. */
const EARLIEST = STARTS / 20;

/**
 * Part lost at a dose [1], 0 to 1: a sigmoid of two parabolas over its logarithm that begins at nothing.
 *   t = sqrt(0.1) + ln(x)/2.56;  0 for t <= 0, 2 t^2 up to a half, 1 - 2 (1 - t)^2 from there, 1 for t >= 1
 * @param times dose over that at which a fifth is lost, x [1], >= 0
 * @source erickson-2015 (threshold sigmoid over the logarithm of the dose); the width is assumed
 */
export function partLost(times: number): number {
  if (!(times > STARTS)) return 0;
  const t = AT_A_FIFTH + log(times) / WIDTH;
  if (t >= 1) return 1;
  return t < 0.5 ? 2 * t * t : 1 - 2 * (1 - t) * (1 - t);
}

/** Where the chronic equation for ammonia was found to hold, and where it is carried on as at its ends [pH]. */
const PH_RANGE = [6.5, 9] as const;
/** Warmth below which the tolerance of invertebrates rises no further [degC]. */
const COLD = 7;
/** Most that pH 9 and 35 °C make of total ammonia [1]; spares the equation where there is next to none. */
const MOST_ACTING = 35;

/**
 * Total ammonia that would do as much at pH 7 and 20 °C, over total ammonia [1], > 0.
 *   1 / (0.0278/(1 + 10^(7.688 - pH)) + 1.1994/(1 + 10^(pH - 7.688))), for invertebrates times 10^(0.028 (T - 20))
 * Fish bear as much total ammonia in the cold as in the warm.
 * @param pH [pH]; from 6.5 to 9, beyond which it stays as there
 * @param temperature T [degC]; from 7 on, below which it stays as there
 * @validity pH 6.5 to 9, 7 to 30 °C
 * @source us-epa-ammonia-2013, chronic criterion
 */
export function actingAmmonia(pH: number, temperature: number, isInvertebrate: boolean): number {
  const within = Math.min(PH_RANGE[1], Math.max(PH_RANGE[0], pH));
  const borne = 0.0278 / (1 + exp10(7.688 - within)) + 1.1994 / (1 + exp10(within - 7.688));
  return (isInvertebrate ? exp10(0.028 * (Math.max(COLD, temperature) - 20)) : 1) / borne;
}

/** Kinds that bear as much total ammonia in the cold as in the warm. */
const VERTEBRATES = new Set<PreyKind | undefined>(['fish', 'amphibians', 'reptiles']);

/** How the water slows a population down. */
export interface Slowing {
  /** Part of their appetite that is left to them on the coming day [0..1]. */
  kept: number;
  /** Parts lost, by cause in the order of SLOWING_CAUSES [0..1]; with `kept` they sum to 1. */
  readonly lost: Float64Array;
  /** Part of the eggs that their food allows which is left to them [0..1], and how causes share what is not [0..1]. */
  eggsKept: number;
  readonly eggsLost: Float64Array;
  readonly isInvertebrate: boolean;
}

/** A population in good water. */
export function unslowed(preyKind: PreyKind | undefined): Slowing {
  return {
    kept: 1,
    lost: new Float64Array(SLOWING_CAUSES.length),
    eggsKept: 1,
    eggsLost: new Float64Array(SLOWING_CAUSES.length),
    isInvertebrate: !VERTEBRATES.has(preyKind),
  };
}

/** What of a population decides how the water slows it down. */
export interface SlowedPopulation {
  readonly slowing: Slowing;
  readonly traits: TraitValues;
  /** Poisons in the body, in the order of POISONS. */
  readonly burdens: readonly { readonly level: number }[];
  /** Part of its feeding that happens in the water [0..1]. */
  readonly inWater: number;
}

/**
 * Part of appetite that a poison leaves [1], 0 to 1: cube root of the mass, or the young, that it leaves in tests of
 * weeks, since mass goes with the cube of what is eaten.
 * @source derived: von Bertalanffy growth at a steady part f of ample food ends at f^3 of the mass, and broods with it
 */
function leftByPoison(times: number): number {
  const lost = partLost(times);
  return lost === 0 ? 1 : cbrt(1 - lost);
}

/**
 * Part of the eggs that a poison leaves of those the food allows [1], 0 to 1, where young are lost at lower doses than
 * growth: what is left of the young at the dose over what is left of them by less food alone.
 *   (1 - lost(s x))/(1 - lost(x))
 * @source derived from `partLost`
 */
function eggsLeft(times: number, sensitivity: number): number {
  const byFood = 1 - partLost(times);
  return byFood > 0 ? (1 - partLost(sensitivity * times)) / byFood : 0;
}

/** Total ammonia as it acts at pH 7 and 20 °C, over that which takes a fifth [1]. */
function ammoniaTimes(water: WaterConditions, least: number, isInvertebrate: boolean): number {
  const total = water.totalAmmonia ?? 0;
  if (total * MOST_ACTING < EARLIEST * least) return 0;
  return (total * actingAmmonia(water.pH, water.temperature, isInvertebrate)) / least;
}

/** Want of oxygen where there is none [L/mg]. */
const ENDLESS = 1e9;

/** By cause in water of its own, in the order of SLOWING_CAUSES: dose over that which takes a fifth, and what is left. */
const times = new Float64Array(SLOWING_CAUSES.length);
const left = new Float64Array(SLOWING_CAUSES.length);

/**
 * Sets what today's water leaves of the appetite and the eggs of the coming day, and which cause took how much.
 *   kept = 1 - w (1 - product of what each cause leaves); causes share what is lost by their logarithms
 * Oxygen is the mean of the day: fish that had too little for a part of it grew as well (carlson-1980). Nitrite and
 * copper act through what is in the body by now.
 * @param population whose burdens were moved on by today
 * @source derived from `partLost`; that causes multiply is assumed
 */
export function setSlowing(population: SlowedPopulation, water: WaterConditions): void {
  const { slowing, traits, burdens } = population;
  // Water that is gone slows nobody.
  const inWater = water.isGone ? 0 : population.inWater;
  const { oxygenMean = water.oxygen, nitrate = 0 } = water;
  times[0] = oxygenMean > 0 ? traits.oxygenSlowing / oxygenMean : ENDLESS * traits.oxygenSlowing;
  times[1] = ammoniaTimes(water, traits.ammoniaSlowing, slowing.isInvertebrate);
  times[2] = burdens[1]!.level / traits.nitriteSlowing;
  times[3] = nitrate / traits.nitrateSlowing;
  times[4] = burdens[2]!.level / traits.copperSlowing;
  left[0] = 1 - partLost(times[0]);
  for (let k = 1; k < left.length; k += 1) left[k] = leftByPoison(times[k]!);
  slowing.kept = 1 - share(slowing.lost, inWater);
  if (traits.eggSensitivity === 1) return;
  left[0] = 1;
  for (let k = 1; k < left.length; k += 1) left[k] = eggsLeft(times[k]!, traits.eggSensitivity);
  slowing.eggsKept = 1 - share(slowing.eggsLost, inWater);
}

/** Stands for the logarithm of nothing, so that a cause that leaves nothing is blamed for nearly all. */
const NOTHING_LEFT = 1e-12;

/** Writes what each cause takes [0..1] where it leaves `left` of the part w that meets the water; returns their sum. */
function share(lost: Float64Array, inWater: number): number {
  let kept = 1;
  for (let k = 0; k < left.length; k += 1) kept *= left[k]!;
  const whole = inWater * (1 - kept);
  lost.fill(0);
  if (!(whole > 0)) return 0;
  let all = 0;
  for (let k = 0; k < left.length; k += 1) all -= log(Math.max(NOTHING_LEFT, left[k]!));
  for (let k = 0; k < left.length; k += 1) lost[k] = (-whole * log(Math.max(NOTHING_LEFT, left[k]!))) / all;
  return whole;
}

/** Assimilation over what the water leaves them appetite for [1], 0 to 1: how sated they are. @source derived */
export function satiety({ fullness, slowing }: { fullness: number; slowing: Slowing }): number {
  if (slowing.kept === 1) return fullness;
  return slowing.kept > 0 ? Math.min(1, fullness / slowing.kept) : 1;
}
