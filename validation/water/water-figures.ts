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

/** An amount concentration [mol/m3] that may also be asked for as mass or charge. */
export function amountFigure(amount: number, molarMass: number, charge = 0): Figure {
  const also = [figure(amount * molarMass, 'g/m3')];
  return {
    ...figure(amount, 'mol/m3'),
    also: charge > 0 ? [...also, figure(amount * charge, 'eq/m3')] : also,
  };
}

/** Alkalinity [eq/m3], also as calcium carbonate. */
export function alkalinityFigure(alkalinity: number): Figure {
  const asCarbonate = figure((alkalinity / 2) * MOLAR_MASS.calciumCarbonate, 'g CaCO3/m3');
  return { ...figure(alkalinity, 'eq/m3'), also: [asCarbonate] };
}

/** Figures of carbonate, saturation and conductivity of a solved water. */
function solvedFigures(solved: Speciation): Record<string, Figure> {
  const pressure = solved.carbonDioxidePressure / 101325;
  const conductivity = (temperature: number): Figure =>
    figure(conductivityAt(solved.free, solved.ionicStrength, temperature), 'uS/cm');
  return {
    pH: figure(solved.pH, '-'),
    DIC: {
      ...figure(solved.dissolvedInorganicCarbon, 'mol/m3'),
      also: [figure(solved.dissolvedInorganicCarbon * MOLAR_MASS.carbon, 'g C/m3')],
    },
    HCO3_total: amountFigure(solved.bicarbonate, MOLAR_MASS.bicarbonate),
    CO3_total: amountFigure(solved.carbonate, MOLAR_MASS.carbonate),
    HCO3_free: amountFigure(solved.free.bicarbonate, MOLAR_MASS.bicarbonate),
    CO3_free: amountFigure(solved.free.carbonate, MOLAR_MASS.carbonate),
    CO2_aq: amountFigure(solved.carbonDioxide, MOLAR_MASS.carbonDioxide),
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

const CHARGE: Readonly<Record<(typeof IONS)[keyof typeof IONS], number>> = {
  calcium: 2,
  magnesium: 2,
  sodium: 1,
  potassium: 1,
  chloride: 1,
  sulfate: 2,
  nitrate: 1,
};

/** Figures of what a water holds, by name. */
function compositionFigures(composition: Composition): Record<string, Figure> {
  const figures: Record<string, Figure> = {};
  for (const [name, id] of Object.entries(IONS))
    figures[name] = amountFigure(composition[id] ?? 0, MOLAR_MASS[id], CHARGE[id]);
  const hardness = generalHardness(composition);
  const alkalinity = alkalinityFigure(alkalinityOf(composition));
  const asCarbonate = figure(hardness * MOLAR_MASS.calciumCarbonate, 'g CaCO3/m3');
  return {
    ...figures,
    alkalinity,
    KH: alkalinity,
    GH: { ...figure(hardness, 'mol/m3'), also: [asCarbonate] },
    GH_as_CaCO3: { ...asCarbonate, also: [figure(hardness, 'mol/m3')] },
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
