import {
  dewPoint,
  foggingHumidity,
  humidifyingMass,
  humidityRatio,
  mistDose,
  moistAirVolume,
  type Pane,
  paneConvection,
  paneInnerTemperature,
  paneTransmittance,
  radiationCoefficient,
  saturationVapourPressure,
  steadyBoxTemperature,
  warmingRate,
  waterHeatCapacity,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, whenAsked } from './asked.ts';

const SEA_LEVEL = 101325;

function readPane(inputs: Inputs, thickness: string): Pane {
  return {
    thickness: inputs.number(thickness, 'm'),
    conductivity: inputs.numberOr('k', 'W/m/K', 1),
    inside: inputs.number('h_i', 'W/m2/K'),
    outside: inputs.number('h_o', 'W/m2/K'),
  };
}

const condensation: Calculation = (inputs) => {
  const inside = inputs.number('t_in', 'degC');
  const pane = readPane(inputs, inputs.has('t_glass') ? 't_glass' : 't');
  const surface = paneInnerTemperature(pane, inside, inputs.number('t_out', 'degC'));
  const figures = {
    T_surface: figure(surface, 'degC'),
    RH_threshold: figure(foggingHumidity(surface, inside), '1'),
  };
  if (!inputs.has('RH_in')) return figures;
  const dew = dewPoint(inputs.number('RH_in', '1') * saturationVapourPressure(inside));
  return { ...figures, T_dew: figure(dew, 'degC'), condenses: figure(dew > surface ? 1 : 0, 'bool') };
};

const steadyBox: Calculation = (inputs) => ({
  t_box: figure(
    steadyBoxTemperature({
      gain: inputs.number('P_lamp', 'W') * inputs.numberOr('fraction_inside', '1', 1),
      conductance: inputs.number('UA', 'W/K'),
      exchange: inputs.numberOr('Q_vent', 'm3/s', 0),
      airDensity: inputs.numberOr('rho', 'kg/m3', 1.18),
      roomTemperature: inputs.number('t_room', 'degC'),
    }),
    'degC',
  ),
});

/** Water sprayed by nozzles, or vapour that moistens the air of a box. */
const mist: Calculation = (inputs) => {
  if (inputs.has('nozzles')) {
    const flow = inputs.number('flow_per_nozzle', 'm3/s');
    return { m: figure(mistDose(inputs.number('nozzles', '1'), flow, inputs.number('duration', 's')), 'kg') };
  }
  const t = inputs.number('t', 'degC');
  const p = inputs.numberOr('p', 'Pa', SEA_LEVEL);
  const ratio = (name: string) => humidityRatio(inputs.number(name, '1') * saturationVapourPressure(t), p);
  const volume = moistAirVolume(t, ratio('RH1'), p);
  return {
    m: figure(humidifyingMass(inputs.number('V_air', 'm3'), volume, ratio('RH2') - ratio('RH1')), 'kg'),
  };
};

const warming: Calculation = (inputs) => {
  const heatCapacity = inputs.numberOr('c_p', 'J/kg/K', waterHeatCapacity(25));
  const rate = warmingRate(inputs.number('P', 'W'), inputs.number('m', 'kg'), heatCapacity);
  return { dT_dt: figure(rate, 'K/s'), rate: figure(rate, 'K/s') };
};

export const HEAT: Readonly<Record<string, Calculation>> = {
  M15: whenAsked(['U'], (inputs) => ({ U: figure(paneTransmittance(readPane(inputs, 't')), 'W/m2/K') })),
  M16: whenAsked(['T_surface', 'T_dew', 'RH_threshold', 'condenses'], condensation),
  M17: whenAsked(['h_r'], (inputs) => {
    const middle = 0.5 * (inputs.number('T1', 'degC') + inputs.number('T2', 'degC'));
    return { h_r: figure(radiationCoefficient(inputs.number('eps', '1'), middle), 'W/m2/K') };
  }),
  M18: whenAsked(['h_c'], (inputs) => {
    const difference =
      inputs.unit('dT') === undefined ? inputs.number('dT', '1') : inputs.number('dT', inputs.unit('dT')!);
    return { h_c: figure(paneConvection(difference, inputs.number('L', 'm')), 'W/m2/K') };
  }),
  M19: whenAsked(['dT_dt', 'rate'], warming),
  M20: whenAsked(['t_box'], steadyBox),
  M21: whenAsked(['m'], mist),
};
