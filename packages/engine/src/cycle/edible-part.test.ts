import { describe, expect, it } from 'vitest';
import { ediblePart } from './edible-part.ts';

describe('what animals take of a plant', () => {
  it('is less the drier its leaves are', () => {
    // direction of Elger & Willby 2003: dry mass eaten falls with dry matter content over 20 water plants
    const parts = [0.05, 0.08, 0.12, 0.2, 0.3].map((dryPart) =>
      ediblePart({ group: 'land', dryPart, isDefended: false }),
    );
    for (const [k, part] of parts.entries()) {
      expect(part).toBeGreaterThan(0);
      expect(part).toBeLessThan(1);
      if (k > 0) expect(part).toBeLessThan(parts[k - 1]!);
    }
  });

  it('is less of plants with needles or sap against eaters', () => {
    const leaf = { group: 'emersed', dryPart: 0.1 } as const;
    expect(ediblePart({ ...leaf, isDefended: true })).toBeLessThan(
      ediblePart({ ...leaf, isDefended: false }),
    );
  });
});
