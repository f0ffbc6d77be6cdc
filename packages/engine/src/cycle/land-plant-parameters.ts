import type { ParameterSpecs } from '../process/contract.ts';

/** What moss and taller plants on land have in common. */
export interface LandLayerParameters {
  readonly lightHalf: number;
  readonly growthTheta: number;
  readonly heatMargin: number;
  readonly usualGrowth: number;
  readonly growthFactor: number;
  readonly respiredShare: number;
  readonly wetHalf: number;
  readonly dryingRate: number;
  readonly attenuation: number;
  readonly resorbed: number;
}

export interface MossParameters extends LandLayerParameters {
  readonly groundReach: number;
  readonly settlingTime: number;
}

export interface LandPlantParameters extends LandLayerParameters {
  readonly overhang: number;
  readonly leafArea: number;
  readonly leafResistance: number;
}

const SHARED: ParameterSpecs<LandLayerParameters> = {
  lightHalf: { unit: 'µmol/m²/s', min: 5, max: 500, meaning: 'light at half the highest growth' },
  growthTheta: {
    unit: '1',
    min: 1,
    max: 1.15,
    meaning: 'temperature factor of growth and upkeep per degree',
  },
  heatMargin: {
    unit: 'K',
    min: 0,
    max: 15,
    meaning: 'warmth beyond what the plant is said to bear at which growth is halved',
  },
  usualGrowth: {
    unit: '1/d',
    min: 0.0005,
    max: 0.2,
    meaning: 'growth in good light at 20 degC of plants whose own is not known',
  },
  growthFactor: { unit: '1', min: 0.1, max: 10, meaning: 'growth over the one stated for the plant' },
  respiredShare: {
    unit: '1',
    min: 0.05,
    max: 0.95,
    meaning: 'part of the upkeep that is respired; the rest is shed',
  },
  wetHalf: {
    unit: '1',
    min: 0.01,
    max: 1,
    meaning: 'wetness of the ground at which half its supply is left',
  },
  dryingRate: { unit: '1/d', min: 0.0005, max: 0.5, meaning: 'plants that die when wholly dry' },
  attenuation: { unit: 'm²/mol C', min: 0, max: 3, meaning: 'extinction of light by leaves and stems' },
  resorbed: {
    unit: '1',
    min: 0,
    max: 0.95,
    meaning: 'part of nitrogen and phosphorus drawn back from what is shed',
  },
};

/** Identity of the parameters of moss in the library. */
export const MOSS: { readonly id: 'moss'; readonly parameters: ParameterSpecs<MossParameters> } = {
  id: 'moss',
  parameters: {
    ...SHARED,
    groundReach: {
      unit: '1',
      min: 0,
      max: 1,
      meaning: 'moisture of moss on wet ground under dry air, over that of wet moss',
    },
    settlingTime: {
      unit: 'd',
      min: 0,
      max: 200,
      meaning: 'time before fragments sprinkled or painted on begin to grow',
    },
  },
};

/** Identity of the parameters of taller plants on land in the library. */
export const LAND_PLANTS: {
  readonly id: 'land-plants';
  readonly parameters: ParameterSpecs<LandPlantParameters>;
} = {
  id: 'land-plants',
  parameters: {
    ...SHARED,
    overhang: { unit: 'm', min: 0, max: 0.5, meaning: 'reach over the water at full cover of the shore' },
    leafArea: { unit: 'm²/mol C', min: 0.02, max: 2, meaning: 'leaf area, one side' },
    leafResistance: {
      unit: 's/m',
      min: 50,
      max: 5000,
      meaning: 'resistance of leaves to water vapour in the light, the air about them included',
    },
  },
};
