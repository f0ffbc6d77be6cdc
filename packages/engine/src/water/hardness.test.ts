import { describe, expect, it } from 'vitest';
import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { equilibrateWithAir } from './equilibrate-with-air.ts';
import { alkalinityOf, generalHardness, testedAlkalinity, titratedAlkalinity } from './hardness.ts';
import { HUMIC_ACID, oliverExponent, oliverSlope, siteDensityPerCarbon } from './organic-acids.ts';
import { speciate } from './speciate.ts';

describe('hardness and alkalinity', () => {
  it('counts charges', () => {
    expect(generalHardness({ calcium: 1, magnesium: 0.5 })).toBe(1.5);
    expect(
      alkalinityOf({ calcium: 1, ammonium: 0.1, nitrate: 0.1, sulfate: 0.5, phosphate: 0.2 }),
    ).toBeCloseTo(0.8, 12);
  });

  it('as a drop test finds it is the same before and after blending', () => {
    const brown = { calcium: 0.5, dissolvedOrganicCarbon: 2 };
    const clear = { sodium: 1.5, chloride: 0.3 };
    const half = { calcium: 0.25, dissolvedOrganicCarbon: 1, sodium: 0.75, chloride: 0.15 };
    expect(testedAlkalinity(half)).toBeCloseTo((testedAlkalinity(brown) + testedAlkalinity(clear)) / 2, 12);
    expect(testedAlkalinity(clear)).toBeCloseTo(1.2, 12);
    expect(Math.max(0, testedAlkalinity(brown))).toBe(
      titratedAlkalinity(alkalinityOf(brown), 2 * HUMIC_ACID.siteDensity),
    );
  });

  it('is found in full by a titration of clear water, and never below nothing', () => {
    expect(titratedAlkalinity(1.5, 0)).toBe(1.5);
    expect(titratedAlkalinity(-0.2, 0)).toBe(0);
  });

  // The titration itself, worked with the solver: acid added until pH 4.5 with the carbon kept, less a blank of pure
  // water with the same carbon.
  it('is the acid that brings brown water to pH 4.5', () => {
    const composition = { sodium: 0.8, dissolvedOrganicCarbon: 1.5 };
    const carbon = { kind: 'closed', dissolvedInorganicCarbon: 0.75 } as const;
    const acidTo = (water: typeof composition): number => {
      let low = -1;
      let high = 5;
      while (high - low > 1e-9) {
        const acid = (low + high) / 2;
        const { pH } = speciate({
          temperature: 25,
          composition: { ...water, chloride: acid + 1, sodium: water.sodium + 1 },
          carbon,
        });
        if (pH > 4.5) low = acid;
        else high = acid;
      }
      return high;
    };
    const blank = acidTo({ sodium: 0, dissolvedOrganicCarbon: 0 });
    const sites = 1.5 * HUMIC_ACID.siteDensity;
    expect(acidTo(composition) - blank).toBeCloseTo(titratedAlkalinity(0.8, sites), 3);
  });
});

describe('organic acids', () => {
  // Oliver et al. 1983 as quoted: pK 0.96 + 0.90 pH - 0.039 pH2, less pH, worked by hand.
  it('dissociates as worked by hand', () => {
    expect(oliverExponent(3)).toBeCloseTo(0.96 + 2.7 - 0.351 - 3, 12);
    expect(oliverExponent(7)).toBeCloseTo(0.96 + 6.3 - 1.911 - 7, 12);
    expect((oliverExponent(5.001) - oliverExponent(4.999)) / 0.002).toBeCloseTo(oliverSlope(5), 6);
    expect(oliverExponent(-3)).toBe(oliverExponent(0));
  });
  it('has 10 ueq/mg C, 0.12 eq/mol C', () => {
    expect(siteDensityPerCarbon(10)).toBeCloseTo(0.12011, 6);
  });
});

describe('equilibrateWithAir', () => {
  // Stumm & Morgan: pure water under 10^-3.5 atm CO2 at 25 degC holds 1.29e-5 mol/L of inorganic carbon at pH 5.66.
  it('fills pure water from the air', () => {
    const pure = Object.fromEntries(DISSOLVED_IDS.map((id) => [id, 0])) as unknown as WaterComposition;
    const air = { carbonDioxide: (10 ** -3.5 * 1e6) / (1 - 0.0313), pressure: 101325 };
    const aired = equilibrateWithAir(pure, 25, air);
    expect(aired.pH).toBeCloseTo(5.66, 2);
    expect(aired.dissolvedInorganicCarbon).toBeCloseTo(0.0129, 3.8);
    expect(aired.oxygen * 31.998).toBeCloseTo(8.263, 2);
    const hard = equilibrateWithAir({ ...pure, calcium: 1 }, 25, air);
    expect(hard.dissolvedInorganicCarbon).toBeGreaterThan(1.9);
  });
});
