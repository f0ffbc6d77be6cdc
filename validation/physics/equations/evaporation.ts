import {
  humidityRatio,
  latentHeat,
  moistAirVolume,
  moistSurfaceEvaporation,
  poolEvaporationCarrier,
  poolEvaporationRuleOfThumb,
  poolEvaporationShah2014,
  type QuietAir,
  saturationVapourPressure,
  stillColumnEvaporation,
  vapourDensity,
  vapourDiffusivity,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, joined, whenAsked } from './asked.ts';
import { readVapourPressure } from './moist-air.ts';

const SEA_LEVEL = 101325;

/** What 1 kg of evaporation takes, and what a surface that evaporates loses. */
const latent: Calculation = joined(
  whenAsked(['h_fg', 'lambda'], (inputs) => {
    const value = figure(latentHeat(inputs.number('t', 'degC')), 'J/kg');
    return { h_fg: value, lambda: value };
  }),
  whenAsked(['q'], (inputs) => ({
    q: figure(
      inputs.number('E', 'kg/m2/s') * inputs.number('A', 'm2') * latentHeat(inputs.number('t', 'degC')),
      'W',
    ),
  })),
);

function quietAir(temperature: number, vapour: number, pressure: number): QuietAir {
  const ratio = humidityRatio(vapour, pressure);
  return { dryDensity: 1 / moistAirVolume(temperature, ratio, pressure), ratio, vapourPressure: vapour };
}

function readQuietAir(inputs: Inputs): { atWater: QuietAir; inBox: QuietAir } {
  const pressure = inputs.numberOr('p', 'Pa', SEA_LEVEL);
  const water = inputs.number('t_water', 'degC');
  const air = inputs.number('t_air', 'degC');
  const vapour = inputs.number('RH', '1') * saturationVapourPressure(air);
  return {
    atWater: quietAir(water, saturationVapourPressure(water), pressure),
    inBox: quietAir(air, vapour, pressure),
  };
}

const shah: Calculation = (inputs) => {
  const { atWater, inBox } = readQuietAir(inputs);
  const evaporation = figure(poolEvaporationShah2014(atWater, inBox), 'kg/m2/s');
  return {
    E0: evaporation,
    E: evaporation,
    delta_rho: figure(inBox.dryDensity - atWater.dryDensity, 'kg_da/m3'),
  };
};

const carrier: Calculation = (inputs) => {
  const { atWater, inBox } = readQuietAir(inputs);
  const deficit = atWater.vapourPressure - inBox.vapourPressure;
  const heat = inputs.has('Y') ? inputs.number('Y', 'J/kg') : latentHeat(inputs.number('t_water', 'degC'));
  return { E: figure(poolEvaporationCarrier(deficit, inputs.number('V', 'm/s'), heat), 'kg/m2/s') };
};

const ruleOfThumb: Calculation = (inputs) => {
  const difference = inputs.number('x_s', 'kg/kg') - inputs.number('x', 'kg/kg');
  const perArea = poolEvaporationRuleOfThumb(difference, inputs.number('V', 'm/s'));
  const E = figure(perArea, 'kg/m2/s');
  return inputs.has('A') ? { E, m_dot: figure(perArea * inputs.number('A', 'm2'), 'kg/s') } : { E };
};

const moistSurface: Calculation = (inputs) => {
  const surfaceTemperature = inputs.number('t_surface', 'degC');
  const evaporation = moistSurfaceEvaporation({
    surfaceTemperature,
    airTemperature: inputs.number('t_air', 'degC'),
    relativeHumidity: inputs.number('RH', '1'),
    airResistance: inputs.number('r_a', 's/m'),
    surfaceResistance: inputs.numberOr('r_s', 's/m', 0),
  });
  return {
    E: figure(evaporation, 'kg/m2/s'),
    latent_power: figure(evaporation * latentHeat(surfaceTemperature), 'W/m2'),
  };
};

const stillColumn: Calculation = (inputs) => ({
  E: figure(
    stillColumnEvaporation({
      temperature: inputs.number('t', 'degC'),
      pressure: inputs.numberOr('p', 'Pa', SEA_LEVEL),
      height: inputs.number('L', 'm'),
      atSurface: inputs.number('p_v_surface', 'Pa'),
      atTop: inputs.number('p_v_top', 'Pa'),
    }),
    'kg/m2/s',
  ),
});

const density: Calculation = (inputs) => {
  const t = inputs.number('t', 'degC');
  const vapour = readVapourPressure(inputs, t, inputs.numberOr('p', 'Pa', SEA_LEVEL));
  if (vapour === undefined) throw new Error("input 'RH' or 'p_v' is missing");
  return { rho_v: figure(vapourDensity(vapour, t), 'kg/m3') };
};

export const EVAPORATION: Readonly<Record<string, Calculation>> = {
  M1: latent,
  M2: whenAsked(['E'], carrier),
  M3: whenAsked(['E', 'm_dot'], ruleOfThumb),
  M4: whenAsked(['E0', 'E', 'delta_rho'], shah),
  M7: whenAsked(['D_v'], (inputs) => ({
    D_v: figure(vapourDiffusivity(inputs.number('t', 'degC'), inputs.numberOr('p', 'Pa', SEA_LEVEL)), 'm2/s'),
  })),
  M8: whenAsked(['rho_v'], density),
  M8b: whenAsked(['E'], stillColumn),
  M9: whenAsked(['E', 'latent_power'], moistSurface),
};
