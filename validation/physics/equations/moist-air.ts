import {
  dailyVapourPressure,
  dewPoint,
  humidityRatio,
  humidityRatioFromWetBulb,
  moistAirDensity,
  moistAirEnthalpy,
  moistAirVolume,
  psychrometricConstant,
  referenceEvapotranspiration,
  saturationPressureTetens,
  saturationSlopeTetens,
  saturationVapourPressure,
  standardPressure,
  vapourPressure,
  vapourPressureDeficit,
  wetBulb,
  windAtTwoMetres,
} from '@shoreglass/engine';
import type { Calculation, Figures } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, joined, whenAsked } from './asked.ts';

const SEA_LEVEL = 101325;

function firstOf(inputs: Inputs, names: readonly string[]): string | undefined {
  return names.find((name) => inputs.has(name));
}

/** Vapour pressure from whatever tells it; undefined when nothing does. */
export function readVapourPressure(
  inputs: Inputs,
  temperature: number | undefined,
  pressure: number,
): number | undefined {
  if (inputs.has('p_v')) return inputs.number('p_v', 'Pa');
  if (inputs.has('W')) return vapourPressure(inputs.number('W', 'kg/kg'), pressure);
  if (inputs.has('t_dp')) return saturationVapourPressure(inputs.number('t_dp', 'degC'));
  if (temperature === undefined) return undefined;
  if (inputs.has('RH')) return inputs.number('RH', '1') * saturationVapourPressure(temperature);
  if (inputs.has('t_wb')) {
    const ratio = humidityRatioFromWetBulb(temperature, inputs.number('t_wb', 'degC'), pressure);
    return vapourPressure(ratio, pressure);
  }
  return undefined;
}

function saturatedAndDry(t: number, p: number): Figures {
  const saturated = saturationVapourPressure(t);
  if (saturated >= p) return { p_ws: figure(saturated, 'Pa') };
  const ratio = humidityRatio(saturated, p);
  return {
    p_ws: figure(saturated, 'Pa'),
    W_s: figure(ratio, 'kg/kg_da'),
    h_s: figure(moistAirEnthalpy(t, ratio), 'J/kg_da'),
    v_s: figure(moistAirVolume(t, ratio, p), 'm3/kg_da'),
    h_da: figure(moistAirEnthalpy(t, 0), 'J/kg_da'),
    v_da: figure(moistAirVolume(t, 0, p), 'm3/kg_da'),
  };
}

function moist(t: number, vapour: number, p: number): Figures {
  const ratio = humidityRatio(vapour, p);
  const humidity = vapour / saturationVapourPressure(t);
  return {
    RH: figure(humidity, '1'),
    VPD: figure(vapourPressureDeficit(t, humidity), 'Pa'),
    h: figure(moistAirEnthalpy(t, ratio), 'J/kg_da'),
    v: figure(moistAirVolume(t, ratio, p), 'm3/kg_da'),
    rho: figure(moistAirDensity(t, ratio, p), 'kg/m3'),
    t_wb: figure(wetBulb(t, ratio, p), 'degC'),
  };
}

const STATE = [
  'p_ws',
  'W_s',
  'h_s',
  'v_s',
  'h_da',
  'v_da',
  'W',
  'p_v',
  't_dp',
  'RH',
  'VPD',
  'h',
  'v',
  'rho',
  't_wb',
];

/** Everything about a parcel of air that its inputs tell. */
const state: Calculation = (inputs) => {
  const p = inputs.numberOr('p', 'Pa', SEA_LEVEL);
  const temperatureName = firstOf(inputs, ['t', 't_db', 'T']);
  const t = temperatureName === undefined ? undefined : inputs.number(temperatureName, 'degC');
  const vapour = readVapourPressure(inputs, t, p);
  if (t === undefined && vapour === undefined)
    throw new Error("inputs 't' and 'p_v' are missing: one is needed");
  return {
    ...(t === undefined ? {} : saturatedAndDry(t, p)),
    ...(vapour === undefined
      ? {}
      : {
          p_v: figure(vapour, 'Pa'),
          W: figure(humidityRatio(vapour, p), 'kg/kg_da'),
          t_dp: figure(dewPoint(vapour), 'degC'),
        }),
    ...(t === undefined || vapour === undefined ? {} : moist(t, vapour, p)),
  };
};

