import { describe, expect, it } from 'vitest';
import { VARIABLE_INDEX as V, VARIABLE_IDS } from '../variables/variables.ts';
import { edibleCarbon, FOOD_COUNT, FUNGI, nothingEaten } from './foods.ts';
import { createLandBreakdown, type LandBreakdownParameters } from './land-breakdown.ts';
import { eatOnLand } from './land-meal.ts';

const MOIST = { temperature: 20, humidity: 95, groundWetness: 0.6 };
const PARAMETERS: LandBreakdownParameters = {
  litterRate: 0.003,
  remainsRate: 0.2,
  fungiRate: 0.04,
  soilRate: 0.0005,
  theta: 1.07,
  halfWetness: 0.2,
  fungalYield: 0.3,
  humified: 0.25,
  woodRate: 0.08,
  mouldTime: 1,
  fungiInLeaves: 0.7,
};

/** Ground with leaves [mol C] and minerals for their fungi, after some days of rotting. */
function leaves(days: number, carbon = 3, parameters = PARAMETERS): Float64Array {
  const values = new Float64Array(VARIABLE_IDS.length);
  values[V.landLitterCarbon] = carbon;
  values[V.landLitterNitrogen] = 0.02 * carbon;
  values[V.landLitterPhosphorus] = 0.001 * carbon;
  values[V.soilMineralNitrogen] = 0.1;
  values[V.soilMineralPhosphorus] = 0.02;
  const land = createLandBreakdown(parameters);
  for (let day = 0; day < days; day += 1) land.pass(values, MOIST);
  return values;
}

const within = (values: Float64Array): number => values[V.fungiInLeaves]! * values[V.landFungi]!;

describe('fungi of leaves on land', () => {
  it('grow within leaves for the part told, and die there as outside', () => {
    const values = leaves(100);
    expect(values[V.landFungi]).toBeGreaterThan(0);
    expect(within(values)).toBeCloseTo(0.7 * values[V.landFungi]!, 12);
    expect(leaves(100, 3, { ...PARAMETERS, fungiInLeaves: 0 })[V.fungiInLeaves]).toBe(0);
  });

  it('lie open where leftovers mould', () => {
    const values = leaves(0, 0);
    values[V.remainsCarbon] = 1;
    values[V.remainsNitrogen] = 0.1;
    values[V.remainsPhosphorus] = 0.01;
    createLandBreakdown(PARAMETERS).pass(values, MOIST);
    expect(values[V.landFungi]).toBeGreaterThan(0);
    expect(values[V.fungiInLeaves]).toBe(0);
  });

  it('are grazed outside of leaves alone, however hungry the grazers are', () => {
    const values = leaves(60);
    const hidden = within(values);
    const open = edibleCarbon(values, FUNGI);
    const wanted = new Float64Array(FOOD_COUNT);
    wanted[FUNGI] = 1000 * open;
    const eaten = nothingEaten();
    eatOnLand(values, wanted, eaten);
    expect(eaten.carbon[FUNGI]).toBeCloseTo(open, 9);
    expect(within(values)).toBeCloseTo(hidden, 12);
    expect(edibleCarbon(values, FUNGI)).toBeLessThan(1e-9);
    expect(edibleCarbon(values, FUNGI)).toBeGreaterThanOrEqual(0);
    createLandBreakdown(PARAMETERS).pass(values, MOIST);
    expect(edibleCarbon(values, FUNGI)).toBeGreaterThan(0);
  });
});
