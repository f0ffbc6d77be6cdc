import {
  CARBON_CLOSED,
  type CarbonRule,
  CONSTANT_COUNT,
  PASS_COUNT,
  SPECIES_COUNT,
  STATE,
  STATE_COUNT,
  STEER_COUNT,
  TOTAL,
  TOTAL_COUNT,
} from './layout.ts';

/** How organic sites are modelled: none, Oliver's single site, or three sites with fixed pKa. */
export type OrganicRule = 0 | 1 | 2;

/** Tolerance of a workspace in a run: far below what interpolating the constants costs (4e-7 in pH, 8e-7 in a constant). */
export const RUN_TOLERANCE = 1e-10;

/** Everything the equilibrium solver reads and writes, allocated once. */
export class Workspace {
  readonly constants = new Float64Array(CONSTANT_COUNT);
  readonly totals = new Float64Array(TOTAL_COUNT);
  readonly state = new Float64Array(STATE_COUNT);
  readonly species = new Float64Array(SPECIES_COUNT);
  readonly pass = new Float64Array(PASS_COUNT);
  /** Exponentials of a pass: activity of H+, coefficients of charge 1 and 0, organic sites undissociated over dissociated. */
  readonly exponentials = new Float64Array(4);
  readonly steer = new Float64Array(STEER_COUNT);
  /** Cumulative dissociation constants of the three-site acid: K1, K1 K2, K1 K2 K3. */
  readonly triprotic = new Float64Array(3);
  carbonRule: CarbonRule = CARBON_CLOSED;
  organicRule: OrganicRule = 0;
  /** A solution stands when no further pass would move pH or a concentration by more than this (pH, relative). */
  tolerance = 1e-12;
  /** False until the first solution; a cold start builds its own first guess. */
  warm = false;
}

/**
 * Conservative alkalinity of the totals [eq/kg]:
 * 2 Ca + 2 Mg + Na + K + NH4 - Cl - 2 SO4 - NO3 - NO2 - P
 * @source derived: electroneutrality with zero level CO2(aq), H2PO4-, NH4+, NO3-, SO4 2-
 */
export function conservativeAlkalinity(totals: Float64Array): number {
  const cations =
    2 * (totals[TOTAL.calcium]! + totals[TOTAL.magnesium]!) +
    totals[TOTAL.sodium]! +
    totals[TOTAL.potassium]! +
    totals[TOTAL.ammonium]!;
  const anions =
    totals[TOTAL.chloride]! +
    2 * totals[TOTAL.sulfate]! +
    totals[TOTAL.nitrate]! +
    totals[TOTAL.nitrite]! +
    totals[TOTAL.phosphate]!;
  return cations - anions;
}

/** First guess: nothing paired, pH as it stands. Free ions and ionic strength then only fall towards the solution. */
export function startFromTotals({ state, totals }: Workspace): void {
  state[STATE.calcium] = totals[TOTAL.calcium]!;
  state[STATE.magnesium] = totals[TOTAL.magnesium]!;
  state[STATE.sodium] = totals[TOTAL.sodium]!;
  state[STATE.potassium] = totals[TOTAL.potassium]!;
  state[STATE.carbon] = 0;
  state[STATE.ionicStrength] =
    0.5 *
    (4 * (totals[TOTAL.calcium]! + totals[TOTAL.magnesium]! + totals[TOTAL.sulfate]!) +
      totals[TOTAL.sodium]! +
      totals[TOTAL.potassium]! +
      totals[TOTAL.chloride]! +
      totals[TOTAL.ammonium]! +
      totals[TOTAL.nitrate]! +
      totals[TOTAL.nitrite]!);
}
