import { CARBON_DIOXIDE_SCHMIDT, OXYGEN_SCHMIDT, schmidtNumber } from '../cycle/schmidt-number.ts';
import { exp, pow } from '../numerics/elementary.ts';

/** A fall of water into a pool, for the deficit ratio of oxygen. */
export interface AeratingFall {
  /** Height of fall [m]. */
  readonly height: number;
  /** [degC] */
  readonly temperature: number;
  /** Water quality: 1.8 clean, 1.6 slightly, 1.0 and 0.65 grossly polluted. */
  readonly quality: number;
  /** Kind of edge: flat broad crest 0.7 to 0.9, sharp with a slope 1.05, sharp upright 0.8, submerged sluice 0.05. */
  readonly edge: number;
}

/**
 * Returns the ratio of the oxygen deficit above a fall to that below [>= 1]: 1 + 0.38 a b h (1 - 0.11 h)(1 + 0.046 t).
 * @param fall height h, temperature t, quality a, edge b
 * @validity fitted to falls of decimetres to metres; an extrapolation below 0.2 m, where forms differ several-fold
 * @source butts-1983, as given in the SWAT+ theory documentation
 */
export function deficitRatioButts1983({ height, temperature, quality, edge }: AeratingFall): number {
  return 1 + 0.38 * quality * edge * height * (1 - 0.11 * height) * (1 + 0.046 * temperature);
}

/**
 * Returns the deficit ratio with flow and tailwater depth counted [>= 1]:
 * 1 + a b (exp(0.0675 h^1.28 q^0.62 d^0.439) - 1)(1 + 0.02 (t - 20)).
 * @param fall height h, temperature t, quality a, edge b
 * @param flowPerWidth q [m3/(h m)]
 * @param tailwaterDepth d [m]
 * @source nakasone-1987, hybrid form as in the Delft3D weir aeration process (memory)
 */
export function deficitRatioNakasone1987(
  fall: AeratingFall,
  flowPerWidth: number,
  tailwaterDepth: number,
): number {
  const { height, temperature, quality, edge } = fall;
  const exponent = 0.0675 * pow(height, 1.28) * pow(flowPerWidth, 0.62) * pow(tailwaterDepth, 0.439);
  return 1 + quality * edge * (exp(exponent) - 1) * (1 + 0.02 * (temperature - 20));
}

/**
 * Returns the concentration below a fall [unit of the others]: C_s - (C_s - C_up)/r.
 * @param above C_up, before the fall
 * @param saturation C_s
 * @param ratio r of the deficits, >= 1
 * @source derived
 */
export function belowFall(above: number, saturation: number, ratio: number): number {
  return saturation - (saturation - above) / ratio;
}

/**
 * Returns the efficiency for carbon dioxide of a fall known for oxygen [0..1]: 1 - (1 - E)^f, f = sqrt(Sc_O2/Sc_CO2).
 * @param oxygenEfficiency E = 1 - 1/r, 0 to 1
 * @param temperature [degC], 0 to 30
 * @validity a film in common; plunges rich in bubbles strip less, because bubbles saturate
 * @source gulliver-1990 (memory)
 */
export function carbonDioxideEfficiency(oxygenEfficiency: number, temperature: number): number {
  const oxygen = schmidtNumber(OXYGEN_SCHMIDT, temperature);
  const carbonDioxide = schmidtNumber(CARBON_DIOXIDE_SCHMIDT, temperature);
  return 1 - pow(1 - oxygenEfficiency, Math.sqrt(oxygen / carbonDioxide));
}

/**
 * Returns the transfer velocity of a gas through a still surface [unit of `reference`]: k600 (Sc/600)^-n.
 * @param reference k600 of a gas of Schmidt number 600; small sheltered lakes 0.35 to 0.74 m/day
 * @param schmidt Sc of the gas at the water's temperature
 * @param exponent n, 0.5 rippled, 0.67 smooth
 * @source wanninkhof-1992; k600 cole-2010, abstract
 */
export function surfaceTransfer(reference: number, schmidt: number, exponent: number): number {
  return reference * pow(schmidt / 600, -exponent);
}
