import { describe, expect, it } from 'vitest';
import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { equilibrateWithAir } from '../water/equilibrate-with-air.ts';
import { pouredGases } from './poured-gases.ts';

const air = { carbonDioxide: 600, pressure: 101325 };
const water = (some: Partial<WaterComposition>): WaterComposition =>
  ({ ...Object.fromEntries(DISSOLVED_IDS.map((id) => [id, 0])), ...some }) as WaterComposition;
const HARD = water({ calcium: 2, magnesium: 0.5, sodium: 0.4, chloride: 0.9, sulfate: 0.25 });
const RAIN = water({ chloride: 0.05, sodium: 0.05 });

describe('gases of poured water', () => {
  const gases = pouredGases(air);

  it.each([HARD, RAIN])('are those of a water that stood in the air, within 1e-5', (composition) => {
    for (const temperature of [3, 7.3, 17.77, 20, 24.24, 31.9]) {
      const exact = equilibrateWithAir(composition, temperature, air);
      const { dissolvedInorganicCarbon, oxygen } = gases.at(composition, temperature);
      expect(dissolvedInorganicCarbon / exact.dissolvedInorganicCarbon).toBeCloseTo(1, 5);
      expect(oxygen / exact.oxygen).toBeCloseTo(1, 5);
    }
  });

  it('are told apart by water', () => {
    const hard = gases.at(HARD, 20).dissolvedInorganicCarbon;
    expect(hard).toBeGreaterThan(20 * gases.at(RAIN, 20).dissolvedInorganicCarbon);
  });
});
