import { GRAVITY } from '../climate/openings.ts';
import { square } from '../numerics/small-powers.ts';
import { frictionFactor, pipeSpeed, reynoldsNumber } from './pipe-friction.ts';

/** A run of hose or pipe with its fittings. */
export interface PipeRun {
  /** [m] */
  readonly bore: number;
  readonly length: number;
  /** Height of the roughness [m]: drawn plastic 1.5e-6; biofilm 1e-4 to 5e-4. */
  readonly roughness: number;
  /** Sum of the loss coefficients of fittings, inlet and outlet. */
  readonly fittings: number;
  /** Kinematic viscosity of the water [m2/s]. */
  readonly viscosity: number;
}

/** Loss coefficients of fittings on the speed in the pipe. @source lmno-losses; ball valve memory */
export const FITTING_LOSS = {
  threadedElbow: 1.5,
  flangedElbow: 0.3,
  longElbow: 0.7,
  halfElbow: 0.4,
  teeStraight: 0.9,
  teeBranch: 2,
  gateValve: 0.15,
  globeValve: 10,
  checkValve: 2,
  flushEntry: 0.5,
  projectingEntry: 0.9,
  exit: 1,
  ballValve: 0.05,
} as const;

/**
 * Returns the head lost by friction along a pipe [m, >= 0]: f (L/D) V^2/(2 g).
 * @param run the pipe
 * @param flow [m3/s], >= 0
 * @source derived: Darcy and Weisbach
 */
export function frictionLoss(run: PipeRun, flow: number): number {
  if (flow <= 0) return 0;
  const speed = pipeSpeed(flow, run.bore);
  const reynolds = reynoldsNumber(speed, run.bore, run.viscosity);
  const factor = frictionFactor(reynolds, run.roughness / run.bore);
  return (factor * run.length * speed * speed) / (run.bore * 2 * GRAVITY);
}

/**
 * Returns the head lost in fittings [m, >= 0]: K V^2/(2 g).
 * @param coefficient K, see `FITTING_LOSS`
 * @param speed V [m/s]
 * @source derived
 */
export function fittingLoss(coefficient: number, speed: number): number {
  return (coefficient * speed * speed) / (2 * GRAVITY);
}

/**
 * Returns the loss coefficient of a barbed fitting on the speed in the hose [>= 0]:
 * 0.5 (1 - b^2)/b^4 + (1/b^2 - 1)^2, contraction into the barb and widening behind it.
 * @param ratio b, bore of the barb by that of the hose, 0 to 1
 * @source derived: sudden contraction and Borda-Carnot widening (memory)
 */
export function barbLoss(ratio: number): number {
  const areaRatio = ratio * ratio;
  return (0.5 * (1 - areaRatio)) / (areaRatio * areaRatio) + square(1 / areaRatio - 1);
}

/**
 * Returns the head lost in a run of pipe, fittings included [m, >= 0].
 * @param run the pipe
 * @param flow [m3/s], >= 0
 * @source derived
 */
export function pipeLoss(run: PipeRun, flow: number): number {
  return frictionLoss(run, flow) + fittingLoss(run.fittings, pipeSpeed(flow, run.bore));
}
