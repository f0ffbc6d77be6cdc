import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { convert } from '../units/convert.ts';
import { VARIABLE_INDEX, type VariableId } from '../variables/variables.ts';
import { dissolvingVolume } from './brine.ts';
import { conductivityAt } from './conductivity.ts';
import { alkalinityOf, generalHardness, titratedAlkalinity } from './hardness.ts';
import { MOLAR_MASS } from './molar-masses.ts';
import { HUMIC_ACID, type OrganicAcid } from './organic-acids.ts';
import { speciate } from './speciate.ts';

/** The keeper's view of the water; units as in the run's series. */
export interface WaterReport {
  readonly pH: number;
  /** [dKH], as a drop test finds it. */
  readonly KH: number;
  /** [dGH] */
  readonly GH: number;
  /** At 25 degC [uS/cm]. */
  readonly conductivity: number;
  /** [mg N/L] */
  readonly totalAmmonia: number;
  readonly unionisedAmmonia: number;
  readonly nitrite: number;
  readonly nitrate: number;
  /** [mg P/L] */
  readonly phosphate: number;
  /** [mg/L] */
  readonly oxygen: number;
  /** [mg C/L] */
  readonly dissolvedOrganicCarbon: number;
}

/**
 * The keeper's quantities from the values of a run: hardness, conductivity at 25 degC and mass concentrations.
 * @param values value array of the run, in the order of the variables
 * @param organicAcid nature of the organic carbon; humic acid when left out
 * @throws RangeError when the water's temperature lies outside -5 to 95 degC.
 * @source derived: see `speciate`, `conductivityAt`, `titratedAlkalinity`
 */
export function waterReport(values: Float64Array, organicAcid: OrganicAcid = HUMIC_ACID): WaterReport {
  const amount = (id: VariableId): number => values[VARIABLE_INDEX[id]]!;
  let dissolved = 0;
  for (const id of [...DISSOLVED_IDS, 'dissolvedInorganicCarbon'] as const)
    dissolved += Math.max(0, amount(id));
  const volume = dissolvingVolume(amount('waterVolume'), dissolved);
  const concentration = (id: VariableId): number => Math.max(0, amount(id)) / volume;
  const composition = Object.fromEntries(
    DISSOLVED_IDS.map((id) => [id, concentration(id)]),
  ) as unknown as WaterComposition;
  const dissolvedInorganicCarbon = concentration('dissolvedInorganicCarbon');
  const solved = speciate({
    temperature: amount('waterTemperature'),
    composition,
    carbon: { kind: 'closed', dissolvedInorganicCarbon },
    organicAcid,
  });
  const sites = composition.dissolvedOrganicCarbon * organicAcid.siteDensity;
  return {
    pH: solved.pH,
    KH: convert(titratedAlkalinity(alkalinityOf(composition), sites), 'meq/L', '°dKH'),
    GH: convert(generalHardness(composition), 'mol/m³', '°dGH'),
    conductivity: conductivityAt(solved.free, solved.ionicStrength, 25),
    totalAmmonia: composition.ammonium * MOLAR_MASS.nitrogen,
    unionisedAmmonia: solved.unionisedAmmonia * MOLAR_MASS.nitrogen,
    nitrite: composition.nitrite * MOLAR_MASS.nitrogen,
    nitrate: composition.nitrate * MOLAR_MASS.nitrogen,
    phosphate: composition.phosphate * MOLAR_MASS.phosphorus,
    oxygen: concentration('oxygen') * MOLAR_MASS.oxygen,
    dissolvedOrganicCarbon: composition.dissolvedOrganicCarbon * MOLAR_MASS.carbon,
  };
}
