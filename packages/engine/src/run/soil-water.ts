import { expm1 } from '../numerics/elementary.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import type { Book } from './book.ts';
import type { World } from './world.ts';

/** Part of the soil's mineral nutrients that its water carries off [1]; the rest is held by the soil. @source assumed: nitrate runs with the water, ammonium and nearly all phosphate are bound */
const MOBILE = { nitrogen: 0.5, phosphorus: 0.02 } as const;

/** Water that moved between pool and ground in a day [m3]. */
export interface SoilWater {
  /** Drawn up by drying ground, less what wet ground gave back the same way; may be negative. */
  readonly drawn: number;
  /** Run off ground that mist or drip filled beyond what it holds, >= 0. */
  readonly drained: number;
}

function move(values: Float64Array, from: number, to: number, amount: number): void {
  values[from] = values[from]! - amount;
  values[to] = values[to]! + amount;
}

/**
 * Carries nitrogen and phosphorus with the water between pool and ground. What is drawn up brings its nitrate, ammonium and
 * phosphate to the soil's mineral pools, since its water leaves by the air and roots and moulds keep the nutrients; what
 * runs off takes 1 - exp(-water/water in the ground) of the mobile part back, half of the nitrogen as nitrate, half as
 * ammonium, so that it brings no alkalinity.
 * @validity salts other than these stay in the pool; one soil for all land; litter on land leaches nothing
 * @source derived: mass flow, amount = concentration x volume; the shares are assumed
 */
export function carryNutrients(world: World, book: Book, { drawn, drained }: SoilWater): void {
  const { values, setting, volume, climate } = world;
  if (!setting.plan.land) return;
  const up = Math.max(0, drawn);
  const down = drained + Math.max(0, -drawn);
  const held = climate.state.landWater;
  if (!(up > 0 || (down > 0 && held > 0))) return;
  book.care(world, 'drawn up by the ground', () => {
    const share = up / (volume + up);
    for (const id of ['nitrate', 'ammonium'] as const)
      move(values, V[id], V.soilMineralNitrogen, share * values[V[id]]!);
    move(values, V.phosphate, V.soilMineralPhosphorus, share * values[V.phosphate]!);
    if (!(down > 0 && held > 0)) return;
    const washed = -expm1(-down / held);
    const nitrogen = washed * MOBILE.nitrogen * values[V.soilMineralNitrogen]!;
    move(values, V.soilMineralNitrogen, V.nitrate, nitrogen / 2);
    move(values, V.soilMineralNitrogen, V.ammonium, nitrogen / 2);
    const phosphorus = washed * MOBILE.phosphorus * values[V.soilMineralPhosphorus]!;
    move(values, V.soilMineralPhosphorus, V.phosphate, phosphorus);
  });
}
