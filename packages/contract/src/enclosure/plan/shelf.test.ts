import { alkalinityOf, solveRecipe } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { analyseWater } from './analyse-water.ts';
import { shelfCarbonates, shelfSalts, shelfWaters } from './shelf.ts';

describe('the shelf', () => {
  it('puts the waters of the file before those of the library, and none twice', () => {
    const { water } = analyseWater({
      id: 'rain',
      name: 'Rain off the shed',
      hardness: '1 °dGH',
      alkalinity: '1 °dKH',
    });
    expect(water?.name).toBe('Rain off the shed');
    const own = { id: 'rain', name: 'Rain off the shed', hardness: 0.178, alkalinity: 0.357 };
    const waters = shelfWaters({ waters: [own] } as unknown as Parameters<typeof shelfWaters>[0]);
    expect(waters[0]).toMatchObject({ id: 'rain', from: 'file', kind: 'tap' });
    expect(waters.filter(({ id }) => id === 'rain')).toHaveLength(1);
    expect(waters.find(({ id }) => id === 'distilled')?.kind).toBe('pure');
  });

  it('holds salts that a recipe can be solved with', () => {
    const distilled = shelfWaters({}).find(({ id }) => id === 'distilled');
    const { salts, targets } = solveRecipe({
      volume: 0.01,
      waters: distilled ? [distilled] : [],
      salts: shelfSalts(),
      targets: [{ quantity: 'GH', aim: 1 }],
      temperature: 20,
      air: { carbonDioxide: 420, pressure: 101_325 },
    });
    expect(salts.length).toBeGreaterThan(0);
    expect(targets.every(({ met }) => met)).toBe(true);
  });

  // 100 g/mol of CaCO3: a kilogram of pure lime is 10 mol.
  it('tells a carbonate by the kilogram', () => {
    for (const { name, perKilogram, usualGrain } of shelfCarbonates()) {
      const { carbonateSolid = 0, aragoniteSolid = 0 } = perKilogram.contents;
      const amount = carbonateSolid + aragoniteSolid;
      expect(amount, name).toBeGreaterThan(7);
      expect(amount, name).toBeLessThanOrEqual(9.992);
      expect(usualGrain, name).toBeGreaterThan(1e-5);
    }
  });
});

describe('a typed water report', () => {
  const report = {
    id: 'tap',
    calcium: '98 mg/L',
    magnesium: '10 mg/L',
    sodium: '18 mg/L',
    potassium: '2 mg/L',
    chloride: '32 mg/L',
    sulfate: '43 mg/L',
    nitrate: '19 mg/L',
    bicarbonate: '290 mg/L',
  };

  it('becomes a water whose alkalinity is the printed one', () => {
    const { water, findings } = analyseWater(report);
    expect(findings.every(({ severity }) => severity !== 'blocking')).toBe(true);
    // 290 mg/L of bicarbonate at 61.017 g/mol.
    expect(alkalinityOf(water?.composition ?? {})).toBeCloseTo(290 / 61.017, 2);
  });

  it('is refused where its charges cannot be', () => {
    const { water, findings } = analyseWater({ ...report, bicarbonate: '29 mg/L' });
    expect(water).toBeUndefined();
    expect(findings[0]).toMatchObject({ severity: 'blocking' });
    expect(findings[0]?.message).toMatch(/do not add up|KH/);
  });

  it('says in which line a figure cannot be read', () => {
    expect(analyseWater({ ...report, calcium: '98 cm' }).findings[0]).toMatchObject({ key: 'calcium' });
    expect(analyseWater({ ...report, sodium: '-2 mg/L' }).findings[0]?.message).toMatch(/outside|negative/);
  });

  it('says what it takes for granted where hardness and alkalinity are all there is', () => {
    const { water, findings } = analyseWater({ id: 'well', hardness: '10 °dGH', alkalinity: '7 °dKH' });
    expect(water?.assumed?.length).toBeGreaterThan(0);
    expect(findings[0]).toMatchObject({ severity: 'note' });
  });
});
