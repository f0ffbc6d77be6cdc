import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';

type Composition = Partial<WaterComposition>;

function mapped(make: (id: keyof WaterComposition) => number): WaterComposition {
  return Object.fromEntries(DISSOLVED_IDS.map((id) => [id, make(id)])) as unknown as WaterComposition;
}

/**
 * Two waters blended [mol/m3]: c = f a + (1 - f) b.
 * @param fraction share of the first [0..1]
 * @throws RangeError when the share is outside 0 to 1.
 * @source derived: mass balance, volumes taken as additive
 */
export function blended(first: Composition, second: Composition, fraction: number): WaterComposition {
  if (!(fraction >= 0 && fraction <= 1)) throw new RangeError(`a share of ${fraction} is outside 0 to 1`);
  return mapped((id) => fraction * (first[id] ?? 0) + (1 - fraction) * (second[id] ?? 0));
}

/**
 * A water from which a share has evaporated [mol/m3]: c / (1 - f).
 * @param fraction of the water that left as vapour [0..1[
 * @throws RangeError when the share is outside 0 to below 1.
 * @source derived: mass balance, salts stay behind
 */
export function evaporated(water: Composition, fraction: number): WaterComposition {
  if (!(fraction >= 0 && fraction < 1)) throw new RangeError(`a share of ${fraction} cannot evaporate`);
  return mapped((id) => (water[id] ?? 0) / (1 - fraction));
}

/**
 * A water from which a share has evaporated and was replaced by another water [mol/m3]: c + f r.
 * @param fraction of the water that left as vapour [0..1]
 * @throws RangeError when the share is outside 0 to 1.
 * @source derived: mass balance, back to the first volume
 */
export function toppedOff(water: Composition, refill: Composition, fraction: number): WaterComposition {
  if (!(fraction >= 0 && fraction <= 1)) throw new RangeError(`a share of ${fraction} is outside 0 to 1`);
  return mapped((id) => (water[id] ?? 0) + fraction * (refill[id] ?? 0));
}
