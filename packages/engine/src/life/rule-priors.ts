import type { Prior } from '../plan/prior.ts';
import { TRAIT_SPECS, type TraitId } from './traits.ts';

/** A value taken as certain. `derived`. */
export const fixed = (value: number): Prior => ({
  kind: 'fixed',
  median: value,
  spread: 0,
  min: value,
  max: value,
});

/** A value within the range of a trait, in its unit. `derived`. */
export function within(id: TraitId, value: number): number {
  const { min, max } = TRAIT_SPECS[id];
  return Math.min(max, Math.max(min, value));
}

/** Lognormal around a value, bounded at two and a half spreads and by the trait's range. `derived`. */
export function around(id: TraitId, value: number, spread: number): Prior {
  if (!(value > 0)) return fixed(value);
  const reach = spread * spread * Math.sqrt(spread);
  return {
    kind: 'lognormal',
    median: value,
    spread,
    min: within(id, value / reach),
    max: within(id, value * reach),
  };
}

/** Normal around a value between a least and a most, within the trait's range. `derived`. */
export function between(
  id: TraitId,
  value: number,
  spread: number,
  [least, most]: readonly [number, number],
): Prior {
  return {
    kind: 'normal',
    median: value,
    spread,
    min: within(id, Math.min(value, least)),
    max: within(id, Math.max(value, most)),
  };
}
