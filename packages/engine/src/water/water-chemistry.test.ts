import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { compose } from '../process/compose.ts';
import { listedDerivation } from '../process/contract.ts';
import { VARIABLE_INDEX as V, VARIABLE_IDS } from '../variables/variables.ts';
import { carbonDioxidePressure, dissolvedCarbonDioxide, oxygenSaturation } from './gases.ts';
import { alkalinityOf } from './hardness.ts';
import { speciate } from './speciate.ts';
import { waterChemistry } from './water-chemistry.ts';
import { waterReport } from './water-report.ts';

const create = (organicChargeDensity = 10) =>
  compose([], [listedDerivation(waterChemistry)], { 'water-chemistry': { organicChargeDensity } });

interface Sample {
  readonly composition: WaterComposition;
  readonly carbon: number;
  readonly temperature: number;
  readonly volume: number;
}

/** Puts a water of given concentrations [mol/m3] into a value array. */
function pool({ composition, carbon, temperature, volume }: Sample): Float64Array {
  const values = new Float64Array(VARIABLE_IDS.length);
  for (const id of DISSOLVED_IDS) values[V[id]] = composition[id] * volume;
  values[V.dissolvedInorganicCarbon] = carbon * volume;
  values[V.waterVolume] = volume;
  values[V.waterTemperature] = temperature;
  values[V.roomCarbonDioxide] = 500;
  values[V.airPressure] = 101325;
  return values;
}

const concentration = fc.oneof(
  fc.constant(0),
  fc.double({ min: -6, max: 1, noNaN: true }).map((x) => 10 ** x),
);
const sample: fc.Arbitrary<Sample> = fc.record({
  composition: fc.record(
    Object.fromEntries(DISSOLVED_IDS.map((id) => [id, concentration])),
  ) as unknown as fc.Arbitrary<WaterComposition>,
  carbon: concentration,
  temperature: fc.double({ min: 2, max: 40, noNaN: true }),
  volume: fc.double({ min: 0.001, max: 1, noNaN: true }),
});

