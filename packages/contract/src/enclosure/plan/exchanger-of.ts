import { type Exchanger, MOLAR_MASS, type PhosphateBinder } from '@shoreglass/engine';
import type { MaterialOf } from '@shoreglass/library';
import { plain } from './plain.ts';

type LayerMaterial = MaterialOf<'layer'>;

/** meq/g is eq/kg. */
const PER_KILOGRAM = 1;

/** What a dry mass [kg] of a material holds to exchange, or nothing; of a mass per volume, per volume. */
export function exchangerOf({ exchange }: LayerMaterial, mass: number): Exchanger | undefined {
  if (!exchange) return undefined;
  const bases = plain(exchange.baseSaturation, 'share');
  return {
    sites: mass * exchange.capacity.value * PER_KILOGRAM,
    calcium: bases * plain(exchange.calcium, 'share'),
    magnesium: bases * plain(exchange.magnesium, 'share'),
    sodium: bases * plain(exchange.sodium, 'share'),
    potassium: bases * plain(exchange.potassium, 'share'),
    ammonium: exchange.ammonium ? plain(exchange.ammonium, 'share') : 0,
    acidStrength: 10 ** exchange.acidHold.value,
  };
}

/** mg/kg in g/kg, and mg/L in mol/m3 of phosphorus. */
const PER_GRAM = 1e-3;
const phosphorus = (milligramsPerLitre: number): number => milligramsPerLitre / MOLAR_MASS.phosphorus;

/** The phosphate that a dry mass per volume [kg/m3] of a material binds, or nothing. */
export function phosphateBinderOf(
  { phosphate }: LayerMaterial,
  density: number,
): PhosphateBinder | undefined {
  if (!phosphate) return undefined;
  const { maximum, half, balance } = phosphate;
  return {
    sites: (density * maximum.value * PER_GRAM) / MOLAR_MASS.phosphorus,
    half: phosphorus(half.value),
    held: balance.value / (half.value + balance.value),
  };
}

/** Organic carbon a dry mass [kg] gives up by and by, quick and slow part [mol]; of a mass per volume, per volume. */
export function leachableOf(
  { leaching }: LayerMaterial,
  mass: number,
): { readonly quick: number; readonly slow: number } | undefined {
  if (!leaching) return undefined;
  const carbon = (1000 * mass * plain(leaching.carbon, 'share')) / MOLAR_MASS.carbon;
  const quick = plain(leaching.quick, 'share');
  return { quick: carbon * quick, slow: carbon * (1 - quick) };
}
