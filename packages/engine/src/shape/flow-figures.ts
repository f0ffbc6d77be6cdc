import { GRAVITY } from '../climate/openings.ts';
import { lowestOpening } from '../geometry/lowest-opening.ts';
import { pipeSpeed } from '../hydraulics/pipe-friction.ts';
import { pumpHead } from '../hydraulics/pump.ts';
import {
  type CircuitPoint,
  CLEAN,
  circuitPoint,
  FOULED,
  type Fouling,
  HALF_FOULED,
  wayHead,
} from '../hydraulics/pump-circuit.ts';
import { criticalDepth, sheetReach } from '../hydraulics/weirs.ts';
import { exp } from '../numerics/elementary.ts';
import type { Pump } from '../plan/devices.ts';
import type { ShapeGround } from './shape-ground.ts';
import type { FlowFigures, OperatingFigures } from './shape-sheet.ts';

/** A sheet stays closed from this flow by width on [m2/s]. @source common practice, no source: 6 L/h per mm of lip */
const CLOSED_SHEET = 6e-3 / 3600 / 1e-3;
/** Part of the flow thrown out as fine drops, per metre of fall. @source assumed: order of magnitude only */
const THROWN_PER_METRE = 2e-4;
/** Water that stands on a stream bed above the pool while it runs [m]. @source assumed */
const STREAM_DEPTH = 0.004;
const CURVE_POINTS = 32;

function operating(point: CircuitPoint, volume: number): OperatingFigures {
  return { ...point, turnover: volume > 0 ? (point.flow * 3600) / volume : 0 };
}

function curveOf(pump: Pump, level: number): FlowFigures['curve'] {
  const { curve } = pump;
  if (!curve) return undefined;
  const flows = Array.from({ length: CURVE_POINTS + 1 }, (_, i) => (curve.freeFlow * i) / CURVE_POINTS);
  const way = (fouling: Fouling) => flows.map((flow) => wayHead(pump, level, flow, fouling));
  return { flows, pump: flows.map((flow) => pumpHead(curve, flow)), clean: way(CLEAN), fouled: way(FOULED) };
}

function sheetOf({ lip, fallHeight }: Pump, flow: number): FlowFigures['sheet'] {
  if (lip === undefined || !(flow > 0)) return undefined;
  const perWidth = flow / lip;
  const depth = criticalDepth(perWidth);
  const speed = perWidth / depth;
  const landing = Math.sqrt(speed * speed + 2 * GRAVITY * fallHeight);
  return {
    perWidth,
    depth,
    thickness: perWidth / landing,
    reach: sheetReach(speed, fallHeight),
    isClosed: perWidth >= CLOSED_SHEET,
  };
}

/** What stands above the pool while the pump runs and comes back when it stops. */
function stopOf({ plan, geometry, patches }: ShapeGround, pump: Pump): FlowFigures['stop'] {
  const { level } = plan.water;
  const outlet = pump.outlet ?? level;
  const inHose =
    pump.hose && outlet > level ? (Math.PI * pump.hose.bore * pump.hose.bore * pump.hose.length) / 4 : 0;
  let bed = 0;
  for (const [i, zone] of plan.zones.entries())
    if (zone.kind === 'stream')
      for (const patch of patches[i]!) if (patch.low + patch.high > 2 * level) bed += patch.area;
  const drainBack = inHose + bed * STREAM_DEPTH;
  const volume = geometry.volumeAt(level) + drainBack;
  const rise = geometry.levelAt(volume) - level;
  return { drainBack, rise, freeboardLeft: lowestOpening(plan.box).height - level - rise };
}

/**
 * Returns what the pump moves clean and fouled [m3/s, m], the sheet it returns as, and what happens when it stops; nothing
 * without a pump.
 * @param ground of a plan that can be drawn
 * @source derived; foam and biofilm assumed
 */
export function flowFigures(ground: ShapeGround): FlowFigures | undefined {
  const { plan, geometry } = ground;
  const { pump } = plan.devices;
  if (!pump) return undefined;
  const { level } = plan.water;
  const volume = geometry.volumeAt(level);
  const clean = circuitPoint(pump, level, CLEAN);
  const curve = curveOf(pump, level);
  const sheet = sheetOf(pump, clean.flow);
  return {
    clean: operating(clean, volume),
    halfFouled: operating(circuitPoint(pump, level, HALF_FOULED), volume),
    fouled: operating(circuitPoint(pump, level, FOULED), volume),
    ...(curve ? { curve } : {}),
    filteredInHour: volume > 0 ? 1 - exp((-clean.flow * 3600) / volume) : 0,
    ...(pump.hose ? { hoseSpeed: pipeSpeed(clean.flow, pump.hose.bore) } : {}),
    ...(pump.filter ? { bedSpeed: clean.flow / pump.filter.area } : {}),
    ...(sheet ? { sheet } : {}),
    splash: clean.flow * 86400 * THROWN_PER_METRE * pump.fallHeight,
    stop: stopOf(ground, pump),
    assumption: pump.curve
      ? 'Half fouled: the filter at a tenth of its permeability; fouled: a hundredth, with biofilm in the hose. Splash is an order of magnitude.'
      : 'The flow is the one given, clean or fouled: give the pump its curve to see what height and dirt do. Splash is an order of magnitude.',
  };
}
