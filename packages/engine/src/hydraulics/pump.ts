import { GRAVITY } from '../climate/openings.ts';
import { pow } from '../numerics/elementary.ts';
import { cube, square } from '../numerics/small-powers.ts';
import { type PipeRun, pipeLoss } from './pipe-loss.ts';

/** What a pump's label tells: head against a closed outlet, flow without any head. */
export interface PumpCurve {
  /** [m] */
  readonly shutOffHead: number;
  /** [m3/s] */
  readonly freeFlow: number;
  /** Exponent n of the curve: 2 for centrifugal pumps, 1 for very weak ones. */
  readonly exponent: number;
}

/**
 * Returns the head a pump gives at a flow [m]: H0 (1 - (Q/Q0)^n), below 0 beyond its free flow.
 * @param curve H0, Q0 and n
 * @param flow Q [m3/s], >= 0
 * @source derived: common practice for pumps known by two figures
 */
export function pumpHead(curve: PumpCurve, flow: number): number {
  if (flow <= 0) return curve.shutOffHead;
  return curve.shutOffHead * (1 - pow(flow / curve.freeFlow, curve.exponent));
}

/** Where a pump and its pipe agree. */
export interface OperatingPoint {
  /** [m3/s] */
  readonly flow: number;
  /** [m] */
  readonly head: number;
}

/**
 * Returns the flow at which the pump's head equals lift and losses [m3/s, m]: root by bisection, which is sure because
 * the pump's head falls and the pipe's rises with flow; no flow when the lift is beyond the shut-off head.
 * @param curve of the pump
 * @param run the pipe behind it
 * @param lift height of the outlet above the water [m], >= 0
 * @source derived
 */
export function operatingPoint(curve: PumpCurve, run: PipeRun, lift: number): OperatingPoint {
  if (lift >= curve.shutOffHead) return { flow: 0, head: curve.shutOffHead };
  let low = 0;
  let high = curve.freeFlow;
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (pumpHead(curve, middle) > lift + pipeLoss(run, middle)) low = middle;
    else high = middle;
  }
  const flow = 0.5 * (low + high);
  return { flow, head: pumpHead(curve, flow) };
}

/** Flow, head and power of a pump at one speed. */
export interface PumpDuty {
  /** [m3/s] */
  readonly flow: number;
  /** [m] */
  readonly head: number;
  /** [W] */
  readonly power: number;
}

/**
 * Returns the duty of a pump at another speed [m3/s, m, W]: flow with the ratio, head with its square, power with its
 * cube.
 * @param duty at the first speed
 * @param ratio new speed by old, above 0
 * @source derived: affinity laws
 */
export function dutyAtSpeed(duty: PumpDuty, ratio: number): PumpDuty {
  return { flow: duty.flow * ratio, head: duty.head * square(ratio), power: duty.power * cube(ratio) };
}

/**
 * Returns the power a pump takes [W, >= 0]: rho g Q H/eta.
 * @param point flow Q [m3/s] and head H [m]
 * @param density rho of the water [kg/m3]
 * @param efficiency eta, 0 to 1; small submersible pumps 0.05 to 0.25 (common practice)
 * @source derived
 */
export function pumpPower(point: OperatingPoint, density: number, efficiency: number): number {
  return (density * GRAVITY * point.flow * point.head) / efficiency;
}
