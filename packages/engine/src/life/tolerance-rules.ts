import type { Prior } from '../plan/prior.ts';
import { around, between, fixed } from './rule-priors.ts';
import type { Habitat, TraitId } from './traits.ts';

export interface Bounds {
  readonly low?: number;
  readonly high?: number;
}

/** What the rules of tolerance need of a life history. */
export interface ToleranceFacts {
  readonly habitat: Habitat;
  /** At which its times hold [degC]. */
  readonly temperature: number;
  /** Outermost tolerated, in the units of the traits. */
  readonly survives: Readonly<{
    waterTemperature?: Bounds;
    pH?: Bounds;
    hardness?: Bounds;
    airTemperature?: Bounds;
    humidity?: Bounds;
    oxygen?: Bounds;
    unionisedAmmonia?: Bounds;
  }>;
}

/** Two ends of what is tolerated; draws of one never reach those of the other. */
function ends(
  ids: readonly [TraitId, TraitId],
  low: number,
  high: number,
  spread: number,
): Partial<Record<TraitId, Prior>> {
  const reach = Math.min(2.5 * spread, 0.45 * (high - low));
  const [lowId, highId] = ids;
  return {
    [lowId]: between(lowId, low, Math.min(spread, reach), [low - reach, low + reach]),
    [highId]: between(highId, high, Math.min(spread, reach), [high - reach, high + reach]),
  };
}

/** Water that a land animal never meets does it no harm. */
const ANY_WATER: Partial<Record<TraitId, Prior>> = {
  temperatureLow: fixed(-2),
  temperatureHigh: fixed(45),
  pHLow: fixed(2),
  pHHigh: fixed(12),
  hardnessLow: fixed(0),
  hardnessHigh: fixed(200),
  oxygenNeeded: fixed(0),
  ammoniaNoEffect: fixed(5),
  ammoniaMedianLethal: fixed(50),
};

function waterTraits({ survives, temperature }: ToleranceFacts): Partial<Record<TraitId, Prior>> {
  const { waterTemperature: water = {}, pH = {}, hardness = {} } = survives;
  const noEffect = survives.unionisedAmmonia?.high ?? 0.05;
  const soft = hardness.low ?? 2;
  return {
    ...ends(
      ['temperatureLow', 'temperatureHigh'],
      water.low ?? temperature - 12,
      water.high ?? temperature + 8,
      1,
    ),
    ...ends(['pHLow', 'pHHigh'], pH.low ?? 6, pH.high ?? 8.8, 0.25),
    ...ends(['hardnessLow', 'hardnessHigh'], soft, hardness.high ?? 30, 0.25 * soft + 0.5),
    oxygenNeeded: around('oxygenNeeded', survives.oxygen?.low ?? 2, 1.3),
    ammoniaNoEffect: around('ammoniaNoEffect', noEffect, 1.3),
    ammoniaMedianLethal: between('ammoniaMedianLethal', 8 * noEffect, 1.5 * noEffect, [
      5 * noEffect,
      16 * noEffect,
    ]),
  };
}

function airTraits({ survives, temperature }: ToleranceFacts): Partial<Record<TraitId, Prior>> {
  const { airTemperature: air = {}, humidity = {} } = survives;
  const dry = humidity.low ?? 50;
  return {
    ...ends(
      ['airTemperatureLow', 'airTemperatureHigh'],
      air.low ?? temperature - 12,
      air.high ?? temperature + 8,
      1,
    ),
    humidityLow: between('humidityLow', dry, 4, [dry - 10, dry + 10]),
    humidityMargin: around('humidityMargin', 15, 1.4),
  };
}

/** Tolerance of water and air of a species, with margins by rule. @source assumed: docs/science/life-history.md */
export function toleranceTraits(history: ToleranceFacts): Partial<Record<TraitId, Prior>> {
  return {
    ...(history.habitat === 'land' ? ANY_WATER : waterTraits(history)),
    ...(history.habitat === 'water' ? {} : airTraits(history)),
    temperatureMargin: around('temperatureMargin', 3, 1.4),
    pHMargin: around('pHMargin', 0.8, 1.4),
    hardnessMargin: around('hardnessMargin', 3, 1.5),
    oxygenMargin: around('oxygenMargin', 1, 1.4),
    ammoniaRecovery: around('ammoniaRecovery', 0.7, 1.3),
  };
}
