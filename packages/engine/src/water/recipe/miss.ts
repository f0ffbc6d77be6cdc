import type { RecipeQuantity, RecipeTarget } from './request.ts';

/**
 * What drop tests, strips and meters can just tell [plan's unit of the quantity]: one German degree of hardness,
 * 2 mg/L of an ion, 20 uS/cm. @source assumed: usual steps of the trade's tests
 */
const TELLS: Readonly<Record<RecipeQuantity, number>> = {
  GH: 0.178,
  KH: 0.357,
  calcium: 0.05,
  magnesium: 0.08,
  sodium: 0.087,
  potassium: 0.051,
  chloride: 0.056,
  sulfate: 0.021,
  nitrate: 0.032,
  conductivity: 20,
};

/**
 * Size of a miss that counts as one [plan's unit of the quantity], > 0: what a test can tell, or a twentieth of what
 * is wanted where that is more.
 * @source assumed
 */
export function scaleOf({ quantity, aim, low, high }: RecipeTarget): number {
  const wanted = Math.max(Math.abs(aim ?? 0), Math.abs(low ?? 0), Math.abs(high ?? 0));
  return Math.max(TELLS[quantity], 0.05 * wanted);
}

/** How far a value lies from what is wanted, over its scale [1], >= 0; 0 within limits without an aim. `derived`. */
export function missOf(target: RecipeTarget, value: number): number {
  const { aim, low, high } = target;
  const scale = scaleOf(target);
  const beyond = Math.max(0, (low ?? value) - value, value - (high ?? value));
  const off = aim === undefined ? 0 : Math.abs(value - aim);
  return Math.max(beyond, off) / scale;
}

/**
 * Whether a value is as wanted: within a tenth of a scale of the limits, as of those who live there, who bear all between
 * them; where there are none, within half a scale of the aim.
 * @source assumed: less than a test can tell
 */
export function isMet(target: RecipeTarget, value: number): boolean {
  const { aim, low, high } = target;
  const scale = scaleOf(target);
  if (low !== undefined && value < low - 0.1 * scale) return false;
  if (high !== undefined && value > high + 0.1 * scale) return false;
  if (aim === undefined || low !== undefined || high !== undefined) return true;
  return Math.abs(value - aim) <= 0.5 * scale;
}

/** Root of the mean square of all misses [1], >= 0; 0 without targets. `derived`. */
export function misfitOf(
  targets: readonly RecipeTarget[],
  value: (quantity: RecipeQuantity) => number,
): number {
  if (targets.length === 0) return 0;
  const sum = targets.reduce((total, target) => {
    const miss = missOf(target, value(target.quantity));
    return total + miss * miss;
  }, 0);
  return Math.sqrt(sum / targets.length);
}
