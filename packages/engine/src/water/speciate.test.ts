import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { alkalinityOf } from './hardness.ts';
import { type Speciation, speciate, type WaterState } from './speciate.ts';

const AIR = { kind: 'open', pressure: 10 ** -3.5 * 101325 } as const;

/** Totals from traces to a strong brine, most of them ordinary, each possibly absent. */
const amount = (most: number) =>
  fc.oneof(
    fc.constant(0),
    fc.double({ min: -6, max: Math.log10(most), noNaN: true }).map((x) => 10 ** x),
  );
const compositionUpTo = (most: number) =>
  fc.record(
    Object.fromEntries(DISSOLVED_IDS.map((id) => [id, amount(most)])),
  ) as unknown as fc.Arbitrary<WaterComposition>;
const carbonUpTo = (most: number) =>
  fc.oneof(
    amount(100).map((pressure) => ({ kind: 'open', pressure }) as const),
    amount(most).map((dissolvedInorganicCarbon) => ({ kind: 'closed', dissolvedInorganicCarbon }) as const),
  );
const waterUpTo = (most: number): fc.Arbitrary<WaterState> =>
  fc.record({
    temperature: fc.double({ min: 0, max: 45, noNaN: true }),
    composition: compositionUpTo(most),
    carbon: carbonUpTo(most),
  });

/** Charge of the free ions and charged pairs that are not listed one by one [eq/m3]: what must be left over. */
function alkalinityFromSpecies(water: Speciation): number {
  const { free } = water;
  return water.bicarbonate + 2 * water.carbonate + free.hydroxide - free.hydrogen + water.unionisedAmmonia;
}

const everyNumber = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value
      ? Object.values(value).flatMap(everyNumber)
      : [];

describe('pH of known waters', () => {
  // Stumm & Morgan: pure water in air of 10^-3.5 atm CO2 has pH 5.66.
  it('pure water in air', () => {
    expect(speciate({ temperature: 25, composition: {}, carbon: AIR }).pH).toBeCloseTo(5.66, 2);
  });
  it('pure water without carbon has half the pKw', () => {
    const carbon = { kind: 'closed', dissolvedInorganicCarbon: 0 } as const;
    expect(speciate({ temperature: 25, composition: {}, carbon }).pH).toBeCloseTo(7, 2);
  });
  // NIST primary standards, 25 degC: carbonate 0.025 + 0.025 mol/kg pH 10.012; phosphate 1:1 at 0.025 mol/kg pH 6.865
  // and 1:3.5 pH 7.413. Without pairs of Na and K with phosphate 0.02 high is expected.
  it('carbonate standard', () => {
    const carbon = { kind: 'closed', dissolvedInorganicCarbon: 50 } as const;
    const { pH } = speciate({ temperature: 25, composition: { sodium: 75 }, carbon });
    expect(Math.abs(pH - 10.012)).toBeLessThan(0.02);
  });
  it.each([
    [{ sodium: 50, potassium: 25, phosphate: 50 }, 6.865],
    [{ sodium: 2 * 30.43, potassium: 8.695, phosphate: 39.125 }, 7.413],
  ])('phosphate standard %#', (composition, expected) => {
    const carbon = { kind: 'closed', dissolvedInorganicCarbon: 0 } as const;
    expect(Math.abs(speciate({ temperature: 25, composition, carbon }).pH - expected)).toBeLessThan(0.025);
  });
});

