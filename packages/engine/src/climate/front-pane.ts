import { cbrt } from '../numerics/elementary.ts';
import type { Box } from '../plan/plan.ts';
import type { Envelope } from './envelope.ts';
import { AIR_HEAT_CAPACITY, LEWIS_FACTOR } from './evaporation.ts';
import { gapResistance } from './gap-resistance.ts';
import type { MoisturePools } from './moisture-pools.ts';
import { partAbove } from './moisture-pools.ts';
import { GLASS_CONDUCTIVITY } from './panes.ts';

/** Forced convection along a pane half a metre high at 1 m/s [W/(m2 K) per (m/s)^0.5], and depth of the stream of air [m]. @source incropera, laminar plate (memory); depth assumed */
const FORCED = 5.6;
const STREAM = 0.03;

/**
 * Returns the film coefficient along a pane with air stirred past it [W/(m2 K)]: third root of the summed cubes of free and
 * forced convection, 5.6 sqrt(v), v the flow over a stream 3 cm deep as long as the pane.
 * @param free film coefficient of free convection
 * @param flow of air [m3/s]
 * @param length of the pane [m]
 * @source incropera (memory); depth of the stream assumed
 */
export function stirredCoefficient(free: number, flow: number, length: number): number {
  if (!(flow > 0)) return free;
  const forced = FORCED * Math.sqrt(flow / (STREAM * length));
  return cbrt(free * free * free + forced * forced * forced);
}

/** Air, radiating surfaces and room as the front pane meets them. */
export interface FrontSurroundings {
  readonly air: number;
  readonly ratio: number;
  /** Radiation [W/(m2 K)] and the temperature it comes from [degC]. */
  readonly radiation: number;
  readonly radiant: number;
  readonly room: number;
  readonly stirred: number;
}

/**
 * Returns what radiates on the glass from inside [W/(m2 K)] and how warm it is [degC].
 * @param envelope conductances of the box
 * @param water temperature [degC]
 * @param ground temperature [degC]
 * @source derived
 */
export function radiationOnGlass(
  { waterToGlass, groundToGlass, glassArea }: Envelope,
  water: number,
  ground: number,
): Pick<FrontSurroundings, 'radiation' | 'radiant'> {
  const radiating = waterToGlass + groundToGlass;
  const radiant = radiating > 0 ? (waterToGlass * water + groundToGlass * ground) / radiating : water;
  return { radiation: radiating / glassArea, radiant };
}

/**
 * The front pane by itself, where a second pane or stirred air sets it apart from the other glass: its temperature in
 * steady state and the film on it. It holds no water of its own: the film is that which the front would show.
 */
export class FrontPane {
  temperature = 0;
  private film = 0;
  private readonly length: number;
  private readonly outwards: number;
  private readonly free: number;
  private readonly pools: MoisturePools;
  private readonly saturatedRatio: (temperature: number) => number;

  constructor(
    box: Box,
    coefficients: { readonly inner: number; readonly outer: number },
    pools: MoisturePools,
    saturatedRatio: (temperature: number) => number,
  ) {
    const { secondPane, glassThickness, length } = box;
    const second = secondPane ? gapResistance(secondPane.gap) + secondPane.thickness / GLASS_CONDUCTIVITY : 0;
    this.length = length;
    this.outwards = 1 / (glassThickness / GLASS_CONDUCTIVITY + second + 1 / coefficients.outer);
    this.free = coefficients.inner;
    this.pools = pools;
    this.saturatedRatio = saturatedRatio;
  }

  /** Moves the film on by `dt` seconds; returns the part of that time in which the pane looks fogged. */
  advance({ air, ratio, radiation, radiant, room, stirred }: FrontSurroundings, dt: number): number {
    const inner = stirredCoefficient(this.free, stirred, this.length);
    this.temperature =
      (inner * air + radiation * radiant + this.outwards * room) / (inner + radiation + this.outwards);
    const { fogThreshold, dripLimit } = this.pools.limits;
    const rate =
      (inner / (AIR_HEAT_CAPACITY * LEWIS_FACTOR)) * (ratio - this.saturatedRatio(this.temperature));
    const before = this.film;
    const after = Math.max(0, before + rate * dt);
    this.film = Math.min(after, dripLimit);
    return partAbove(before, after, fogThreshold);
  }
}
