import { log, pow } from '../numerics/elementary.ts';

/** Strength of annealed glass at 3 s and 8 breakages in 1000 [Pa]. @source ncsea-glass */
export const SURFACE_STRENGTH = 23.3e6;
export const EDGE_STRENGTH = 18.3e6;
/** Breakages and duration these strengths are stated for. */
const STATED_BREAKAGE = 0.008;
const STATED_DURATION = 3;

/**
 * Returns the factor on the strength of annealed glass for how long a load lasts, European form [0..1]:
 * 0.663 t^(-1/16), t in hours, from 0.29 to 1.
 * @param duration of the load [s], above 0
 * @source en-16612, in public glass-design sources
 */
export function durationFactorEuropean(duration: number): number {
  return Math.min(1, Math.max(0.29, 0.663 * pow(duration / 3600, -1 / 16)));
}

/** Factors of the European long-term strength. */
export interface EuropeanStrength {
  /** Characteristic strength [Pa]; 45e6 for float glass. */
  readonly characteristic: number;
  readonly edge: number;
  readonly duration: number;
  readonly surface: number;
  /** Material factor; 1.8, in British use 1.6. */
  readonly material: number;
}

/**
 * Returns the design strength of annealed glass, European form [Pa, > 0]: k_e k_mod k_sp f/gamma.
 * @param factors k_e, k_mod, k_sp, f and gamma
 * @validity made for panes that fill openings, not for tanks: an upper bound here
 * @source en-16612, in public glass-design sources
 */
export function designStrengthEuropean(factors: EuropeanStrength): number {
  return (factors.edge * factors.duration * factors.surface * factors.characteristic) / factors.material;
}

/**
 * Returns the factor on a three-second strength for how long a load lasts [0..1]: (3 s/t)^(1/16).
 * @param duration t [s], at least 3
 * @source ncsea-glass
 */
export function durationFactor(duration: number): number {
  return pow(STATED_DURATION / duration, 1 / 16);
}

/** Standard normal value exceeded with a small probability; error below 4.5e-4. @source abramowitz-stegun, 26.2.23 */
function upperNormal(probability: number): number {
  const t = Math.sqrt(-2 * log(probability));
  const above = 2.515517 + t * (0.802853 + t * 0.010328);
  const below = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
  return t - above / below;
}

/**
 * Returns the factor on a strength stated for 8 breakages in 1000, for another share [> 0]: (1 - c z(p))/(1 - c z(0.008)).
 * @param breakage p, share of panes that may break, 1e-5 to 0.5
 * @param variation c, coefficient of variation of the strength; 0.22 for annealed glass
 * @source ncsea-glass
 */
export function breakageFactor(breakage: number, variation: number): number {
  return (1 - variation * upperNormal(breakage)) / (1 - variation * upperNormal(STATED_BREAKAGE));
}

/** Coefficient of variation of the strength of annealed glass. @source ncsea-glass */
const ANNEALED_VARIATION = 0.22;

/**
 * Returns the stress annealed glass bears for a time at a share of breakages [Pa, > 0].
 * @param strength at 3 s and 8 breakages in 1000: of the surface, or of an edge in tension such as a free top edge [Pa]
 * @param duration [s], at least 3
 * @param breakage share of panes that may break
 * @source ncsea-glass
 */
export function lastingStrength(strength: number, duration: number, breakage: number): number {
  return strength * durationFactor(duration) * breakageFactor(breakage, ANNEALED_VARIATION);
}
