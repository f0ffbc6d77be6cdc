import { vanTHoff } from './van-t-hoff.ts';

/**
 * log10 of the association constants of phosphate: PO4 3- with 1, 2 and 3 H+ (cumulative), and the pairs of calcium
 * and magnesium with each of the three anions [kg/mol per step].
 * @param T [K]
 * @validity 5 to 50 degC. No pairs with sodium and potassium: in a 0.05 mol/kg phosphate buffer the pH comes out
 *   0.02 high.
 * @source ball-nordstrom-1991; enthalpies of the pairs memory
 */
export function logPhosphate(T: number) {
  return {
    hydrogen: vanTHoff(12.346, -14770, T),
    dihydrogen: vanTHoff(19.553, -18910, T),
    trihydrogen: vanTHoff(21.721, -10100, T),
    calciumHydrogen: vanTHoff(2.739, 13810, T),
    calciumDihydrogen: vanTHoff(1.408, 14230, T),
    calcium: vanTHoff(6.459, 12970, T),
    magnesiumHydrogen: vanTHoff(2.87, 13810, T),
    magnesiumDihydrogen: vanTHoff(1.513, 14230, T),
    magnesium: vanTHoff(6.589, 12970, T),
  };
}
