import {
  humidityRatio,
  meshLoss,
  moistAirDensity,
  moistAirVolume,
  moistureRemoval,
  neutralHeight,
  saturationVapourPressure,
  screenedDischargeCoefficient,
  screenLoss,
  slotExchange,
  stackFlow,
  stackPressure,
  topOpeningExchange,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, whenAsked } from './asked.ts';

const SEA_LEVEL = 101325;
const SHARP_OPENING = 0.6;

function readRatio(inputs: Inputs, place: string, pressure: number): number {
  if (!inputs.has(`RH_${place}`)) return 0;
  const saturated = saturationVapourPressure(inputs.number(`t_${place}`, 'degC'));
  return humidityRatio(inputs.number(`RH_${place}`, '1') * saturated, pressure);
}

/** Density of the air in a place, given or from its temperature; dry where no humidity is stated. */
function readDensity(inputs: Inputs, place: string): number {
  if (inputs.has(`rho_${place}`)) return inputs.number(`rho_${place}`, 'kg/m3');
  const pressure = inputs.numberOr('p', 'Pa', SEA_LEVEL);
  return moistAirDensity(inputs.number(`t_${place}`, 'degC'), readRatio(inputs, place, pressure), pressure);
}

const stack: Calculation = (inputs) => {
  const openings = {
    lowerArea: inputs.number('A_lower', 'm2'),
    upperArea: inputs.number('A_upper', 'm2'),
    height: inputs.number('H', 'm'),
    insideDensity: readDensity(inputs, 'in'),
    outsideDensity: readDensity(inputs, 'out'),
    dischargeCoefficient: inputs.numberOr('C_d', '1', SHARP_OPENING),
  };
  return {
    dp: figure(stackPressure(openings), 'Pa'),
    Q: figure(stackFlow(openings), 'm3/s'),
    z_n: figure(neutralHeight(openings), 'm'),
  };
};

const slot: Calculation = (inputs) => {
  const opening = {
    area: inputs.number('A', 'm2'),
    insideDensity: readDensity(inputs, 'in'),
    outsideDensity: readDensity(inputs, 'out'),
  };
  const coefficient = inputs.numberOr('C_d', '1', SHARP_OPENING);
  return { Q: figure(slotExchange(opening, inputs.number('H', 'm'), coefficient), 'm3/s') };
};

const topOpening: Calculation = (inputs) => {
  const [inside, outside] = [readDensity(inputs, 'in'), readDensity(inputs, 'out')];
  const froude = inputs.has('Fr') ? inputs.number('Fr', '1') : undefined;
  return { Q: figure(topOpeningExchange(inputs.number('A', 'm2'), inside, outside, froude), 'm3/s') };
};

function readLoss(inputs: Inputs): number {
  if (inputs.has('zeta')) return inputs.number('zeta', '1');
  if (inputs.has('C_d_screen')) return screenLoss(inputs.number('C_d_screen', '1'));
  return meshLoss(inputs.number(inputs.has('porosity') ? 'porosity' : 'open_fraction', '1'));
}

const removal: Calculation = (inputs) => {
  const pressure = inputs.numberOr('p', 'Pa', SEA_LEVEL);
  const box = readRatio(inputs, 'box', pressure);
  const volume = moistAirVolume(inputs.number('t_box', 'degC'), box, pressure);
  const difference = box - readRatio(inputs, 'room', pressure);
  return { m_dot: figure(moistureRemoval(inputs.number('Q_vent', 'm3/s'), volume, difference), 'kg/s') };
};

export const AIR_EXCHANGE: Readonly<Record<string, Calculation>> = {
  M10: whenAsked(['dp', 'Q', 'z_n'], stack),
  M11: whenAsked(['Q'], slot),
  M12: whenAsked(['Q'], topOpening),
  M13: whenAsked(['zeta'], (inputs) => ({ zeta: figure(readLoss(inputs), '1') })),
  M14: whenAsked(['C_d_total'], (inputs) => ({
    C_d_total: figure(
      screenedDischargeCoefficient(
        inputs.numberOr(inputs.has('C_d_opening') ? 'C_d_opening' : 'C_d', '1', SHARP_OPENING),
        readLoss(inputs),
      ),
      '1',
    ),
  })),
  M22: whenAsked(['m_dot'], removal),
};