const air = whenAsked(STATE, state);

const tetensOf = (t: number): number => saturationPressureTetens(t);

/** Saturation after Tetens: of a dew point, of one temperature, or the mean of a day's extremes. */
const tetens: Calculation = joined(
  whenAsked(['e_s'], (inputs) => {
    if (inputs.has('t_min')) {
      const low = tetensOf(inputs.number('t_min', 'degC'));
      return { e_s: figure((low + tetensOf(inputs.number('t_max', 'degC'))) / 2, 'Pa') };
    }
    return { e_s: figure(tetensOf(inputs.number(firstOf(inputs, ['t', 'T']) ?? 't', 'degC')), 'Pa') };
  }),
  whenAsked(['e_a'], (inputs) =>
    inputs.has('t_dp') || !inputs.has('t_min')
      ? { e_a: figure(tetensOf(inputs.number('t_dp', 'degC')), 'Pa') }
      : dailyFigures(inputs, new Map()),
  ),
  whenAsked(['e', 'e_t'], (inputs) => {
    const e = figure(tetensOf(inputs.number(firstOf(inputs, ['t', 'T']) ?? 't', 'degC')), 'Pa');
    return { e, e_t: e };
  }),
);

const dailyFigures: Calculation = (inputs) => ({
  e_a: figure(
    dailyVapourPressure({
      lowestTemperature: inputs.number('t_min', 'degC'),
      highestTemperature: inputs.number('t_max', 'degC'),
      lowestHumidity: inputs.number('RH_min', '1'),
      highestHumidity: inputs.number('RH_max', '1'),
    }),
    'Pa',
  ),
});

const reference: Calculation = (inputs) => {
  const deficit = inputs.has('e_s_minus_e_a')
    ? inputs.number('e_s_minus_e_a', 'Pa')
    : inputs.number('e_s', 'Pa') - inputs.number('e_a', 'Pa');
  const evaporation = referenceEvapotranspiration({
    temperature: inputs.number(firstOf(inputs, ['T', 't']) ?? 'T', 'degC'),
    netRadiation: inputs.number('R_n', 'J/m2/day') - inputs.numberOr('G', 'J/m2/day', 0),
    wind: inputs.number('u_2', 'm/s'),
    deficit,
    pressure: inputs.number('p', 'Pa'),
  });
  return { ET_0: figure(evaporation, 'mm/day') };
};

export const MOIST_AIR: Readonly<Record<string, Calculation>> = {
  P1: air,
  'P1-P7': air,
  P1b: tetens,
  P2: air,
  P3: air,
  P4: air,
  P5: air,
  P6: air,
  P7: air,
  P8: whenAsked(['p'], (inputs) => ({ p: figure(standardPressure(inputs.number('z', 'm')), 'Pa') })),
  P9: whenAsked(['Delta'], (inputs) => ({
    Delta: figure(saturationSlopeTetens(inputs.number(firstOf(inputs, ['t', 'T']) ?? 't', 'degC')), 'Pa/K'),
  })),
  P10: whenAsked(['gamma'], (inputs) => ({
    gamma: figure(psychrometricConstant(inputs.number('p', 'Pa')), 'Pa/K'),
  })),
  M5: whenAsked(['u_2'], (inputs) => ({
    u_2: figure(windAtTwoMetres(inputs.number('u_z', 'm/s'), inputs.number('z', 'm')), 'm/s'),
  })),
  M5b: whenAsked(['e_a'], dailyFigures),
  M6: whenAsked(['ET_0'], reference),
};
