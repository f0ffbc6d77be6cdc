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
  somaShare,
  structureOf,
} from './energetics.ts';
import { GRAZER } from './life-test-kit.ts';

const grazer = energeticsOf(GRAZER);
const day = { rate: 1, starvedUpkeep: GRAZER.starvedUpkeep, femaleShare: GRAZER.femaleShare };

function animal(length: number, given: Partial<AnimalState>): AnimalState {
  return { length, buffer: 0, carbon: 0, nitrogen: 1, phosphorus: 1, ...given };
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

describe('upkeep of its own', () => {
  const thrifty = energeticsOf({ ...GRAZER, upkeep: 0.08, growthRate: 0.04, shareToSoma: 0.5 });

  it('is what an unfed animal burns: 8 % of a well-fed body a day', () => {
    expect(thrifty.upkeep / grazer.carbonPerCube / (1 + GRAZER.store)).toBeCloseTo(0.08, 14);
    expect(thrifty.maturityUpkeep).toBe(0);
  });

  it('leaves growth with ample food on its von Bertalanffy curve', () => {
    let length = GRAZER.lengthAtBirth;
    for (let t = 1; t <= 100; t += 1) {
      const middle = midDayLength(thrifty, length, 1, 1);
      const carbon = thrifty.assimilation * middle * middle;
      const result = { structure: 0, store: 0, buffer: 0 };
      animalDay(thrifty, animal(middle, { carbon }), day, result);
      length = lengthOf(thrifty, structureOf(thrifty, length) + result.structure);
      expect(Math.abs(length / (7 - 6 * Math.exp(-0.04 * t)) - 1)).toBeLessThan(0.006);
    }
  });

  it('gives the same share to soma at all lengths where it is what growth asks for', () => {
    const same = energeticsOf({ ...GRAZER, upkeep: (3 * GRAZER.growthRate) / GRAZER.growthYield });
    expect(somaShare(same, 2)).toBeCloseTo(GRAZER.shareToSoma, 12);
    expect(same.assimilation).toBeCloseTo(grazer.assimilation, 18);
  });

  it('stands still where the share to soma just pays the upkeep, as far as food carries it', () => {
    // kappa(L) f a = m L with kappa(L) a = m L + g (Lend - L): L = f g Lend / (f g + (1 - f) m).
    const f = 0.4;
    const asked = (3 * 0.04) / GRAZER.growthYield;
    const still = (f * asked * 7) / (f * asked + (1 - f) * 0.08);
    const carbon = f * thrifty.assimilation * still * still;
    expect(somaShare(thrifty, still) * carbon).toBeCloseTo(thrifty.upkeep * still ** 3, 15);
    expect(midDayLength(thrifty, still, f, 1)).toBeCloseTo(still, 12);
  });
});

describe('animalDay', () => {
  const length = 5;
  const upkeep = grazer.upkeep * length ** 3;
  const maturity = grazer.maturityUpkeep * GRAZER.lengthAtPuberty ** 3;

  it('splits ample food by kappa: growth, and eggs of the female part after the upkeep of maturity', () => {
    const carbon = grazer.assimilation * length ** 2;
    const { structure, store, buffer } = lived(animal(length, { carbon }));
    expect(structure + store).toBeCloseTo(GRAZER.growthYield * (0.9 * carbon - upkeep), 18);
    expect(buffer).toBeCloseTo(EGG_YIELD * 0.5 * (0.1 * carbon - maturity), 18);
  });

  it('puts all it has to spare into eggs once grown up, where growth stops there, and grows again what it lost', () => {
    const stopped = energeticsOf({ ...GRAZER, growsOn: 0 });
    const result = { structure: 0, store: 0, buffer: 0 };
    const carbon = stopped.assimilation * 9;
    animalDay(stopped, animal(3, { carbon }), day, result);
    expect(result.structure).toBe(0);
    expect(result.buffer).toBeCloseTo(
      EGG_YIELD * 0.5 * (carbon - (stopped.upkeep + stopped.maturityUpkeep) * 27),
      18,
    );
    animalDay(stopped, animal(2.9, { carbon: stopped.assimilation * 2.9 ** 2 }), day, result);
    expect(result.structure).toBeGreaterThan(0);
    expect(midDayLength(stopped, 3, 1, 1)).toBe(3);
    expect(stopped.fullGrown).toBe(3);
  });

  it('lets those that stop growing when grown up reach that length, from however little below it', () => {
    const stopped = energeticsOf({ ...GRAZER, growsOn: 0 });
    for (const below of [0.2, 0.02, 0.002, 0.0002]) {
      const middle = midDayLength(stopped, 3 - below, 1, 1);
      const result = { structure: 0, store: 0, buffer: 0 };
      animalDay(stopped, animal(middle, { carbon: stopped.assimilation * middle ** 2 }), day, result);
      expect(result.structure).toBeGreaterThan(0);
    }
  });

  it('makes no eggs before the first brood', () => {
    const carbon = grazer.assimilation * 4;
    expect(lived(animal(2, { carbon })).buffer).toBe(0);
  });

  it('begins the first brood one brood interval before puberty, at four fifths of that length at the earliest', () => {
    // 7 - (7 - 3) exp(0.02 x 14) = 1.708 mm lies below 0.8 x 3 mm; an interval of 4 d gives 7 - 4 exp(0.08) = 2.667 mm.
    expect(grazer.firstBrood).toBeCloseTo(2.4, 12);
    expect(energeticsOf({ ...GRAZER, broodInterval: 4 }).firstBrood).toBeCloseTo(2.666852, 6);
  });

  it('pays from the buffer before it touches the body', () => {
    const buffer = 10 * (upkeep + maturity);
    const hungry = lived(animal(length, { buffer }));
    expect(hungry.structure).toBe(0);
    expect(hungry.buffer).toBeCloseTo(-(upkeep + maturity), 18);
  });

  it('shrinks at the starved level of upkeep when nothing is left', () => {
    const { structure, buffer } = lived(animal(length, {}));
    expect(buffer).toBe(-0);
    expect(structure).toBeCloseTo((-0.6 * (upkeep + maturity)) / SHRINKING_YIELD, 18);
  });

  it('keeps growth within the nitrogen and the phosphorus it got', () => {
    const carbon = grazer.assimilation * length ** 2;
    const ample = lived(animal(length, { carbon }));
    const need = ample.structure + ample.store + ample.buffer;
    const poor = animal(length, { carbon, nitrogen: 0.5 * need * grazer.nitrogenPerCarbon });
    expect(lived(poor).structure).toBeCloseTo(0.5 * ample.structure, 15);
    const none = animal(length, { carbon, phosphorus: 0 });
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
