import { describe, expect, it } from 'vitest';
import { STATE_IDS, VARIABLE_INDEX as V, VARIABLE_IDS } from '../variables/variables.ts';
import type { Book } from './book.ts';
import { totalOf } from './closure.ts';
import { carryNutrients, type SoilWater } from './soil-water.ts';
import type { World } from './world.ts';

const book = { care: (_world: World, _term: string, change: () => void) => change() } as unknown as Book;

/** Ten litres of pool with nitrate, ammonium and phosphate beside soil that holds two litres. */
function ground({ land = true, ...water }: Partial<SoilWater> & { land?: boolean }): Float64Array {
  const values = new Float64Array(VARIABLE_IDS.length);
  values[V.nitrate] = 4e-3;
  values[V.ammonium] = 1e-3;
  values[V.phosphate] = 2e-4;
  values[V.soilMineralNitrogen] = 0.05;
  values[V.soilMineralPhosphorus] = 0.002;
  const world = {
    values,
    volume: 0.0099,
    setting: { plan: land ? { land: {} } : {} },
    climate: { state: { landWater: 0.002 } },
  } as unknown as World;
  carryNutrients(world, book, { drawn: 0, drained: 0, ...water });
  return values;
}

const before = ground({});

describe('water between pool and ground', () => {
  it('keeps nitrogen and phosphorus, whichever way it goes', () => {
    for (const water of [{ drawn: 1e-4 }, { drained: 3e-4 }, { drawn: -2e-4, drained: 1e-4 }])
      for (const element of ['nitrogen', 'phosphorus'] as const)
        expect(totalOf(element, ground(water)), element).toBeCloseTo(totalOf(element, before), 15);
  });

  it('takes a hundredth of what is dissolved when a hundredth of the pool is drawn up', () => {
    const values = ground({ drawn: 1e-4 });
    for (const id of ['nitrate', 'ammonium', 'phosphate'] as const)
      expect(values[V[id]]! / before[V[id]]!).toBeCloseTo(0.99, 12);
    expect(values[V.soilMineralNitrogen]! - before[V.soilMineralNitrogen]!).toBeCloseTo(5e-5, 12);
  });

  it('brings back less of what the soil binds, and no alkalinity with the nitrogen', () => {
    const values = ground({ drained: 2e-4 });
    const gained = (id: 'nitrate' | 'ammonium' | 'phosphate') => values[V[id]]! - before[V[id]]!;
    expect(gained('nitrate')).toBeGreaterThan(0);
    expect(gained('nitrate')).toBeCloseTo(gained('ammonium'), 15);
    expect(gained('phosphate') / before[V.soilMineralPhosphorus]!).toBeLessThan(
      gained('nitrate') / before[V.soilMineralNitrogen]!,
    );
    // Twenty times the ground's own water washes out at most what is mobile.
    expect(
      ground({ drained: 0.04 })[V.soilMineralNitrogen]! / before[V.soilMineralNitrogen]!,
    ).toBeGreaterThan(0.49);
  });

  it('moves nothing where there is no soil, and nothing else anywhere', () => {
    expect([...ground({ land: false, drawn: 1e-4, drained: 1e-4 })]).toEqual([...before]);
    const moved = ground({ drawn: 1e-4 });
    const touched = STATE_IDS.filter((id) => moved[V[id]] !== before[V[id]]);
    expect(touched.sort()).toEqual(
      ['ammonium', 'nitrate', 'phosphate', 'soilMineralNitrogen', 'soilMineralPhosphorus'].sort(),
    );
  });
});
