import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { shellOf, shellOnLandOf } from './shell-of.ts';

describe('calcium carbonate of animals', () => {
  it('is 250 mg in a snail of 100 mg dry body, 40 % of it carbon', () => {
    // 100 mg x 0.4 / 12.011 = 3.33 mmol C; 250 mg / 100.087 = 2.498 mmol CaCO3
    expect(shellOf(library.organism('planorbella-duryi'), 0.4)).toBeCloseTo(2.498 / 3.33, 3);
  });

  it('is built from the water by those that live in it, and not by springtails', () => {
    const snail = library.organism('planorbella-duryi');
    expect(shellOf({ ...snail, habitat: 'land' }, 0.4)).toBe(0);
    expect(shellOf(library.organism('asellus-aquaticus'), 0.4)).toBeGreaterThan(0);
    expect(shellOf(library.organism('folsomia-candida'), 0.4)).toBe(0);
  });

  it('is taken from what they eat by woodlice and land crabs, a quarter to three tenths of the dry mass with it', () => {
    for (const id of ['porcellio-scaber', 'porcellionides-pruinosus', 'trichorhina-tomentosa']) {
      const woodlouse = library.organism(id);
      expect(shellOf(woodlouse, 0.42), id).toBe(0);
      const perDryMass = (shellOnLandOf(woodlouse, 0.42) * 0.42 * 100.087) / 12.011;
      expect(perDryMass / (1 + perDryMass), id).toBeGreaterThan(0.24);
      expect(perDryMass / (1 + perDryMass), id).toBeLessThan(0.31);
    }
    expect(shellOnLandOf(library.organism('geosesarma-dennerle'), 0.42)).toBeGreaterThan(0);
    expect(shellOnLandOf(library.organism('planorbella-duryi'), 0.42)).toBe(0);
    expect(shellOnLandOf(library.organism('folsomia-candida'), 0.42)).toBe(0);
  });

  it('is stated for every snail, crayfish, shrimp and amphipod that lives in water', () => {
    for (const { id, group, habitat, shell } of Object.values(library.data.organisms))
      if (habitat === 'water' && /snail|crayfish|shrimp|amphipod/.test(group))
        expect(shell, id).toBeDefined();
  });
});
