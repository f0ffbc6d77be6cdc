import {
  alkalinityOf,
  conductivityAt,
  dissolvedSolids,
  generalHardness,
  MOLAR_MASS,
  type Speciation,
} from '@shoreglass/engine';
import type { Figure, Figures } from '../harness/check.ts';
import type { Composition } from './read-water.ts';

export const figure = (value: number, unit: string): Figure => ({ value, unit });

/** Figures of carbonate, saturation and conductivity of a solved water. */
function solvedFigures(solved: Speciation): Record<string, Figure> {
  const pressure = solved.carbonDioxidePressure / 101325;
  const conductivity = (temperature: number): Figure =>
    figure(conductivityAt(solved.free, solved.ionicStrength, temperature), 'uS/cm');
  return {
    pH: figure(solved.pH, '-'),
    DIC: figure(solved.dissolvedInorganicCarbon, 'mol/m3'),
    HCO3_total: figure(solved.bicarbonate, 'mol/m3'),
    CO3_total: figure(solved.carbonate, 'mol/m3'),
    HCO3_free: figure(solved.free.bicarbonate, 'mol/m3'),
    CO3_free: figure(solved.free.carbonate, 'mol/m3'),
    CO2_aq: figure(solved.carbonDioxide, 'mol/m3'),
    pCO2: figure(pressure, 'atm'),
    log10_pCO2: figure(Math.log10(pressure), 'log10(atm)'),
    ionic_strength: figure(solved.ionicStrength, 'mol/kgw'),
    SI_calcite: figure(solved.saturationIndex.calcite, '-'),
    SI_aragonite: figure(solved.saturationIndex.aragonite, '-'),
    SI_gypsum: figure(solved.saturationIndex.gypsum, '-'),
    SC_25C: conductivity(25),
    EC_20C: conductivity(20),
    EC_20C_measured: conductivity(20),
    SC_25C_from_measured: conductivity(25),
    organic_anion: figure(solved.organicAnion, 'eq/m3'),
    NH3: figure(solved.unionisedAmmonia, 'mol/m3'),
  };
}

const IONS = {
  Ca: 'calcium',
  Mg: 'magnesium',
  Na: 'sodium',
  K: 'potassium',
  Cl: 'chloride',
  SO4: 'sulfate',
  NO3: 'nitrate',
} as const;

/** Figures of what a water holds, by name; ions as mass concentrations. */
function compositionFigures(composition: Composition): Record<string, Figure> {
  const figures: Record<string, Figure> = {};
  for (const [name, id] of Object.entries(IONS))
    figures[name] = figure((composition[id] ?? 0) * MOLAR_MASS[id], 'g/m3');
  const hardness = generalHardness(composition);
  const alkalinity = figure(alkalinityOf(composition), 'eq/m3');
  return {
    ...figures,
    alkalinity,
    KH: alkalinity,
    GH: figure(hardness, 'mol/m3'),
    GH_as_CaCO3: figure(hardness * MOLAR_MASS.calciumCarbonate, 'g CaCO3/m3'),
  };
}

/** Every figure the cases ask of a water, by the name they use. */
export function waterFigures(composition: Composition, solved: Speciation): Figures {
  const { sumOfIons, residueAt180 } = dissolvedSolids(composition, solved);
  return {
    ...solvedFigures(solved),
    ...compositionFigures(composition),
    TDS_sum_of_ions: figure(sumOfIons, 'g/m3'),
    TDS_residue_180C: figure(residueAt180, 'g/m3'),
  };
}
