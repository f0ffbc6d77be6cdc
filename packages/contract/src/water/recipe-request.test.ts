import type { Band } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { readRecipeRequest } from './recipe-request.ts';
import { targetsOfBands } from './targets-of-bands.ts';

const ASKED = {
  volume: '40 L',
  waters: ['rain', { water: 'hard-tap', most: '50 %' }],
  salts: ['gypsum', 'epsom'],
  targets: { GH: '6 °dGH', KH: '4 °dKH', sodium: 'at most 10 mg/L' },
};

describe('a request', () => {
  it('becomes the engine’s, names found under any of their names', () => {
    const { request } = readRecipeRequest(ASKED);
    expect(request?.volume).toBeCloseTo(0.04, 12);
    expect(request?.waters.map(({ id, most }) => [id, most])).toEqual([
      ['rain', undefined],
      ['hard-tap', 0.5],
    ]);
    expect(request?.salts.map(({ id }) => id)).toEqual(['gypsum', 'epsom-salt']);
    expect(request?.targets).toHaveLength(3);
  });

  it('takes waters by their analysis and what stays of an existing one', () => {
    const { request } = readRecipeRequest({
      ...ASKED,
      waters: ['distilled'],
      own: [{ id: 'tank', hardness: '12 °dGH', alkalinity: '8 °dKH' }],
      kept: { water: 'tank', volume: '30 L' },
    });
    expect(request?.kept?.volume).toBeCloseTo(0.03, 12);
    expect((request?.kept?.composition.calcium ?? 0) / (120 / 56.0774)).toBeCloseTo(0.8, 9);
  });

  it.each([
    [{ volume: '0 L' }, 'volume', 'outside 0.1 L', 'ordinary value is 40 L'],
    [{ volume: '40' }, 'volume', 'no unit', 'such as 40 L'],
    [{ waters: ['rian'] }, 'waters.0', "no water 'rian'", "'rain'"],
    [{ salts: ['gipsum'] }, 'salts.0', "no salt 'gipsum'", "'gypsum'"],
    [{ salts: ['zz'] }, 'salts.0', "no salt 'zz'", 'Known: '],
    [{ waters: [] }, 'waters', 'no water is named', 'such as distilled'],
    [{ targets: { GH: '6 °dKH' } }, 'targets.GH', 'does not measure GH', '6 °dGH'],
    [{ targets: { gh: '6 °dGH' } }, 'targets', "'gh' is not known", "'GH'"],
    [
      { targets: { GH: '3 °dGH', calcium: '60 mg/L' } },
      'targets',
      'calcium and magnesium together come to 7.6 °dGH at least, GH to 3.3 °dGH at most',
      'GH is calcium plus magnesium',
    ],
    [
      {
        targets: {
          KH: '8 to 10 °dKH',
          GH: 'at most 2 °dGH',
          sodium: 'at most 10 mg/L',
          potassium: 'at most 5 mg/L',
        },
      },
      'targets',
      'KH is to be 8.0 °dKH at least, but all positive ions allowed carry 3.6 °dKH',
      'allow more of one, or lower KH',
    ],
    [{ targets: { KH: '6 to 4 °dKH' } }, 'targets.0', 'above 6.0 °dKH and below 4.0 °dKH', 'low limit below'],
    [{ waters: [{ water: 'rain', most: '20 %' }] }, 'waters', 'add up to 0.20 only', 'Allow more'],
    [{ kept: { water: 'rain', volume: '50 L' } }, 'kept.volume', '50 L', 'at most the whole'],
    [{ own: [{ id: 'x', calcium: '-4 mg/L' }] }, 'own.0.calcium', 'no water holds less', 'such as 12 mg/L'],
  ])('%j is refused', (change, path, message, mend) => {
    const { request, faults } = readRecipeRequest({ ...ASKED, ...change });
    expect(request).toBeUndefined();
    expect(faults[0]?.path.join('.')).toBe(path);
    expect(faults[0]?.message).toContain(message);
    expect(faults[0]?.mend).toContain(mend);
  });

  it.each([undefined, 7, 'x', [], {}, { volume: {} }])('%j does not throw', (written) => {
    expect(readRecipeRequest(written).faults.length).toBeGreaterThan(0);
  });
});

describe('targets of those who live there', () => {
  const band = (owner: string, series: Band['series'], low?: number, high?: number): Band => ({
    series,
    owner,
    basis: 'assumed',
    source: 'invented',
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
  });

  it('lie between the highest need and the lowest limit, in the plan’s units', () => {
    const [GH, conductivity] = targetsOfBands([
      band('a', 'GH', 3, 20),
      band('b', 'GH', 5.60774, 11.21548),
      band('a', 'conductivity', undefined, 400),
    ]);
    // 10 mg CaO/L a degree: 5.60774 degrees are 1 mmol/L.
    expect(GH?.target.low).toBeCloseTo(1, 9);
    expect(GH?.target.high).toBeCloseTo(2, 9);
    expect(GH?.target.aim).toBeCloseTo(Math.SQRT2, 9);
    expect(GH).toMatchObject({ lowBy: 'b', highBy: 'b' });
    expect(conductivity?.target).toEqual({ quantity: 'conductivity', high: 400 });
  });

  it('tell who cannot live with whom', () => {
    const [KH] = targetsOfBands([band('a', 'KH', 6), band('b', 'KH', undefined, 3)]);
    expect(KH?.conflict).toBe(
      'KH is to be at least 6 °dKH for a and at most 3 °dKH for b: no water suits both, and the recipe aims between.',
    );
  });
});
