import { exp10 } from '../../numerics/elementary.ts';
import { debyeHueckelSlope } from '../activity.ts';
import { ammoniumAcidity } from '../constants/ammonia.ts';
import {
  logCarbonDioxideSolubility,
  logFirstDissociation,
  logIonProductOfWater,
  logSecondDissociation,
} from '../constants/carbonate.ts';
import { logIonPairs } from '../constants/ion-pairs.ts';
import { logCalciteSolubility } from '../constants/minerals.ts';
import { logPhosphate } from '../constants/phosphate.ts';
import { oxygenAtOneAtmosphere, oxygenPressureCoefficient, vapourPressureOverWater } from '../gases.ts';
import { CONSTANT_COUNT, K } from './layout.ts';

/**
 * Writes all constants at a temperature [mol/kg, atm; see `K` for the order] into `row` from `offset`.
 * @param t [degC]
 * @param row at least `offset + CONSTANT_COUNT` long
 * @source derived: collects the functions of `constants/` and `gases.ts`
 */
export function writeConstants(t: number, row: Float64Array, offset: number): void {
  const T = t + 273.15;
  const pair = logIonPairs(T);
  const phosphate = logPhosphate(T);
  const put = (key: keyof typeof K, log: number): void => {
    row[offset + K[key]] = exp10(log);
  };
  row[offset + K.davies] = Math.LN10 * debyeHueckelSlope(t);
  put('carbonDioxide', logCarbonDioxideSolubility(T));
  put('first', logFirstDissociation(T));
  put('second', logSecondDissociation(T));
  put('water', logIonProductOfWater(T));
  put('calciumBicarbonate', pair.calciumBicarbonate);
  put('calciumCarbonate', pair.calciumCarbonate);
  put('magnesiumBicarbonate', pair.magnesiumBicarbonate);
  put('magnesiumCarbonate', pair.magnesiumCarbonate);
  put('calciumSulfate', pair.calciumSulfate);
  put('magnesiumSulfate', pair.magnesiumSulfate);
  put('sodiumSulfate', pair.sodiumSulfate);
  put('potassiumSulfate', pair.potassiumSulfate);
  put('hydrogenSulfate', pair.hydrogenSulfate);
  put('ammonium', -ammoniumAcidity(T));
  put('hydrogenPhosphate', phosphate.hydrogen);
  put('dihydrogenPhosphate', phosphate.dihydrogen);
  put('trihydrogenPhosphate', phosphate.trihydrogen);
  put('calciumHydrogenPhosphate', phosphate.calciumHydrogen);
  put('calciumDihydrogenPhosphate', phosphate.calciumDihydrogen);
  put('calciumPhosphate', phosphate.calcium);
  put('magnesiumHydrogenPhosphate', phosphate.magnesiumHydrogen);
  put('magnesiumDihydrogenPhosphate', phosphate.magnesiumDihydrogen);
  put('magnesiumPhosphate', phosphate.magnesium);
  put('calcite', logCalciteSolubility(T));
  row[offset + K.vapourPressure] = vapourPressureOverWater(t);
  row[offset + K.oxygenPressureCoefficient] = oxygenPressureCoefficient(t);
  row[offset + K.oxygen] = oxygenAtOneAtmosphere(t);
}

const STEP = 0.025;
const LOWEST = 0;
const HIGHEST = 45;
const ROWS = Math.round((HIGHEST - LOWEST) / STEP) + 1;

/** The constants on a grid of temperatures, filled where they are first asked for. */
export class TemperatureTable {
  private readonly rows = new Float64Array(ROWS * CONSTANT_COUNT);
  private readonly filled = new Uint8Array(ROWS);

  /**
   * Writes the constants at a temperature into `into`: linear between grid points 0.025 K apart, exact outside the
   * grid (0 to 45 degC). Linear interpolation errs by less than 8e-7 of a constant, 4e-7 in pH.
   * @param t [degC], finite
   * @source derived: h2/8 times the curvature of the constants over temperature
   */
  read(t: number, into: Float64Array): void {
    if (!(t >= LOWEST && t < HIGHEST)) {
      writeConstants(t, into, 0);
      return;
    }
    const place = (t - LOWEST) / STEP;
    const i = Math.floor(place);
    const f = place - i;
    this.fill(i);
    this.fill(i + 1);
    const rows = this.rows;
    const low = i * CONSTANT_COUNT;
    const high = low + CONSTANT_COUNT;
    for (let j = 0; j < CONSTANT_COUNT; j++) {
      const a = rows[low + j]!;
      into[j] = a + f * (rows[high + j]! - a);
    }
  }

  private fill(i: number): void {
    if (this.filled[i]) return;
    writeConstants(LOWEST + i * STEP, this.rows, i * CONSTANT_COUNT);
    this.filled[i] = 1;
  }
}