describe('water-chemistry', () => {
  it('agrees with speciate over random waters, one instance all along', () => {
    const system = create();
    fc.assert(
      fc.property(sample, (given) => {
        const values = pool(given);
        system.derive(values);
        const solved = speciate({
          temperature: given.temperature,
          composition: given.composition,
          carbon: { kind: 'closed', dissolvedInorganicCarbon: given.carbon },
        });
        expect(Math.abs(values[V.pH]! - solved.pH)).toBeLessThan(1e-6);
        const near = (id: keyof typeof V, expected: number): void =>
          expect(Math.abs(values[V[id]]! - expected), id).toBeLessThanOrEqual(
            5e-6 * Math.abs(expected) + 1e-12,
          );
        near('alkalinity', alkalinityOf(given.composition));
        near('carbonDioxide', solved.carbonDioxide);
        near('bicarbonate', solved.bicarbonate);
        near('unionisedAmmonia', solved.unionisedAmmonia);
        near('hydrogenActivity', solved.activity.hydrogen);
        near('calciteSaturation', 10 ** solved.saturationIndex.calcite);
        near('oxygenSaturation', oxygenSaturation(given.temperature, 101325));
      }),
      { numRuns: 1000 },
    );
  });

  it('does not show where it came from', () => {
    fc.assert(
      fc.property(fc.array(sample, { minLength: 1, maxLength: 4 }), sample, (before, given) => {
        const warm = create();
        for (const other of before) warm.derive(pool(other));
        const [first, second] = [pool(given), pool(given)];
        warm.derive(first);
        create().derive(second);
        expect(Math.abs(first[V.pH]! - second[V.pH]!)).toBeLessThan(1e-9);
      }),
    );
  });

  it('gives CO2 that dilute water takes up from the room', () => {
    const empty = Object.fromEntries(DISSOLVED_IDS.map((id) => [id, 0])) as unknown as WaterComposition;
    const values = pool({ composition: empty, carbon: 0, temperature: 20, volume: 0.02 });
    create().derive(values);
    const pressure = carbonDioxidePressure(20, { carbonDioxide: 500, pressure: 101325 });
    expect(values[V.carbonDioxideSaturation]).toBeCloseTo(dissolvedCarbonDioxide(20, pressure), 6);
  });

  it('stays a number in a pool that is dry, empty, boiling hot or overdrawn', () => {
    const system = create();
    const wild = fc.double({ min: -1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(wild, { minLength: VARIABLE_IDS.length, maxLength: VARIABLE_IDS.length }),
        fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1e-6, noNaN: true })),
        fc.double({ min: -20, max: 99, noNaN: true }),
        fc.double({ min: 0, max: 2e5, noNaN: true }),
        (amounts, volume, temperature, pressure) => {
          const values = Float64Array.from(amounts);
          values[V.waterVolume] = volume;
          values[V.waterTemperature] = temperature;
          values[V.airPressure] = pressure;
          system.derive(values);
          for (const id of waterChemistry.provides) expect(Number.isFinite(values[V[id]]), id).toBe(true);
        },
      ),
    );
    const nothing = new Float64Array(VARIABLE_IDS.length);
    system.derive(nothing);
    for (const id of waterChemistry.provides) expect(Number.isFinite(nothing[V[id]]), id).toBe(true);
  });

  it('has clear water when its organic carbon carries no charge', () => {
    const composition = {
      ...(Object.fromEntries(DISSOLVED_IDS.map((id) => [id, 0])) as unknown as WaterComposition),
    };
    const brown = { ...composition, sodium: 1, dissolvedOrganicCarbon: 1 };
    const values = pool({ composition: brown, carbon: 1, temperature: 20, volume: 0.02 });
    create(0).derive(values);
    const clear = speciate({
      temperature: 20,
      composition: { sodium: 1 },
      carbon: { kind: 'closed', dissolvedInorganicCarbon: 1 },
    });
    expect(values[V.pH]).toBeCloseTo(clear.pH, 5);
  });
});

describe('waterReport', () => {
  // Worked by hand: 0.7 mmol/L Ca + 0.3 Mg = 1 mmol/L, 1 dGH = 0.17833 mmol/L; alkalinity 1.4 meq/L, 1 dKH = 0.35665 meq/L.
  it("reads hardness and masses in the keeper's units", () => {
    const values = pool({
      composition: {
        calcium: 0.7,
        magnesium: 0.3,
        sodium: 0.4,
        potassium: 0.1,
        chloride: 0.5,
        sulfate: 0.2,
        ammonium: 0.1,
        nitrite: 0.05,
        nitrate: 0.14,
        phosphate: 0.01,
        dissolvedOrganicCarbon: 0,
      },
      carbon: 1.4,
      temperature: 22,
      volume: 0.02,
    });
    values[V.oxygen] = 0.25 * 0.02;
    const report = waterReport(values);
    expect(report.GH).toBeCloseTo(1 / 0.17833, 3);
    expect(report.KH).toBeCloseTo(1.5 / 0.35665, 3);
    expect(report.totalAmmonia).toBeCloseTo(1.4007, 4);
    expect(report.nitrite).toBeCloseTo(0.7, 3);
    expect(report.nitrate).toBeCloseTo(1.961, 3);
    expect(report.phosphate).toBeCloseTo(0.3097, 4);
    expect(report.oxygen).toBeCloseTo(8, 2);
    create().derive(values);
    expect(report.pH).toBeCloseTo(values[V.pH]!, 6);
    expect(report.unionisedAmmonia).toBeCloseTo(values[V.unionisedAmmonia]! * 14.007, 6);
  });
  it('never throws for a dry pool', () => {
    const values = new Float64Array(VARIABLE_IDS.length);
    expect(waterReport(values).KH).toBe(0);
    values[V.calcium] = 3;
    expect(Number.isFinite(waterReport(values).conductivity)).toBe(true);
  });
});
