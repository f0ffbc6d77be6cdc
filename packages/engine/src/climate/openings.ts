import { square } from '../numerics/small-powers.ts';
/** Acceleration of free fall [m/s2]. */
export const GRAVITY = 9.80665;
/** Froude number of two-way exchange through a thin horizontal opening (memory). */
const THIN_OPENING_FROUDE = 0.055;

/** Two openings at different heights, and the densities of the air inside and outside [kg/m3]. */
export interface StackOpenings {
  /** Free areas [m2]. */
  readonly lowerArea: number;
  readonly upperArea: number;
  /** Height of the upper above the lower [m]. */
  readonly height: number;
  readonly insideDensity: number;
  readonly outsideDensity: number;
  /** Discharge coefficient; 0.6 for a sharp opening. */
  readonly dischargeCoefficient: number;
}

/**
 * Returns the pressure difference that drives air through two openings [Pa], positive when air enters below:
 * (rho_out - rho_in) g H.
 * @param openings heights and densities
 * @source derived from hydrostatics
 */
export function stackPressure({ outsideDensity, insideDensity, height }: StackOpenings): number {
  return (outsideDensity - insideDensity) * GRAVITY * height;
}

/**
 * Returns the flow through two openings at different heights [m3/s, >= 0]:
 * C_d A sqrt(2 |dp|/rho), A = A_l A_u/sqrt(A_l^2 + A_u^2), rho the mean density.
 * @param openings areas, heights and densities
 * @source ashrae-fundamentals-2017, chapter 16 (memory)
 */
export function stackFlow(openings: StackOpenings): number {
  const { lowerArea, upperArea, insideDensity, outsideDensity, dischargeCoefficient } = openings;
  const effective = (lowerArea * upperArea) / Math.sqrt(lowerArea * lowerArea + upperArea * upperArea);
  const mean = 0.5 * (insideDensity + outsideDensity);
  return dischargeCoefficient * effective * Math.sqrt((2 * Math.abs(stackPressure(openings))) / mean);
}

/** An upright slot through which air passes both ways, and the densities of the air inside and outside [kg/m3]. */
export interface UprightSlot {
  /** [m2] */
  readonly area: number;
  readonly insideDensity: number;
  readonly outsideDensity: number;
}

/**
 * Returns the exchange through one upright slot, per direction [m3/s, >= 0]: (C_d/3) A sqrt(g H |drho|/rho).
 * @param slot area and densities
 * @param height H of the slot [m]
 * @param dischargeCoefficient C_d, 0.6 for a sharp opening
 * @source brown-solvason-1962 (memory)
 */
export function slotExchange(slot: UprightSlot, height: number, dischargeCoefficient: number): number {
  const mean = 0.5 * (slot.insideDensity + slot.outsideDensity);
  const difference = Math.abs(slot.outsideDensity - slot.insideDensity);
  return (dischargeCoefficient / 3) * slot.area * Math.sqrt((GRAVITY * height * difference) / mean);
}

/**
 * Returns the exchange through an opening in the top, per direction [m3/s, >= 0]: Fr sqrt(D^5 g drho/rho) with
 * D = sqrt(4 A/pi), when the air inside is lighter; 0 when it is not.
 * @param area A of the opening [m2]
 * @param insideDensity of the box air [kg/m3]
 * @param outsideDensity of the room air [kg/m3]
 * @param froude Froude number of the opening
 * @validity a thin cover; the coefficient rises to about 0.1 for deep openings; plus or minus 50 %
 * @source epstein-1988, coefficient from memory
 */
export function topOpeningExchange(
  area: number,
  insideDensity: number,
  outsideDensity: number,
  froude = THIN_OPENING_FROUDE,
): number {
  const difference = outsideDensity - insideDensity;
  if (difference <= 0) return 0;
  const mean = 0.5 * (insideDensity + outsideDensity);
  const squared = (4 * area) / Math.PI;
  const fifthPower = squared * squared * Math.sqrt(squared);
  return froude * Math.sqrt((fifthPower * GRAVITY * difference) / mean);
}

/**
 * Returns the loss coefficient of woven mesh on its face velocity [>= 0]: 1.3 (1 - f) + (1/f - 1)^2.
 * @param openFraction f, 0 to 1
 * @validity coarse mesh, fast air; fine insect screens resist several times more
 * @source idelchik (memory)
 */
export function meshLoss(openFraction: number): number {
  return 1.3 * (1 - openFraction) + square(1 / openFraction - 1);
}

/**
 * Returns the loss coefficient of a screen from its measured discharge coefficient [>= 1]: 1/C_d^2.
 * @param dischargeCoefficient of the screen alone, 0 to 1
 * @source insect-screens-2016
 */
export function screenLoss(dischargeCoefficient: number): number {
  return 1 / (dischargeCoefficient * dischargeCoefficient);
}

/**
 * Returns the discharge coefficient of an opening with a screen in it [0..1]: 1/sqrt(1/C_d^2 + zeta).
 * @param dischargeCoefficient C_d of the bare opening
 * @param loss zeta of the screen
 * @source derived: losses in series on one velocity
 */
export function screenedDischargeCoefficient(dischargeCoefficient: number, loss: number): number {
  return 1 / Math.sqrt(1 / (dischargeCoefficient * dischargeCoefficient) + loss);
}

/**
 * Returns the moisture carried out by exchanged air [kg/s], negative when the room is moister: Q/v (W_box - W_room).
 * @param flow Q [m3/s]
 * @param boxVolume v of the box air [m3/kg dry air]
 * @param ratioDifference W_box - W_room [kg/kg]
 * @source derived
 */
export function moistureRemoval(flow: number, boxVolume: number, ratioDifference: number): number {
  return (flow / boxVolume) * ratioDifference;
}

/**
 * Returns the height above the lower of two openings at which pressure inside and outside is equal [m]:
 * H A_u^2/(A_l^2 + A_u^2).
 * @param openings areas and height
 * @source derived: equal flows in and out
 */
export function neutralHeight({ lowerArea, upperArea, height }: StackOpenings): number {
  const upper = upperArea * upperArea;
  return (height * upper) / (lowerArea * lowerArea + upper);
}
