import type { ChangeLimit, ChangeQuantity } from '../plan/change-limit.ts';
import type { Plan } from '../plan/plan.ts';

const COMMON = {
  owner: 'anybody who lives in the water',
  basis: 'common practice',
  source: 'common practice, no source',
} as const;

/**
 * What is asked of any change of the water where an animal's own limit is not known. pH units, °dKH, share of the
 * conductivity before, K; each a day.
 * @source assumed: common practice among keepers, no source
 */
export const COMMON_CHANGE_LIMITS: readonly ChangeLimit[] = [
  { quantity: 'pH', perDay: 0.3, ...COMMON },
  { quantity: 'KH', perDay: 1, ...COMMON },
  { quantity: 'conductivity', perDay: 0.15, ...COMMON },
  { quantity: 'waterTemperature', perDay: 2, ...COMMON },
];

/**
 * The narrowest change limit of each quantity [unit of `ChangeLimit.perDay`]: of all animals of the plan that state
 * one, otherwise what common practice asks. One measured animal does not speak for the others, so a wider limit of
 * its own counts only where every animal has one.
 * @source derived
 */
export function changeLimits({
  changeLimits: own = [],
  populations,
}: Pick<Plan, 'changeLimits' | 'populations'>): ChangeLimit[] {
  return COMMON_CHANGE_LIMITS.map((common) => {
    const stated = own.filter(({ quantity }) => quantity === common.quantity);
    const inWater = populations.filter(({ traits }) => (traits.habitat ?? 'water') !== 'land');
    const everyone = new Set(inWater.map(({ species }) => species)).size;
    const candidates = stated.length > 0 && stated.length >= everyone ? stated : [...stated, common];
    return candidates.reduce((least, limit) => (limit.perDay < least.perDay ? limit : least));
  });
}

/** The unit a change limit is read in, per day. `derived`. */
export const CHANGE_UNITS: Readonly<Record<ChangeQuantity, string>> = {
  pH: 'pH',
  KH: '°dKH',
  conductivity: 'of the conductivity before',
  waterTemperature: 'K',
};
