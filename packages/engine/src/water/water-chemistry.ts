import { exp10 } from '../numerics/elementary.ts';
import type { Derivation, RunningDerivation, Setting } from '../process/contract.ts';
import type { VariableId } from '../variables/variables.ts';
import { CONSTANTS_TABLE } from './equilibrium/constants-table.ts';
import { CARBON_CLOSED, K, PASS, SPECIES, STATE, TOTAL, TOTAL_COUNT } from './equilibrium/layout.ts';
import { DISSOLVED_AMOUNTS, loadAmounts } from './equilibrium/load-amounts.ts';
import { solvePH } from './equilibrium/solve.ts';
import { conservativeAlkalinity, RUN_TOLERANCE, Workspace } from './equilibrium/workspace.ts';
import { ATMOSPHERE, oxygenPressureFactor } from './gases.ts';
import { siteDensityPerCarbon } from './organic-acids.ts';

export interface WaterChemistryParameters {
  readonly organicChargeDensity: number;
}

const PROVIDED = [
  'pH',
  'alkalinity',
  'carbonDioxide',
  'bicarbonate',
  'unionisedAmmonia',
  'calciteSaturation',
  'hydrogenActivity',
  'carbonDioxideSaturation',
  'oxygenSaturation',
] as const satisfies readonly VariableId[];
/**
 * Chemistry of the water at every evaluation of the run: pH, carbonate system, un-ionised ammonia, saturation of
 * calcite and of the gases, from the dissolved amounts, volume and temperature. The same solver as `speciate`, with
 * its last solution as the first guess; that guess does not show in the result (1e-9 in pH). The
 * solution at hand stands as long as neither amounts nor temperature change.
 *
 * A pool about to dry out is not taken to be more concentrated than 2 mol/L in all: beyond it salts crystallise.
 * Amounts below zero count as zero.
 * @source derived: see `speciate` and `gases`
 */
export const waterChemistry: Derivation<WaterChemistryParameters> = {
  id: 'water-chemistry',
  parameters: {
    organicChargeDensity: {
      unit: 'ueq/mg C',
      min: 0,
      max: 30,
      meaning: 'charge of dissolved organic carbon when fully dissociated',
    },
  },
  reads: [...DISSOLVED_AMOUNTS, 'waterVolume', 'waterTemperature', 'roomCarbonDioxide', 'airPressure'],
  provides: PROVIDED,
  prepare({ organicChargeDensity }, setting) {
    return runningChemistry(siteDensityPerCarbon(organicChargeDensity), setting);
  },
};

function runningChemistry(siteDensity: number, setting: Setting): RunningDerivation {
  const w = new Workspace();
  w.carbonRule = CARBON_CLOSED;
  w.tolerance = RUN_TOLERANCE;
  w.organicRule = siteDensity > 0 ? 1 : 0;
  const amounts = Int32Array.from(DISSOLVED_AMOUNTS, (id) => setting.index(id));
  const volumeAt = setting.index('waterVolume');
  const temperatureAt = setting.index('waterTemperature');
  const carbonDioxideAt = setting.index('roomCarbonDioxide');
  const pressureAt = setting.index('airPressure');
  const write = writerOf(w, setting);
  let temperature = Number.NaN;
  const solved = new Float64Array(TOTAL_COUNT).fill(Number.NaN);

  return {
    derive(values) {
      let isSolved = values[temperatureAt] === temperature;
      if (!isSolved) {
        temperature = values[temperatureAt]!;
        CONSTANTS_TABLE.read(temperature, w.constants);
      }
      loadAmounts(w.totals, { values, amounts, volume: values[volumeAt]! });
      w.totals[TOTAL.organic]! *= siteDensity;
      for (let i = 0; i < TOTAL_COUNT; i += 1) {
        if (solved[i] === w.totals[i]) continue;
        solved[i] = w.totals[i]!;
        isSolved = false;
      }
      if (!isSolved) solvePH(w);
      write(values, values[carbonDioxideAt]!, values[pressureAt]! / ATMOSPHERE);
    },
  };
}

function writerOf(w: Workspace, setting: Setting) {
  const at = Int32Array.from(PROVIDED, (id) => setting.index(id));
  const { constants: k, species: m, pass, state } = w;
  /** @param ppm CO2 in dry air [umol/mol]; @param P pressure [atm] */
  return (values: Float64Array, ppm: number, P: number): void => {
    const g2 = pass[PASS.double]!;
    const vapour = k[K.vapourPressure]!;
    const carbonDioxide = k[K.carbonDioxide]! * ppm * 1e-6 * Math.max(0, P - vapour);
    values[at[0]!] = state[STATE.pH]!;
    values[at[1]!] = 1000 * conservativeAlkalinity(w.totals);
    values[at[2]!] = 1000 * m[SPECIES.carbonDioxide]!;
    values[at[3]!] =
      1000 * (m[SPECIES.bicarbonate]! + m[SPECIES.calciumBicarbonate]! + m[SPECIES.magnesiumBicarbonate]!);
    values[at[4]!] = 1000 * m[SPECIES.ammonia]!;
    values[at[5]!] = (m[SPECIES.calcium]! * m[SPECIES.carbonate]! * g2 * g2) / k[K.calcite]!;
    values[at[6]!] = exp10(-state[STATE.pH]!);
    values[at[7]!] = (1000 * carbonDioxide) / pass[PASS.neutral]!;
    values[at[8]!] = k[K.oxygen]! * oxygenPressureFactor(P, vapour, k[K.oxygenPressureCoefficient]!);
  };
}
