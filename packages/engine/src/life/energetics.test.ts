import { describe, expect, it } from 'vitest';
import {
  type AnimalDay,
  type AnimalState,
  animalDay,
  bodyRate,
  EGG_YIELD,
  energeticsOf,
  lengthOf,
  midDayLength,
  SHRINKING_YIELD,
  structureOf,
} from './energetics.ts';
import { GRAZER } from './life-test-kit.ts';

const grazer = energeticsOf(GRAZER);
const day = { rate: 1, starvedUpkeep: GRAZER.starvedUpkeep, femaleShare: GRAZER.femaleShare };

function animal(length: number, given: Partial<AnimalState>): AnimalState {
  return { length, buffer: 0, isAdult: false, carbon: 0, nitrogen: 1, phosphorus: 1, ...given };
}
function lived(state: AnimalState): AnimalDay {
  const result = { structure: 0, store: 0, buffer: 0 };
  animalDay(grazer, state, day, result);
  return result;
}

describe('energeticsOf', () => {
  it('grows along the von Bertalanffy curve it was derived from', () => {
    // L(t) = end - (end - birth) exp(-r f t), the solution of the growth equation at constant fullness f in length
    // terms dL/dt = r (f end - L): L(t) = f end - (f end - birth) exp(-r t).
    for (const fullness of [1, 0.7]) {
      let length = GRAZER.lengthAtBirth;
      const target = fullness * GRAZER.lengthAtEnd;
      for (let t = 1; t <= 150; t += 1) {
        const middle = midDayLength(grazer, length, fullness, 1);
        const carbon = fullness * grazer.assimilation * middle * middle;
        const { structure, store } = lived(animal(middle, { carbon }));
        expect(store).toBeCloseTo(GRAZER.store * structure, 18);
        length = lengthOf(grazer, structureOf(grazer, length) + structure);
        const exact = target - (target - GRAZER.lengthAtBirth) * Math.exp(-GRAZER.growthRate * t);
        expect(Math.abs(length / exact - 1)).toBeLessThan(0.002);
      }
    }
  });

  it('just stands still at the end length with ample food', () => {
    const carbon = grazer.assimilation * GRAZER.lengthAtEnd ** 2;
    expect(grazer.kappa * carbon).toBeCloseTo(grazer.upkeep * GRAZER.lengthAtEnd ** 3, 15);
  });

  it('holds the stated dry mass, store included: 0.005 mg/mm3, 40 % carbon of 12.011 g/mol', () => {
    expect((1 + GRAZER.store) * structureOf(grazer, 2)).toBeCloseTo((0.005e-3 * 8 * 0.4) / 12.011, 15);
  });

  it('holds nitrogen and phosphorus in the ratio of their mass parts', () => {
    expect(grazer.nitrogenPerCarbon).toBeCloseTo(0.085 / 14.007 / (0.4 / 12.011), 12);
    expect(grazer.phosphorusPerCarbon).toBeCloseTo(0.012 / 30.974 / (0.4 / 12.011), 12);
  });
});

describe('animalDay', () => {
  const length = 5;
  const upkeep = grazer.upkeep * length ** 3;
  const maturity = grazer.maturityUpkeep * GRAZER.lengthAtPuberty ** 3;

  it('splits ample food by kappa: growth, and eggs of the female part after the upkeep of maturity', () => {
    const carbon = grazer.assimilation * length ** 2;
    const { structure, store, buffer } = lived(animal(length, { isAdult: true, carbon }));
    expect(structure + store).toBeCloseTo(GRAZER.growthYield * (0.9 * carbon - upkeep), 18);
    expect(buffer).toBeCloseTo(EGG_YIELD * 0.5 * (0.1 * carbon - maturity), 18);
  });

  it('makes no eggs before puberty', () => {
    const carbon = grazer.assimilation * 4;
    expect(lived(animal(2, { carbon })).buffer).toBe(0);
  });

  it('pays from the buffer before it touches the body', () => {
    const buffer = 10 * (upkeep + maturity);
    const hungry = lived(animal(length, { isAdult: true, buffer }));
    expect(hungry.structure).toBe(0);
    expect(hungry.buffer).toBeCloseTo(-(upkeep + maturity), 18);
  });

  it('shrinks at the starved level of upkeep when nothing is left', () => {
    const { structure, buffer } = lived(animal(length, { isAdult: true }));
    expect(buffer).toBe(-0);
    expect(structure).toBeCloseTo((-0.6 * (upkeep + maturity)) / SHRINKING_YIELD, 18);
  });

  it('keeps growth within the nitrogen and the phosphorus it got', () => {
    const carbon = grazer.assimilation * length ** 2;
    const ample = lived(animal(length, { isAdult: true, carbon }));
    const need = ample.structure + ample.store + ample.buffer;
    const poor = animal(length, { isAdult: true, carbon, nitrogen: 0.5 * need * grazer.nitrogenPerCarbon });
    expect(lived(poor).structure).toBeCloseTo(0.5 * ample.structure, 15);
    const none = animal(length, { isAdult: true, carbon, phosphorus: 0 });
    expect(lived(none)).toEqual({ structure: 0, store: 0, buffer: 0 });
  });
});

describe('bodyRate', () => {
  it('is 1 at the reference temperature and falls again in the heat', () => {
    expect(bodyRate(GRAZER, 20)).toBeCloseTo(1, 14);
    expect(bodyRate(GRAZER, 30)).toBeGreaterThan(bodyRate(GRAZER, 20));
    expect(bodyRate(GRAZER, 42)).toBeLessThan(bodyRate(GRAZER, 30));
  });
});
