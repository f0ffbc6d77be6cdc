import { COMPOSITIONS } from '../variables/compositions.ts';
import { producer } from './producer.ts';
import type { BicarbonateParameters, ProducerParameters } from './producer-group.ts';

/**
 * Plants under water, all kinds together: carbon dioxide for all, bicarbonate beside it for the share of them that uses
 * it. See `producer` for the equations.
 * @validity nutrients from the water alone, none stored and none from the substrate; the share that uses bicarbonate is
 *   the planted one all along
 * @source chapra-2008 (form), nielsen-1991 (ceiling of growth), jones-2005 (bicarbonate)
 */
export const submergedPlants = producer<Required<ProducerParameters> & BicarbonateParameters>({
  id: 'submerged-plants',
  name: 'submerged plants',
  pool: 'submergedPlants',
  composition: COMPOSITIONS.submergedPlants,
  kept: 'keptBySubmergedPlants',
  light: 'lightOnPlants',
  ground: 'waterArea',
  carbon: 'carbonDioxide',
  bicarbonateUsers: 'bicarbonateUsers',
  leavesRemains: true,
  parameters: {
    maximumGrowth: { unit: '1/d', min: 0.005, max: 1, meaning: 'highest growth at 20 degC' },
    growthTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of growth per degree' },
    heatLimit: { unit: '°C', min: 20, max: 45, meaning: 'temperature at which heat halves growth' },
    lightHalf: { unit: 'µmol/m²/s', min: 5, max: 200, meaning: 'light at half the highest growth' },
    nitrogenHalf: { unit: 'mg N/L', min: 0.005, max: 2, meaning: 'ammonium and nitrate at half the rate' },
    phosphorusHalf: {
      unit: 'mg P/L',
      min: 0.0005,
      max: 0.3,
      meaning: 'phosphate at half the highest growth',
    },
    carbonHalf: {
      unit: 'mmol/L',
      min: 0.002,
      max: 0.3,
      meaning: 'carbon dioxide at half the highest growth',
    },
    bicarbonateAffinity: {
      unit: '1',
      min: 0.003,
      max: 0.5,
      meaning: 'carbon dioxide that a unit of bicarbonate stands for, in ample light',
    },
    bicarbonateLight: {
      unit: 'µmol/m²/s',
      min: 5,
      max: 300,
      meaning: 'light at which half of the use of bicarbonate is reached',
    },
    preferenceHalf: {
      unit: 'mg N/L',
      min: 0.005,
      max: 2,
      meaning: 'half-saturation of the choice of ammonium',
    },
    fullStock: {
      unit: 'mol C/m²',
      min: 0.5,
      max: 30,
      meaning: 'stock per water surface at which growth ends',
    },
    respirationRate: { unit: '1/d', min: 0.001, max: 0.08, meaning: 'respiration at 20 degC' },
    lossRate: { unit: '1/d', min: 0.0005, max: 0.08, meaning: 'leaves shed at 20 degC' },
    lossTheta: {
      unit: '1',
      min: 1,
      max: 1.15,
      meaning: 'temperature factor of respiration and loss per degree',
    },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which respiration is halved' },
  },
});
