import { COMPOSITIONS } from '../variables/compositions.ts';
import { producer } from './producer.ts';
import type { ProducerParameters } from './producer-group.ts';

/** Floating plants take carbon from the air. */
export type FloatingPlantParameters = Omit<ProducerParameters, 'carbonHalf' | 'oxygenHalf' | 'fullStock'> & {
  readonly fullStock: number;
};

/**
 * Plants floating on the water, all kinds together: nitrogen and phosphorus from the water, carbon dioxide and oxygen
 * from and to the air. They shade what is below (`underwater-light`) and crowd each other on the open surface.
 * See `producer` for the equations.
 * @validity fixed nitrogen content; the drag of a closed mat on gas exchange is left out
 * @source chapra-2008 (form), driever-2005 (crowding towards a limiting mat)
 */
export const floatingPlants = producer<FloatingPlantParameters>({
  id: 'floating-plants',
  name: 'floating plants',
  pool: 'floatingPlants',
  composition: COMPOSITIONS.floatingPlants,
  kept: 'keptByFloatingPlants',
  light: 'lightOnFloatingPlants',
  ground: 'waterArea',
  carbon: 'air',
  leavesRemains: true,
  parameters: {
    maximumGrowth: { unit: '1/d', min: 0.02, max: 1, meaning: 'highest growth at 20 degC' },
    growthTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of growth per degree' },
    heatLimit: { unit: '°C', min: 20, max: 45, meaning: 'temperature at which heat halves growth' },
    lightHalf: { unit: 'µmol/m²/s', min: 10, max: 300, meaning: 'light at half the highest growth' },
    nitrogenHalf: { unit: 'mg N/L', min: 0.02, max: 5, meaning: 'ammonium and nitrate at half the rate' },
    phosphorusHalf: { unit: 'mg P/L', min: 0.002, max: 1, meaning: 'phosphate at half the highest growth' },
    preferenceHalf: {
      unit: 'mg N/L',
      min: 0.005,
      max: 2,
      meaning: 'half-saturation of the choice of ammonium',
    },
    fullStock: { unit: 'mol C/m²', min: 0.5, max: 20, meaning: 'mat per water surface at which growth ends' },
    respirationRate: { unit: '1/d', min: 0.001, max: 0.1, meaning: 'respiration at 20 degC' },
    lossRate: { unit: '1/d', min: 0.0005, max: 0.1, meaning: 'fronds that die at 20 degC' },
    lossTheta: {
      unit: '1',
      min: 1,
      max: 1.15,
      meaning: 'temperature factor of respiration and loss per degree',
    },
  },
});
