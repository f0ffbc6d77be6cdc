import { conversion } from '../units/convert.ts';
import { VARIABLE_INDEX, type VariableId } from '../variables/variables.ts';
import { conductivityAt } from './conductivity.ts';
import { CONSTANTS_TABLE } from './equilibrium/constants-table.ts';
import { SPECIES, STATE, TOTAL } from './equilibrium/layout.ts';
import { DISSOLVED_AMOUNTS, loadAmounts } from './equilibrium/load-amounts.ts';
import { solvePH } from './equilibrium/solve.ts';
import { conservativeAlkalinity, Workspace } from './equilibrium/workspace.ts';
import { titratedAlkalinity } from './hardness.ts';
import { MOLAR_MASS } from './molar-masses.ts';
import { HUMIC_ACID } from './organic-acids.ts';
import { freeIons } from './speciate.ts';

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

const carbonateHardness = conversion('meq/L', '°dKH');
const generalHardness = conversion('mol/m³', '°dGH');
const AMOUNTS = Int32Array.from(DISSOLVED_AMOUNTS, (id) => VARIABLE_INDEX[id]);

/** Solves the equilibria of the water in `values`; returns the volume its amounts are spread over [m3]. */
function solveWater(values: Float64Array, w: Workspace): number {
  const temperature = values[VARIABLE_INDEX.waterTemperature]!;
  if (!(temperature >= -5 && temperature <= 95))
    throw new RangeError(`temperature [degC] = ${temperature} is outside -5 to 95`);
  CONSTANTS_TABLE.read(temperature, w.constants);
  const volume = loadAmounts(w.totals, {
    values,
    amounts: AMOUNTS,
    volume: values[VARIABLE_INDEX.waterVolume]!,
  });
  w.totals[TOTAL.organic]! *= HUMIC_ACID.siteDensity;
  w.organicRule = 1;
  solvePH(w);
  return volume;
}

/**
 * The keeper's quantities from the values of a run: hardness, conductivity at 25 degC and mass concentrations. The
 * organic carbon counts as humic acid.
 * @param values value array of the run, in the order of the variables
 * @param w workspace of closed carbon, kept from report to report: its last solution is the first guess of the next
 * @throws RangeError when the water's temperature lies outside -5 to 95 degC.
 * @source derived: see `solvePH`, `conductivityAt`, `titratedAlkalinity`
 */
export function waterReport(values: Float64Array, w: Workspace = new Workspace()): WaterReport {
  const volume = solveWater(values, w);
  const concentration = (id: VariableId): number => Math.max(0, values[VARIABLE_INDEX[id]]!) / volume;
  const alkalinity = 1000 * conservativeAlkalinity(w.totals);
  const hardness = 1000 * (w.totals[TOTAL.calcium]! + w.totals[TOTAL.magnesium]!);
  return {
    pH: w.state[STATE.pH]!,
    KH: carbonateHardness(titratedAlkalinity(alkalinity, 1000 * w.totals[TOTAL.organic]!)),
    GH: generalHardness(hardness),
    conductivity: conductivityAt(freeIons(w), w.state[STATE.ionicStrength]!, 25),
    totalAmmonia: concentration('ammonium') * MOLAR_MASS.nitrogen,
    unionisedAmmonia: 1000 * w.species[SPECIES.ammonia]! * MOLAR_MASS.nitrogen,
    nitrite: concentration('nitrite') * MOLAR_MASS.nitrogen,
    nitrate: concentration('nitrate') * MOLAR_MASS.nitrogen,
    phosphate: concentration('phosphate') * MOLAR_MASS.phosphorus,
    oxygen: concentration('oxygen') * MOLAR_MASS.oxygen,
    dissolvedOrganicCarbon: concentration('dissolvedOrganicCarbon') * MOLAR_MASS.carbon,
  };
}
