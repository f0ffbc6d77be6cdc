import { COMPOSITIONS } from '../variables/compositions.ts';
import { producer } from './producer.ts';
import type { ProducerParameters } from './producer-group.ts';

/**
 * Algae on glass, stone, wood and leaves. They use bicarbonate as well as carbon dioxide, so all inorganic carbon
 * counts as theirs. They share their ground with the bacterial film (`surface-cover`). See `producer` for the equations.
 * @validity film in light; grazed films are as productive as others
 * @source chapra-2008, bowie-1985 (rates)
 */
export const attachedAlgae = producer<Omit<Required<ProducerParameters>, 'fullStock'>>({
  id: 'attached-algae',
  name: 'attached algae',
  pool: 'attachedAlgae',
  composition: COMPOSITIONS.algae,
  kept: 'keptByAttachedAlgae',
  light: 'lightOnAlgae',
  filled: 'algalGroundFilled',
  parameters: {
    maximumGrowth: { unit: '1/d', min: 0.1, max: 3, meaning: 'highest growth at 20 degC' },
    growthTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of growth per degree' },
    heatLimit: { unit: '°C', min: 20, max: 45, meaning: 'temperature at which heat halves growth' },
    lightHalf: { unit: 'µmol/m²/s', min: 10, max: 300, meaning: 'light at half the highest growth' },
    nitrogenHalf: { unit: 'mg N/L', min: 0.001, max: 0.5, meaning: 'ammonium and nitrate at half the rate' },
    phosphorusHalf: {
      unit: 'mg P/L',
      min: 0.0001,
      max: 0.05,
      meaning: 'phosphate at half the highest growth',
    },
    carbonHalf: {
      unit: 'mmol/L',
      min: 0.001,
      max: 0.2,
      meaning: 'inorganic carbon at half the highest growth',
    },
    preferenceHalf: {
      unit: 'mg N/L',
      min: 0.005,
      max: 2,
      meaning: 'half-saturation of the choice of ammonium',
    },
    respirationRate: { unit: '1/d', min: 0.005, max: 0.4, meaning: 'respiration at 20 degC' },
    lossRate: { unit: '1/d', min: 0.001, max: 0.4, meaning: 'death and sloughing at 20 degC' },
    lossTheta: {
      unit: '1',
      min: 1,
      max: 1.15,
      meaning: 'temperature factor of respiration and loss per degree',
    },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which respiration is halved' },
  },
});
