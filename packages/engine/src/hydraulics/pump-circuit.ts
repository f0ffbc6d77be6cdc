import { kinematicViscosity, waterViscosity } from '../climate/liquid-water.ts';
import { GRAVITY } from '../climate/openings.ts';
import { pow } from '../numerics/elementary.ts';
import type { FilterBed, Pump } from '../plan/devices.ts';
import { liquidWaterDensity } from '../water/activity.ts';
import { pipeSpeed } from './pipe-friction.ts';
import { FITTING_LOSS, fittingLoss, frictionLoss, type PipeRun } from './pipe-loss.ts';
import { bedLoss, foamLoss } from './porous-flow.ts';
import { pumpHead } from './pump.ts';

/** How dirty a filter and its hose are. */
export interface Fouling {
  /** Permeability left of the filter [0..1]; 1 clean, a tenth to a thousandth fouled. */
  readonly permeability: number;
  /** Roughness of the hose [m]: drawn plastic 1.5e-6, biofilm 3e-4. */
  readonly roughness: number;
}

/** Clean foam by pores per inch [m2] and its inertial coefficient. @source bhattacharya-2002 (memory), on metal foams */
const FOAM_PORES = [5, 10, 20, 40] as const;
const FOAM_PERMEABILITY = [2.7e-7, 1.2e-7, 1.3e-7, 0.61e-7] as const;
const FOAM_INERTIA = 0.09;
/** Packed gravel, and its grains' shape. @source davis-filters, average sand */
const BED_POROSITY = 0.4;
const GRAIN_SHAPE = 0.75;
const USUAL_PORES = 20;
const USUAL_GRAIN = 0.004;
/** Temperature at which flow is worked out [degC]; 10 K move it by a few per cent. @source assumed */
const TEMPERATURE = 22;

/** Where a pump and its way agree, heads in metres of water. */
export interface CircuitPoint {
  /** [m3/s] */
  readonly flow: number;
  readonly head: number;
  readonly lift: number;
  readonly hoseLoss: number;
  readonly fittingLoss: number;
  readonly filterLoss: number;
}

type Circuit = Omit<Pump, 'flow' | 'name' | 'power' | 'fallHeight' | 'filmSurface'>;

function foamPermeability(pores: number): number {
  let i = 0;
  while (i + 2 < FOAM_PORES.length && pores > FOAM_PORES[i + 1]!) i++;
  const share = Math.min(
    1.5,
    Math.max(-0.5, (pores - FOAM_PORES[i]!) / (FOAM_PORES[i + 1]! - FOAM_PORES[i]!)),
  );
  return FOAM_PERMEABILITY[i]! * pow(FOAM_PERMEABILITY[i + 1]! / FOAM_PERMEABILITY[i]!, share);
}

/**
 * Returns the head lost in foam or gravel [m, >= 0]: `foamLoss` or `bedLoss` by rho g, the viscous part over the
 * permeability that clogging leaves.
 * @param bed area, thickness and kind
 * @param flow [m3/s], >= 0
 * @param permeability left [0..1], above 0
 * @source bhattacharya-2002 (memory); ergun-1952
 */
export function filterLoss(bed: FilterBed, flow: number, permeability: number): number {
  const density = liquidWaterDensity(TEMPERATURE);
  const seepage = {
    speed: flow / bed.area,
    length: bed.thickness,
    density,
    viscosity: waterViscosity(TEMPERATURE),
  };
  const pressure =
    bed.kind === 'foam'
      ? foamLoss(seepage, foamPermeability(bed.pores ?? USUAL_PORES) * permeability, FOAM_INERTIA)
      : bedLoss(seepage, (bed.grain ?? USUAL_GRAIN) * GRAIN_SHAPE, BED_POROSITY) / permeability;
  return pressure / (density * GRAVITY);
}

/** Losses of the way at a flow. */
function lossesAt({ hose, filter }: Circuit, flow: number, fouling: Fouling) {
  const lost = { hoseLoss: 0, fittingLoss: 0, filterLoss: 0 };
  if (hose) {
    const run: PipeRun = {
      bore: hose.bore,
      length: hose.length,
      roughness: Math.min(fouling.roughness, 0.05 * hose.bore),
      fittings: 0,
      viscosity: kinematicViscosity(TEMPERATURE),
    };
    const coefficient =
      FITTING_LOSS.flushEntry +
      FITTING_LOSS.exit +
      hose.elbows * FITTING_LOSS.threadedElbow +
      hose.valves * FITTING_LOSS.ballValve;
    lost.hoseLoss = frictionLoss(run, flow);
    lost.fittingLoss = fittingLoss(coefficient, pipeSpeed(flow, hose.bore));
  }
  if (filter) lost.filterLoss = filterLoss(filter, flow, fouling.permeability);
  return lost;
}

/** A clean way. @source lmno-losses for drawn plastic */
export const CLEAN: Fouling = { permeability: 1, roughness: 1.5e-6 };
/** Half way and all the way to a clogged filter with biofilm in the hose. @source assumed, within the ranges of docs/science */
export const HALF_FOULED: Fouling = { permeability: 0.1, roughness: 1e-4 };
export const FOULED: Fouling = { permeability: 0.01, roughness: 3e-4 };

/**
 * Returns the head a pump's way takes at a flow [m]: lift, hose, fittings, filter.
 * @param circuit hose, filter and outlet of the pump
 * @param level of the water it draws from [m]
 * @param flow [m3/s], >= 0
 * @param fouling how dirty the way is
 * @source derived
 */
export function wayHead(circuit: Circuit, level: number, flow: number, fouling: Fouling): number {
  const lost = lossesAt(circuit, flow, fouling);
  return Math.max(0, (circuit.outlet ?? level) - level) + lost.hoseLoss + lost.fittingLoss + lost.filterLoss;
}

/**
 * Returns where a pump and its way agree [m3/s, m]: root by bisection of the pump's head less the way's, which falls with
 * flow; no flow when the lift is beyond the shut-off head.
 * @param pump with its curve, hose, filter and outlet; one without a curve moves its `flow` whatever the way takes
 * @param level of the water it draws from [m]
 * @param fouling how dirty the way is
 * @source derived
 */
export function circuitPoint(
  pump: Circuit & { readonly flow: number },
  level: number,
  fouling: Fouling,
): CircuitPoint {
  const { curve } = pump;
  const lift = Math.max(0, (pump.outlet ?? level) - level);
  const at = (flow: number, head: number): CircuitPoint => ({
    flow,
    head,
    lift,
    ...lossesAt(pump, flow, fouling),
  });
  if (!curve) return at(pump.flow, wayHead(pump, level, pump.flow, fouling));
  if (lift >= curve.shutOffHead) return at(0, curve.shutOffHead);
  let low = 0;
  let high = curve.freeFlow;
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    if (pumpHead(curve, middle) > wayHead(pump, level, middle, fouling)) low = middle;
    else high = middle;
  }
  const flow = 0.5 * (low + high);
  return at(flow, pumpHead(curve, flow));
}

/**
 * Returns the flow a pump moves through its clean way [m3/s, >= 0].
 * @param pump with its curve, hose, filter and outlet
 * @param level of the water it draws from [m]
 * @source derived
 */
export function pumpedFlow(pump: Circuit & { readonly flow: number }, level: number): number {
  return circuitPoint(pump, level, CLEAN).flow;
}
