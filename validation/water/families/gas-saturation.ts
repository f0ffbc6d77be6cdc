import {
  carbonDioxidePressure,
  dissolvedCarbonDioxide,
  MOLAR_MASS,
  oxygenSaturation,
  vapourPressureOverWater,
} from '@shoreglass/engine';
import type { Calculation, Figures } from '../../harness/check.ts';
import { amountFigure, figure } from '../water-figures.ts';

/** Oxygen and CO2 in pure water in balance with moist air, and the vapour pressure over it. */
export const gasSaturation: Calculation = (inputs) => {
  const temperature = inputs.number('temperature', 'degC');
  const pressure = inputs.numberOr('pressure', 'Pa', 101325);
  const figures: Figures = {
    O2_saturation: amountFigure(oxygenSaturation(temperature, pressure), MOLAR_MASS.oxygen),
    water_vapour_pressure: figure(vapourPressureOverWater(temperature), 'atm'),
  };
  if (!inputs.has('xCO2_dry')) return figures;
  const air = { carbonDioxide: inputs.number('xCO2_dry', '-') * 1e6, pressure };
  const pCO2 = carbonDioxidePressure(temperature, air);
  return {
    ...figures,
    pCO2: figure(pCO2, 'Pa'),
    CO2_aq: amountFigure(dissolvedCarbonDioxide(temperature, pCO2), MOLAR_MASS.carbonDioxide),
  };
};
