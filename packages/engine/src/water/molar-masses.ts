import type { DissolvedId } from '../plan/water-composition.ts';

/**
 * Molar masses [g/mol] of what is dissolved, of oxygen and of what the oxides and salts are made of.
 * @source iupac-atomic-weights
 */
export const MOLAR_MASS = {
  calcium: 40.078,
  magnesium: 24.305,
  sodium: 22.99,
  potassium: 39.098,
  chloride: 35.453,
  sulfate: 96.06,
  copper: 63.546,
  bicarbonate: 61.017,
  carbonate: 60.009,
  nitrate: 62.004,
  nitrite: 46.005,
  ammonium: 18.039,
  hydroxide: 17.007,
  phosphate: 94.971,
  hydrogenPhosphate: 95.979,
  dihydrogenPhosphate: 96.987,
  water: 18.015,
  oxygen: 31.998,
  carbonDioxide: 44.009,
  carbon: 12.011,
  nitrogen: 14.007,
  phosphorus: 30.974,
  calciumCarbonate: 100.087,
  hydrogen: 1.008,
} as const;

/**
 * By which mg/L of each dissolved substance counts [g/mol]: of the ion itself, of carbon for the organic carbon.
 * @source iupac-atomic-weights
 */
export const DISSOLVED_MASS: Readonly<Record<DissolvedId, number>> = {
  calcium: MOLAR_MASS.calcium,
  magnesium: MOLAR_MASS.magnesium,
  sodium: MOLAR_MASS.sodium,
  potassium: MOLAR_MASS.potassium,
  chloride: MOLAR_MASS.chloride,
  sulfate: MOLAR_MASS.sulfate,
  ammonium: MOLAR_MASS.ammonium,
  nitrite: MOLAR_MASS.nitrite,
  nitrate: MOLAR_MASS.nitrate,
  phosphate: MOLAR_MASS.phosphate,
  dissolvedOrganicCarbon: MOLAR_MASS.carbon,
};
