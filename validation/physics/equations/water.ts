import {
  brackishDensity,
  carbonDioxideSolubilityWeiss1974,
  kinematicViscosity,
  MOLAR_MASS,
  oxygenSalinityFactor,
  oxygenSaturation,
  saturationVapourPressure,
  surfaceTension,
  waterConductivity,
  waterHeatCapacity,
  waterViscosity,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, joined, whenAsked } from './asked.ts';

const ATMOSPHERE = 101325;
const CARBON_DIOXIDE_MASS = 44.009;

const readSalinity = (inputs: Inputs): number => inputs.numberOr(inputs.has('S_A') ? 'S_A' : 'S', 'g/kg', 0);

/** Total pressure; one told as gauge pressure of 0 is that of the atmosphere. */
function readPressure(inputs: Inputs): number {
  const isGauge = inputs.has('p') && (inputs.unit('p') ?? '').includes('gauge');
  return isGauge ? ATMOSPHERE : inputs.numberOr('p', 'Pa', ATMOSPHERE);
}

const density: Calculation = (inputs) => ({
  rho: figure(brackishDensity(inputs.number('t', 'degC'), readSalinity(inputs)), 'kg/m3'),
});

const viscosity: Calculation = (inputs) => {
  const t = inputs.number('t', 'degC');
  return { mu: figure(waterViscosity(t), 'Pa s'), nu: figure(kinematicViscosity(t), 'm2/s') };
};

const oxygen: Calculation = joined(
  whenAsked(['C_s', 'O2sol'], (inputs) => {
    const t = inputs.number('t', 'degC');
    const fresh = oxygenSaturation(t, readPressure(inputs)) * MOLAR_MASS.oxygen;
    const found = figure(fresh * oxygenSalinityFactor(t, readSalinity(inputs)), 'g/m3');
    return { C_s: found, O2sol: found };
  }),
  whenAsked(['deficit'], (inputs) => ({
    deficit: figure(
      (inputs.number('C_s', 'g/m3') - inputs.number('C', 'g/m3')) * inputs.number('V', 'm3'),
      'g',
    ),
  })),
);

const carbonDioxide: Calculation = (inputs) => {
  const t = inputs.number('t', 'degC');
  const solubility = carbonDioxideSolubilityWeiss1974(t, readSalinity(inputs));
  const K0 = figure(solubility, 'mol/(kg atm)');
  if (!inputs.has('x_CO2')) return { K0 };
  const dry = (readPressure(inputs) - saturationVapourPressure(t)) / ATMOSPHERE;
  const amount = solubility * inputs.number('x_CO2', '1') * dry * brackishDensity(t, readSalinity(inputs));
  return { K0, CO2: figure(amount * CARBON_DIOXIDE_MASS, 'g/m3') };
};

export const WATER: Readonly<Record<string, Calculation>> = {
  W1: whenAsked(['rho'], density),
  W2: whenAsked(['mu', 'nu'], viscosity),
  W3: whenAsked(['sigma'], (inputs) => ({
    sigma: figure(surfaceTension(inputs.number('t', 'degC')), 'N/m'),
  })),
  W4: oxygen,
  W4b: oxygen,
  W5: whenAsked(['rho'], density),
  W6: whenAsked(['K0', 'CO2'], carbonDioxide),
  W7: whenAsked(['c_p', 'k'], (inputs) => {
    const t = inputs.number('t', 'degC');
    return { c_p: figure(waterHeatCapacity(t), 'J/kg/K'), k: figure(waterConductivity(t), 'W/m/K') };
  }),
};
