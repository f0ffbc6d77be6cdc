import { type Exchanger, MOLAR_MASS } from '@shoreglass/engine';
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
