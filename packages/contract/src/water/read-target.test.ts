import { describe, expect, it } from 'vitest';
import { mergedTargets, readAmount, readTarget } from './read-target.ts';

describe('amounts in the units of the trade', () => {
  // 10 mg CaO/L per German degree, 10 mg CaCO3/L per French, 1 grain per imperial gallon (Clark) or US gallon (gpg).
  it.each([
    ['GH', '6 °dGH', 60 / 56.0774],
    ['GH', '6 dH', 60 / 56.0774],
    ['GH', '100 ppm', 100 / 100.0869],
    ['GH', '10 °fH', 100 / 100.0869],
    ['GH', '7 °Clark', (7 * 14.254) / 100.0869],
    ['GH', '6 gpg', (6 * 17.118) / 100.0869],
    ['GH', '2 meq/L', 1],
    ['KH', '4 dKH', 80 / 56.0774],
    ['KH', '50.04 ppm CaCO3', 1],
    ['KH', '1.5 mmol/L', 1.5],
    ['calcium', '40.078 mg/L', 1],
    ['calcium', '40.078 ppm', 1],
    ['calcium', '2 meq/L', 1],
    ['sodium', '22,99 mg/L', 1],
    ['nitrate', '14.007 mg N/L', 1],
    ['nitrate', '62.004 mg/L', 1],
    ['conductivity', '0.25 mS/cm', 250],
  ] as const)('%s of %s', (quantity, text, expected) => {
    expect(readAmount(quantity, text) as number).toBeCloseTo(expected, 3);
  });

  it.each([
    ['GH', '6', 'has no unit', '6 °dGH'],
    ['GH', '6 °dKH', 'does not measure GH', '107 ppm CaCO3'],
    ['KH', '6 mg/L', 'does not measure KH', '4 °dKH'],
    ['conductivity', '120 ppm', 'does not measure conductivity', '250 µS/cm'],
    ['sodium', '-3 mg/L', 'is below none', '10 mg/L'],
    ['calcium', 'much', 'does not start with a number', '30 mg/L'],
  ] as const)('%s of %s is refused', (quantity, text, wrong, mend) => {
    const read = readAmount(quantity, text);
    expect(read).toMatchObject({
      wrong: expect.stringContaining(wrong),
      mend: expect.stringContaining(mend),
    });
  });
});

describe('targets', () => {
  it('are aims, bands or limits', () => {
    expect(readTarget('KH', '2 meq/L')).toEqual({ quantity: 'KH', aim: 2 });
    expect(readTarget('KH', '2 to 3 meq/L')).toEqual({ quantity: 'KH', low: 2, high: 3 });
    expect(readTarget('KH', '2-3 meq/L')).toEqual({ quantity: 'KH', low: 2, high: 3 });
    expect(readTarget('conductivity', 'at most 250 µS/cm')).toEqual({ quantity: 'conductivity', high: 250 });
    expect(readTarget('conductivity', '>= 100 µS/cm')).toEqual({ quantity: 'conductivity', low: 100 });
    expect(readTarget('KH', '2 to x meq/L')).toMatchObject({ wrong: expect.any(String) });
  });
  it('of one quantity are put together', () => {
    expect(
      mergedTargets([
        { quantity: 'sodium', high: 1 },
        { quantity: 'KH', aim: 2 },
        { quantity: 'sodium', aim: 0.5 },
      ]),
    ).toEqual([
      { quantity: 'sodium', high: 1, aim: 0.5 },
      { quantity: 'KH', aim: 2 },
    ]);
  });
});
