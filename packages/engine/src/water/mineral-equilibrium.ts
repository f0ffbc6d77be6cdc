import { findRoot } from '../numerics/roots.ts';
import type { WaterComposition } from '../plan/water-composition.ts';
import { type CarbonSupply, type Speciation, speciate, type WaterState } from './speciate.ts';

export type Mineral = 'calcite' | 'aragonite' | 'gypsum';

export interface MineralEquilibrium {
  /** Mineral dissolved [mol/m3]; negative when it precipitated. */
  readonly dissolved: number;
  readonly composition: Partial<WaterComposition>;
  readonly speciation: Speciation;
}

/**
 * The water after an amount of a mineral dissolved (+) or precipitated (-) in it.
 * A closed water gains the carbon of a carbonate; an open one stays in balance with the gas.
 * @param amount [mol/m3]
 * @source derived: mass balance
 */
export function withMineral(water: WaterState, mineral: Mineral, amount: number): WaterState {
  const composition: Partial<WaterComposition> = {
    ...water.composition,
    calcium: Math.max(0, (water.composition.calcium ?? 0) + amount),
  };
  if (mineral === 'gypsum') {
    const sulfate = Math.max(0, (water.composition.sulfate ?? 0) + amount);
    return { ...water, composition: { ...composition, sulfate } };
  }
  let carbon: CarbonSupply = water.carbon;
  if (carbon.kind === 'closed') {
    const dissolvedInorganicCarbon = Math.max(0, carbon.dissolvedInorganicCarbon + amount);
    carbon = { kind: 'closed', dissolvedInorganicCarbon };
  }
  return { ...water, composition, carbon };
}

function mostThatCanPrecipitate(water: WaterState, mineral: Mineral): number {
  const partner =
    mineral === 'gypsum'
      ? (water.composition.sulfate ?? 0)
      : water.carbon.kind === 'closed'
        ? water.carbon.dissolvedInorganicCarbon
        : Number.POSITIVE_INFINITY;
  return Math.min(water.composition.calcium ?? 0, partner);
}

/** Stands for the saturation index of a mineral whose ions are absent. */
const ABSENT = -400;

/**
 * Equilibrium of a water with a mineral: how much dissolves or precipitates, and the water after it.
 * Root of the saturation index over the amount dissolved, which raises it.
 * @param water open or closed; its pH is computed
 * @throws RangeError when the water gives its pH, or dissolves more than 1000 mol/m3 without reaching saturation.
 * @source derived: saturation index zero, with the solubility products of `constants/minerals.ts`
 */
export function equilibriumWithMineral(water: WaterState, mineral: Mineral): MineralEquilibrium {
  if (water.pH !== undefined)
    throw new RangeError('a water with a given pH cannot be brought to equilibrium');
  const index = (amount: number): number =>
    Math.max(ABSENT, speciate(withMineral(water, mineral, amount)).saturationIndex[mineral]);
  const low = -mostThatCanPrecipitate(water, mineral);
  let high = Math.max(0.01, low + 0.01);
  while (index(high) < 0) {
    high *= 2;
    if (high > 1000) throw new RangeError(`${mineral} does not reach saturation in this water`);
  }
  const dissolved = findRoot(index, { low, high, tolerance: 1e-10 });
  const after = withMineral(water, mineral, dissolved);
  return { dissolved, composition: after.composition, speciation: speciate(after) };
}
