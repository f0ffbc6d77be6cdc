import { describe, expect, it } from 'vitest';
import { wetLayers } from '../geometry/wet-layers.ts';
import type { Layer, Plan, Zone } from '../plan/plan.ts';
import { VARIABLE_INDEX as V, VARIABLE_IDS } from '../variables/variables.ts';
import { placeCarbonate } from './carbonate-grains.ts';
import { createKindMix } from './kind-mix.ts';
import { placeExchangers } from './place-exchangers.ts';
import { phosphateBindersOf, placePhosphateBinders } from './place-phosphate.ts';
import { wetShare } from './wet-share.ts';

describe('the wet part of a piece', () => {
  it('is the part of a straight branch below the water', () => {
    const branch = [[0, 0.1, 0.04] as const, [0.3, 0.3, 0.04] as const];
    expect(wetShare(branch, 0.15)).toBeCloseTo(0.25, 12);
    expect(wetShare(branch, 0.05)).toBe(0);
    expect(wetShare(branch, 0.4)).toBe(1);
    expect(wetShare([], 0.1)).toBe(1);
  });
});

describe('kinds in one pool', () => {
  it('lets the quicker kind run out first and keeps the sum', () => {
    const mix = createKindMix();
    mix.add(1, 1);
    mix.add(1, 3);
    expect(mix.pace()).toBeCloseTo(2, 12);
    let left = 2;
    for (let day = 0; day < 300; day += 1) {
      left *= 1 - 0.005 * mix.pace();
      mix.settle(left);
    }
    // alone: 0.995^300 = 0.222 of the slow and 0.985^300 = 0.0107 of the quick
    expect(left).toBeCloseTo(0.995 ** 300 + 0.985 ** 300, 6);
    expect(mix.pace()).toBeCloseTo((0.2223 + 3 * 0.01074) / (0.2223 + 0.01074), 2);
  });

  it('knows what part of feeds of one pace is of animals, also once some is gone', () => {
    const mix = createKindMix();
    mix.add(3, 1, 0);
    mix.add(1, 1, 1);
    expect(mix.meaty()).toBeCloseTo(0.25, 12);
    mix.settle(2);
    expect(mix.meaty()).toBeCloseTo(0.25, 12);
    mix.add(2, 1);
    expect(mix.meaty()).toBeCloseTo(0.375, 12);
    expect(createKindMix().meaty()).toBe(0.5);
  });

  it('has the reference pace when empty', () => expect(createKindMix().pace()).toBe(1));
});

describe('carbonate put in', () => {
  it('keeps the surface of both lots and the mean age', () => {
    const values = new Float64Array(VARIABLE_IDS.length);
    placeCarbonate(values, { mineral: 'calcite', amount: 1, grain: 1e-3 });
    values[V.carbonateAge] = 100;
    placeCarbonate(values, { mineral: 'calcite', amount: 1, grain: 4e-3 });
    expect(2 / values[V.carbonateGrain]!).toBeCloseTo(1 / 1e-3 + 1 / 4e-3, 9);
    expect(values[V.carbonateAge]).toBeCloseTo(50, 12);
    placeCarbonate(values, { mineral: 'aragonite', amount: 2, grain: 3e-3 });
    expect(values[V.aragoniteSolid]).toBe(2);
    expect(values[V.carbonateAge]).toBeCloseTo(25, 12);
  });
});

const layer = (kind: Layer['kind'], thickness: number): Layer => ({
  kind,
  material: kind,
  name: kind,
  thickness,
  porosity: 0.4,
  filmSurface: 0,
});

