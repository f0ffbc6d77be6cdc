import type { SpoonMeasure, WaterPart } from './recipe.ts';
import type { SourceWater } from './request.ts';

/** A quarter of a metric teaspoon of 5 mL [m3]. @source common practice: metric kitchen spoons */
const QUARTER_TEASPOON = 1.25e-6;
/** A tablespoon of 15 mL. */
const QUARTERS_PER_TABLESPOON = 12;
/** More than a cup in spoons is weighed. */
const MOST_QUARTERS = 16 * QUARTERS_PER_TABLESPOON;
const FRACTIONS = ['', '1/4', '1/2', '3/4'] as const;

function spoons(quarters: number, name: string): string {
  const whole = Math.floor(quarters / 4);
  const rest = FRACTIONS[quarters % 4]!;
  const number = [whole > 0 ? `${whole}` : '', rest].filter(Boolean).join(' ');
  return `${number} level ${name}${quarters > 4 ? 's' : ''}`;
}

function said(quarters: number): string {
  const tables = Math.floor(quarters / QUARTERS_PER_TABLESPOON);
  const rest = quarters % QUARTERS_PER_TABLESPOON;
  const parts = [
    ...(tables > 0 ? [`${tables} level tablespoon${tables > 1 ? 's' : ''}`] : []),
    ...(rest > 0 ? [spoons(rest, 'teaspoon')] : []),
  ];
  return parts.join(' and ');
}

/**
 * A mass in whole quarters of a level teaspoon of 5 mL, to the nearest; undefined below an eighth of a teaspoon, where
 * a spoon measures nothing, and above a cup.
 * @param mass [kg]
 * @param bulkDensity of the loose powder [kg/m3], > 0
 * @source derived: mass over bulk density; metric spoons, common practice
 */
export function spoonMeasure(mass: number, bulkDensity: number): SpoonMeasure | undefined {
  const quarter = QUARTER_TEASPOON * bulkDensity;
  const quarterTeaspoons = Math.round(mass / quarter);
  if (quarterTeaspoons < 1 || quarterTeaspoons > MOST_QUARTERS) return undefined;
  return { quarterTeaspoons, said: said(quarterTeaspoons), mass: quarterTeaspoons * quarter };
}

/** Whole parts of at most twelve that come within a fiftieth of the shares, or the nearest twelfths. */
function wholeParts(shares: readonly number[]): number[] {
  for (let total = 1; total <= 12; total += 1) {
    const parts = shares.map((share) => Math.round(share * total));
    const sum = parts.reduce((a, b) => a + b, 0);
    if (sum === total && parts.every((part, k) => Math.abs(part / total - shares[k]!) <= 0.02)) return parts;
  }
  return shares.map((share) => Math.round(share * 12));
}

/** The waters used, with litres and parts; those of no share are left out. */
export function waterParts(waters: readonly SourceWater[], shares: Float64Array, mixed: number): WaterPart[] {
  if (!(mixed > 0)) return [];
  const used = waters.flatMap(({ id, name }, k) => {
    const share = shares[k] ?? 0;
    return share > 0 ? [{ id, name, share, volume: share * mixed }] : [];
  });
  const parts = wholeParts(used.map(({ share }) => share));
  return used.map((each, k) => ({ ...each, parts: parts[k]! }));
}
