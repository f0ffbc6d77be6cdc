import { VARIABLE_INDEX as V } from '../variables/variables.ts';

/** Calcium carbonate to be put into the water. */
export interface PlacedCarbonate {
  readonly mineral: 'calcite' | 'aragonite';
  /** [mol] */
  readonly amount: number;
  /** Grain diameter [m]. */
  readonly grain: number;
}

const POOLS = {
  calcite: { solid: V.carbonateSolid, placed: V.carbonatePlaced, grain: V.carbonateGrain },
  aragonite: { solid: V.aragoniteSolid, placed: V.aragonitePlaced, grain: V.aragoniteGrain },
} as const;

/**
 * Puts a carbonate into the water: the mean grain keeps the surface of old and new, the mean age is by amount.
 * @source derived: surface of spheres goes with amount over grain
 */
export function placeCarbonate(values: Float64Array, { mineral, amount, grain }: PlacedCarbonate): void {
  const at = POOLS[mineral];
  const lying = values[V.carbonateSolid]! + values[V.aragoniteSolid]!;
  const placed = values[at.placed]!;
  const inverse = (placed > 0 ? placed / values[at.grain]! : 0) + amount / grain;
  values[at.placed] = placed + amount;
  values[at.grain] = inverse > 0 ? (placed + amount) / inverse : 0;
  values[at.solid] = values[at.solid]! + amount;
  if (amount > 0) values[V.carbonateAge] = (values[V.carbonateAge]! * lying) / (lying + amount);
}