describe('layers under water', () => {
  const box = {
    length: 1,
    width: 0.5,
    height: 0.5,
    glassThickness: 0.01,
    coverOpenFraction: 0,
    coverTransmission: 1,
  };
  const zone: Zone = {
    id: 'a',
    name: 'a',
    kind: 'bank',
    from: 0,
    to: 1,
    groundStart: 0.1,
    groundEnd: 0.3,
    layers: [layer('drainage', 0.05), layer('substrate', 0)],
  };

  it('have the volume of the wedge below the water', () => {
    const [drainage, soil] = wetLayers({ box, zones: [zone] }, 0.2);
    expect(drainage!.volume).toBeCloseTo(0.5 * 0.05, 12);
    // ground straight from 0.1 to 0.3 m: up to 0.2 m the mean height is 0.1 + 3/4 of 0.1
    expect(drainage!.volume + soil!.volume).toBeCloseTo(0.5 * 0.175, 12);
  });

  it('are none above the water', () => expect(wetLayers({ box, zones: [zone] }, 0.04)).toHaveLength(1));
});

describe('exchangers put in', () => {
  it('fill all their sites and take the mean hold in logarithms', () => {
    const values = new Float64Array(VARIABLE_IDS.length);
    const bases = { calcium: 0.3, magnesium: 0.1, sodium: 0.02, potassium: 0.03, ammonium: 0.05 };
    placeExchangers(
      values,
      [
        { exchanger: { sites: 1, acidStrength: 100, ...bases }, sites: 2, area: 0.1 },
        { exchanger: { sites: 1, acidStrength: 10_000, ...bases }, sites: 2, area: 0 },
      ],
      { sites: 1, acidStrength: 1 },
    );
    const sites =
      2 * values[V.exchangeableCalcium]! +
      2 * values[V.exchangeableMagnesium]! +
      values[V.exchangeableSodium]! +
      values[V.exchangeablePotassium]! +
      values[V.exchangeableAmmonium]! +
      values[V.exchangeableAcid]!;
    expect(sites).toBeCloseTo(4, 12);
    expect(values[V.exchangeAcidStrength]).toBeCloseTo(1000, 6);
    expect(values[V.looseExchanger]).toBe(2);
  });
});

describe('ground that binds phosphate', () => {
  const bare: Layer = {
    kind: 'substrate',
    material: 'ground',
    name: 'ground',
    thickness: 0.01,
    porosity: 0.8,
    filmSurface: 1000,
  };
  const mud: Layer = { ...bare, phosphateBinder: { sites: 12, half: 0.13, held: 0.005 } };
  const zone = (layers: readonly Layer[]): Zone => ({
    id: 'pool',
    name: 'pool',
    kind: 'pool',
    from: 0,
    to: 0.5,
    groundStart: 0.04,
    groundEnd: 0.04,
    layers,
  });
  const boxed = (layers: readonly Layer[], level = 0.2) => ({
    box: { width: 0.3, length: 0.5, height: 0.4 } as Plan['box'],
    water: { level } as Plan['water'],
    zones: [zone(layers)],
  });
  const PARAMETERS = { 'phosphate-sorption': { bedVelocity: 3.4, mixedDepth: 1.5 } };

  it('counts as deep as its phosphate reaches, 1.5 cm of 4 cm, and holds what it held when new', () => {
    const values = new Float64Array(VARIABLE_IDS.length);
    placePhosphateBinders(values, phosphateBindersOf(boxed([mud])), PARAMETERS, 2);
    expect(values[V.phosphateSites]).toBeCloseTo(2 * 12 * 0.15 * 0.015, 12);
    expect(values[V.boundPhosphate]).toBeCloseTo(0.005 * values[V.phosphateSites]!, 12);
    expect(values[V.phosphateBedArea]).toBeCloseTo(0.15, 12);
    expect(values[V.phosphateHalf]).toBeCloseTo(0.13, 12);
  });

  it('does not count under another layer, above the water or where none is', () => {
    expect(phosphateBindersOf(boxed([mud, bare]))).toHaveLength(0);
    expect(phosphateBindersOf(boxed([bare, mud], 0.005))).toHaveLength(0);
    const values = new Float64Array(VARIABLE_IDS.length);
    placePhosphateBinders(values, [], {}, 1);
    expect(values[V.phosphateSites]).toBe(0);
  });
});
