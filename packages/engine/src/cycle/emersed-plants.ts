import { COMPOSITIONS } from '../variables/compositions.ts';
import type { FloatingPlantParameters } from './floating-plants.ts';
import { producer } from './producer.ts';

/**
 * Plants rooted in wet ground with their leaves in the air, all kinds together: nitrogen and phosphorus from the water
 * in the ground, which is the pool's, carbon dioxide and oxygen from and to the air. See `producer` for the equations.
 * What they transpire the climate takes from the pool.
 * @validity the ground's water holds what the pool's holds; temperature of the water stands for that of the leaves;
 *   fixed nitrogen content
 * @source chapra-2008 (form)
 */
export const emersedPlants = producer<FloatingPlantParameters>({
  id: 'emersed-plants',
  name: 'plants rooted in wet ground',
  pool: 'emersedPlants',
  composition: COMPOSITIONS.emersedPlants,
  kept: 'keptByEmersedPlants',
  light: 'lightOnEmersedPlants',
  ground: 'wetPlantGround',
  carbon: 'air',
  leavesRemains: true,
  parameters: {
    maximumGrowth: { unit: '1/d', min: 0.002, max: 0.3, meaning: 'highest growth at 20 degC' },
    growthTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of growth per degree' },
    heatLimit: { unit: '°C', min: 20, max: 45, meaning: 'temperature at which heat halves growth' },
    lightHalf: { unit: 'µmol/m²/s', min: 10, max: 500, meaning: 'light at half the highest growth' },
    nitrogenHalf: { unit: 'mg N/L', min: 0.02, max: 5, meaning: 'ammonium and nitrate at half the rate' },
    phosphorusHalf: { unit: 'mg P/L', min: 0.002, max: 1, meaning: 'phosphate at half the highest growth' },
    preferenceHalf: {
      unit: 'mg N/L',
      min: 0.005,
      max: 2,
      meaning: 'half-saturation of the choice of ammonium',
    },
    fullStock: {
      unit: 'mol C/m²',
      min: 1,
      max: 100,
      meaning: 'stock per planted ground at which growth ends',
    },
    respirationRate: { unit: '1/d', min: 0.0005, max: 0.05, meaning: 'respiration at 20 degC' },
    lossRate: { unit: '1/d', min: 0.0002, max: 0.05, meaning: 'leaves shed at 20 degC' },
    lossTheta: {
      unit: '1',
      min: 1,
      max: 1.15,
      meaning: 'temperature factor of respiration and loss per degree',
    },
  },
});
