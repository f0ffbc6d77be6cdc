import { log10 } from '../../numerics/elementary.ts';
import { vanTHoff } from './van-t-hoff.ts';

/**
 * log10 of the association constants [kg/mol] of the pairs that count in fresh water; NaHCO3 and NaCO3- are left
 * out on purpose: with them the 0.025 + 0.025 mol/kg carbonate standard comes out at pH 9.87 instead of 10.012.
 * CaOH+ and MgOH+ are negligible below pH 10.
 * @param T [K]
 * @validity CaHCO3 0 to 90 degC, CaCO3 5 to 80 degC, MgHCO3 and MgCO3 10 to 90 degC, sulfates 0 to 50 degC.
 * @source plummer-busenberg-1982 (Ca with HCO3 and CO3), ball-nordstrom-1991 (the others)
 */
export function logIonPairs(T: number) {
  const logT = log10(T);
  return {
    calciumBicarbonate: 1209.12 + 0.31294 * T - 34765.05 / T - 478.782 * logT,
    calciumCarbonate: -1228.732 - 0.299444 * T + 35512.75 / T + 485.818 * logT,
    magnesiumBicarbonate: -59.215 + 2537.455 / T + 20.92298 * logT,
    magnesiumCarbonate: 0.991 + 0.00667 * T,
    calciumSulfate: vanTHoff(2.3, 6900, T),
    magnesiumSulfate: vanTHoff(2.37, 19040, T),
    sodiumSulfate: vanTHoff(0.7, 4690, T),
    potassiumSulfate: 3.106 - 673.6 / T,
    hydrogenSulfate: -56.889 + 0.006473 * T + 2307.9 / T + 19.8858 * logT,
  };
}
