import {
  alkalinityOf,
  CYCLE_PROCESSES,
  compose,
  listedDerivation,
  MOLAR_MASS,
  speciate,
  VARIABLE_INDEX as V,
  VARIABLE_IDS,
  type WaterState,
  waterChemistry,
} from '@shoreglass/engine';
import type { Calculation, Expected } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { inUnit } from '../../harness/units.ts';
import { course } from '../course.ts';
import { readTotals } from '../read-water.ts';
import { carbonWhenSealed, isClosed } from './mineral-saturation.ts';

const DAY = 86400;
/** Solid that stays as good as whole [mol in 1 m3], and the density its grains are taken to have [kg/m3]. */
const SOLID = 1000;
const DENSITY = 2710;
/** The bare surface law: no film, nothing grown on the grains, no phosphate, no scale. */
const CLEAN_AND_STIRRED = {
  roughness: 1,
  filmConductance: 1e9,
  agedRate: 1,
  ageingTime: 100,
  phosphateHalf: 1e6,
  scaleThreshold: 1000,
  scaleRate: 0,
};

function readStart(inputs: Inputs): WaterState {
  const temperature = inputs.number('temperature', 'degC');
  const composition = readTotals(inputs.groupOrEmpty('initial_totals'));
  const calcium = inputs.numberOr('initial_Ca', 'mol/m3', 0);
  if (Math.abs(calcium - (composition.calcium ?? 0)) > 1e-6 + 1e-3 * calcium)
    throw new Error("input 'initial_Ca' is not the calcium of 'initial_totals'");
  if (!isClosed(inputs)) {
    return { temperature, composition, carbon: { kind: 'open', pressure: inputs.number('pCO2', 'Pa') } };
  }
  const alkalinity = alkalinityOf(composition);
  let dissolvedInorganicCarbon = carbonWhenSealed(inputs, { temperature, composition });
  if (!inputs.has('initial_pCO2_before_sealing') && alkalinity > 1e-9 && inputs.has('initial_pH')) {
    const pH = inputs.number('initial_pH', '-');
    const carbon = { kind: 'alkalinity', alkalinity } as const;
    dissolvedInorganicCarbon = speciate({ temperature, composition, pH, carbon }).dissolvedInorganicCarbon;
  }
  return { temperature, composition, carbon: { kind: 'closed', dissolvedInorganicCarbon } };
}

/** The water of a start after `dissolved` CaCO3 [mol/m3]. */
function after(start: WaterState, dissolved: number): WaterState {
  const composition = { ...start.composition, calcium: (start.composition.calcium ?? 0) + dissolved };
  if (start.carbon.kind !== 'closed') return { ...start, composition };
  const dissolvedInorganicCarbon = start.carbon.dissolvedInorganicCarbon + dissolved;
  return { ...start, composition, carbon: { kind: 'closed', dissolvedInorganicCarbon } };
}

/** Rate of the run's own process in 1 m3 of the water, unhindered, on a constant surface [m2/m3]. */
function rateOfRun(start: WaterState, surface: number): (dissolved: number) => number {
  const process = CYCLE_PROCESSES.filter(({ id }) => id === 'carbonate-dissolution');
  const system = compose(process, [listedDerivation(waterChemistry)], {
    'carbonate-dissolution': CLEAN_AND_STIRRED,
    'water-chemistry': { organicChargeDensity: 10 },
  });
  const values = new Float64Array(VARIABLE_IDS.length);
  const rates = new Float64Array(system.reactions.length);
  for (const [id, amount] of Object.entries(start.composition)) values[V[id as keyof typeof V]] = amount;
  values[V.waterVolume] = 1;
  values[V.waterTemperature] = start.temperature;
  values[V.airPressure] = 101325;
  values[V.carbonateSolid] = SOLID;
  values[V.carbonatePlaced] = SOLID;
  values[V.carbonateGrain] = (6 * SOLID * MOLAR_MASS.calciumCarbonate * 1e-3) / (DENSITY * surface);
  return (dissolved) => {
    const water = after(start, dissolved);
    values[V.calcium] = water.composition.calcium ?? 0;
    values[V.dissolvedInorganicCarbon] =
      water.carbon.kind === 'closed'
        ? water.carbon.dissolvedInorganicCarbon
        : speciate(water).dissolvedInorganicCarbon;
    system.evaluate(values, rates);
    return rates[0]!;
  };
}

function readTimes(inputs: Inputs, wanted: ReadonlyMap<string, Expected>): number[] {
  if (inputs.has('time')) return inputs.numbers('time', 's');
  const given = wanted.get('time');
  if (!given || typeof given.value === 'number')
    throw new Error("neither inputs nor outputs hold a list 'time'");
  return given.value.map((time) => inUnit(time, given.unit, 's'));
}

/** Calcite dissolving over time by the law of the run: calcium, alkalinity and pH at the times of the case. */
export const dissolutionKinetics: Calculation = (inputs, wanted) => {
  const mineral = inputs.textOr('mineral', 'Calcite');
  if (mineral.toLowerCase() !== 'calcite') throw new Error(`the rate law of '${mineral}' is not built`);
  const start = readStart(inputs);
  const surface = inputs.number('area_per_water', 'm2/m3');
  if (!(surface > 0)) throw new Error("input 'area_per_water' is not above zero");
  const times = readTimes(inputs, wanted);
  if (Math.max(...times) > 1000 * DAY) throw new Error('a course of more than 1000 days is not computed');
  const rate = rateOfRun(start, surface);
  const solved = course({ rate, start: 0, times, tolerance: 1e-6 }).map((dissolved) =>
    after(start, dissolved),
  );
  return {
    Ca_series: { value: solved.map(({ composition }) => composition.calcium ?? 0), unit: 'mol/m3' },
    alkalinity_series: { value: solved.map(({ composition }) => alkalinityOf(composition)), unit: 'eq/m3' },
    pH_series: { value: solved.map((water) => speciate(water).pH), unit: '-' },
  };
};