describe('speciate', () => {
  it('solves any water, from pure to a brine of 2 mol/L of each ion', () => {
    fc.assert(
      fc.property(waterUpTo(2000), (water) => {
        const solved = speciate(water);
        expect(solved.converged).toBe(true);
        expect(everyNumber(solved).some(Number.isNaN)).toBe(false);
        expect(solved.pH).toBeGreaterThan(-2);
        expect(solved.pH).toBeLessThan(16);
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps carbon and charge', () => {
    const plain = waterUpTo(20).map((water) => ({
      ...water,
      composition: { ...water.composition, phosphate: 0, sulfate: 0, dissolvedOrganicCarbon: 0 },
    }));
    fc.assert(
      fc.property(plain, (water) => {
        const solved = speciate(water);
        const scale =
          solved.bicarbonate + solved.carbonate + solved.free.hydroxide + solved.free.hydrogen + 1e-3;
        const missing = alkalinityOf(water.composition) - alkalinityFromSpecies(solved);
        expect(Math.abs(missing) / scale).toBeLessThan(1e-8);
        if (water.carbon.kind === 'closed') {
          const { dissolvedInorganicCarbon: given } = water.carbon;
          expect(Math.abs(solved.dissolvedInorganicCarbon - given)).toBeLessThanOrEqual(1e-9 * given + 1e-15);
        }
      }),
    );
  });

  it('gives back the pH it was given, and its carbon from the alkalinity', () => {
    fc.assert(
      fc.property(compositionUpTo(5), fc.double({ min: 5, max: 9.5, noNaN: true }), (composition, pH) => {
        const base = { temperature: 20, composition: { ...composition, sodium: composition.sodium + 60 } };
        const alkalinity = alkalinityOf(base.composition);
        const first = speciate({ ...base, pH, carbon: { kind: 'alkalinity', alkalinity } });
        const { dissolvedInorganicCarbon } = first;
        const second = speciate({ ...base, carbon: { kind: 'closed', dissolvedInorganicCarbon } });
        expect(Math.abs(second.pH - pH)).toBeLessThan(1e-7);
      }),
    );
  });

  it('moves pH up with base and down with acid and CO2', () => {
    fc.assert(
      fc.property(waterUpTo(50), (water) => {
        const { composition } = water;
        const { pH } = speciate(water);
        const base = { ...composition, sodium: (composition.sodium ?? 0) + 0.5 };
        const acid = { ...composition, chloride: (composition.chloride ?? 0) + 0.5 };
        expect(speciate({ ...water, composition: base }).pH).toBeGreaterThan(pH);
        expect(speciate({ ...water, composition: acid }).pH).toBeLessThan(pH);
      }),
    );
    let before = 20;
    for (const pressure of [1, 10, 40, 100, 1000, 10_000]) {
      const { pH } = speciate({
        temperature: 20,
        composition: { sodium: 2 },
        carbon: { kind: 'open', pressure },
      });
      expect(pH).toBeLessThan(before);
      before = pH;
    }
  });

  it('takes organic acids out of the alkalinity', () => {
    const composition = { sodium: 0.5 };
    const clear = speciate({ temperature: 25, composition, carbon: AIR });
    const brown = speciate({
      temperature: 25,
      composition: { ...composition, dissolvedOrganicCarbon: 1 },
      carbon: AIR,
    });
    expect(brown.pH).toBeLessThan(clear.pH);
    const scale = brown.bicarbonate + 2 * brown.carbonate + brown.free.hydroxide - brown.free.hydrogen;
    expect(brown.organicAnion + scale).toBeCloseTo(0.5, 9);
  });

  it.each([
    [{ temperature: 25, composition: { calcium: -1 }, carbon: AIR }, 'calcium'],
    [{ temperature: 25, composition: { calcium: Number.NaN }, carbon: AIR }, 'calcium'],
    [{ temperature: 200, composition: {}, carbon: AIR }, 'temperature'],
    [{ temperature: 25, composition: {}, carbon: { kind: 'open', pressure: -1 } }, 'CO2'],
    [{ temperature: 25, composition: {}, carbon: { kind: 'alkalinity', alkalinity: 1 } }, 'needs a pH'],
    [{ temperature: 25, composition: {}, pH: 30, carbon: AIR }, 'pH'],
    [
      { temperature: 25, composition: {}, pH: 10, carbon: { kind: 'alkalinity', alkalinity: -1 } },
      'less than',
    ],
  ] as [WaterState, string][])('refuses what is not a water, %#', (water, message) => {
    expect(() => speciate(water)).toThrow(message);
  });
});
