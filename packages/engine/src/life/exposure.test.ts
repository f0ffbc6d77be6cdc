import { describe, expect, it } from 'vitest';
import { openOnLand, sparedHazard } from './exposure.ts';
import { valuesOf, WOODLOUSE } from './land-test-kit.ts';
import { createLivingPopulation, type LivingPopulation } from './living-population.ts';
import type { AnimalTraits } from './traits.ts';

const BARE = { landArea: 0.3, cover: { inWater: 0, onLand: 0, besideLeaves: 0 } };

function population(kind: Partial<AnimalTraits>): LivingPopulation {
  const values = { ...valuesOf('woodlouse', WOODLOUSE), hiding: 0.8 };
  return createLivingPopulation(
    { id: 'woodlouse', traits: { mating: 'two sexes', brood: 'carried', ...kind } },
    values,
  );
}

const woodlouse = population({ preyKind: 'small arthropods', inGround: 0.5 });
const frog = population({ preyKind: 'amphibians' });
const crab = population({ preyKind: 'crustaceans' });

describe('what lies open to hunters on land', () => {
  it('is what is not in the ground, of which hunters that dig find a fifth', () => {
    expect(openOnLand(frog, woodlouse, 0, BARE)).toBeCloseTo(0.5, 12);
    expect(openOnLand(crab, woodlouse, 0, BARE)).toBeCloseTo(0.6, 12);
  });

  it('is thinned by the leaves small animals live between, as springtails were among centipedes (Kalinkat et al. 2013)', () => {
    const open = (leafArea: number) => openOnLand(frog, woodlouse, 0, { ...BARE, leafArea });
    expect(open(0.3) / open(0)).toBeCloseTo(1 / 2, 12);
    expect(open(2.7) / open(0)).toBeCloseTo(1 / 10, 12);
    const young = population({ preyKind: 'crustaceans' });
    expect(openOnLand(frog, young, 0, { ...BARE, leafArea: 2.7 })).toBeCloseTo(1, 12);
  });

  it('is less under cover, which for small animals leaves are not beside that', () => {
    const cover = { inWater: 0, onLand: 1, besideLeaves: 0.5 };
    expect(openOnLand(frog, woodlouse, 0, { ...BARE, cover })).toBeCloseTo(0.5 * (1 - 0.8 * 0.5), 12);
    expect(openOnLand(frog, crab, 0, { ...BARE, cover })).toBeCloseTo(1 - 0.8, 12);
  });
});

describe('a day in which only a part lies open', () => {
  it('takes no more than that part, and next to nothing is spared of few finds', () => {
    expect(1 - Math.exp(-sparedHazard(1e3, 0.1))).toBeCloseTo(0.1, 9);
    expect(sparedHazard(1e-6, 0.1) / 1e-6).toBeCloseTo(1, 4);
    expect(sparedHazard(2, 1)).toBe(2);
  });

  it('rises with what hunters search', () => {
    const losses = [0.01, 0.1, 0.5, 2].map((hazard) => sparedHazard(hazard, 0.2));
    expect([...losses].sort((a, b) => a - b)).toEqual(losses);
    expect(losses.at(-1)).toBeLessThan(-Math.log(0.8));
  });
});
