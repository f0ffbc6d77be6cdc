import { cube, fourth, square } from '../numerics/small-powers.ts';
import { monotoneCubic } from './monotone-cubic.ts';

/** Stress and deflection coefficients of a plate held at all edges, by its longer side over its shorter. */
export interface PlateCoefficients {
  readonly stress: number;
  readonly deflection: number;
}

const SIDES = [1, 1.2, 1.4, 1.6, 1.8, 2, 3, 4, 5];
const STRESS = [0.2874, 0.3762, 0.453, 0.5172, 0.5688, 0.6102, 0.7134, 0.741, 0.7476];
const DEFLECTION = [0.0444, 0.0616, 0.077, 0.0906, 0.1017, 0.111, 0.1335, 0.14, 0.1417];
const LONG_STRIP: PlateCoefficients = { stress: 0.75, deflection: 0.1421 };

/**
 * Returns the coefficients of a plate under even load, all edges simply supported, Poisson's ratio 0.3 [1, > 0].
 * @param sideRatio longer side by shorter, >= 1; beyond 5 the values of an endless strip
 * @throws RangeError for a ratio below 1.
 * @source roark-7, table 11.4, case 1a
 */
export function plateCoefficients(sideRatio: number): PlateCoefficients {
  if (!(sideRatio >= 1)) throw new RangeError(`plateCoefficients: side ratio ${sideRatio} is below 1`);
  if (sideRatio > 5) return LONG_STRIP;
  return {
    stress: monotoneCubic(SIDES, STRESS, sideRatio),
    deflection: monotoneCubic(SIDES, DEFLECTION, sideRatio),
  };
}

/** A plate under even pressure. */
export interface LoadedPlate {
  /** Even pressure [Pa], shorter side and thickness [m]. */
  readonly pressure: number;
  readonly shortSide: number;
  readonly thickness: number;
}

/**
 * Returns the largest bending stress of an evenly loaded plate [Pa, > 0]: beta q b^2/t^2.
 * @param plate q, b and t
 * @param coefficient beta
 * @source roark-7, table 11.4
 */
export function plateStress({ pressure, shortSide, thickness }: LoadedPlate, coefficient: number): number {
  return coefficient * pressure * square(shortSide / thickness);
}

/**
 * Returns the largest deflection of an evenly loaded plate [m, > 0]: alpha q b^4/(E t^3).
 * @param plate q, b and t
 * @param coefficient alpha
 * @param modulus E [Pa]
 * @source roark-7, table 11.4
 */
export function plateDeflection(plate: LoadedPlate, coefficient: number, modulus: number): number {
  return (coefficient * plate.pressure * fourth(plate.shortSide)) / (modulus * cube(plate.thickness));
}
