import type { Box, Mesh } from '../plan/plan.ts';
import {
  meshLoss,
  screenedDischargeCoefficient,
  slotExchange,
  stackFlow,
  topOpeningExchange,
} from './openings.ts';

/** Sharp opening. @source ashrae-fundamentals-2017, chapter 16 (memory) */
const DISCHARGE = 0.6;
/** Holes finer than this resist more than the formula for coarse mesh says, by this factor [m; 1]. @source insect-screens-2016 */
const FINE_HOLE = 1e-3;
const FINE_FACTOR = 4.5;

/**
 * Returns the part of its free flow that passes an opening with mesh in it [0..1]; 1 without.
 * @param mesh open share and width of holes
 * @source idelchik (memory); insect-screens-2016 for fine screens
 */
export function passedByMesh(mesh: Mesh | undefined): number {
  if (!mesh) return 1;
  const loss = meshLoss(mesh.openShare) * (mesh.hole < FINE_HOLE ? FINE_FACTOR : 1);
  return screenedDischargeCoefficient(DISCHARGE, loss) / DISCHARGE;
}

/** Densities a unit apart about a mean of one: flows there, times the square root of (difference by mean), hold anywhere. */
const UNIT = { insideDensity: 0.5, outsideDensity: 1.5 } as const;
const drive = (inside: number, outside: number): number =>
  Math.sqrt(Math.abs(outside - inside) / (0.5 * (inside + outside)));

interface Path {
  /** Area times what mesh lets pass [m2]. */
  readonly area: number;
  /** Height of its middle [m], and its own height; 0 for the open top. */
  readonly at: number;
  readonly opening: number;
}

/** The ways air takes between box and room. */
export interface AirPaths {
  /** Sum of areas, less what meshes hold back [m2]. */
  readonly area: number;
  /** Buoyant exchange [m3/s] for the densities of the air inside and outside [kg/m3]. */
  exchange(insideDensity: number, outsideDensity: number): number;
}

/**
 * Returns the ways air takes through cover and vents. One opening exchanges both ways; openings at different heights are
 * flowed through, in below and out above while the box air is the lighter.
 * @param box cover and vents
 * @param coverArea of the open part of the cover [m2]
 * @source epstein-1988; brown-solvason-1962; ashrae-fundamentals-2017
 */
export function airPaths(box: Pick<Box, 'height' | 'coverMesh' | 'vents'>, coverArea: number): AirPaths {
  const passed = passedByMesh(box.coverMesh);
  const vents = (box.vents ?? []).map(
    ({ height, length, opening, mesh }): Path => ({
      area: length * opening * passedByMesh(mesh),
      at: height + opening / 2,
      opening,
    }),
  );
  const top = (inside: number, outside: number) => passed * topOpeningExchange(coverArea, inside, outside);
  const area = coverArea * passed + vents.reduce((sum, one) => sum + one.area, 0);
  if (vents.length === 0) return { area, exchange: top };
  const paths = coverArea > 0 ? [...vents, { area: coverArea * passed, at: box.height, opening: 0 }] : vents;
  const lowest = Math.min(...paths.map(({ at }) => at));
  const highest = Math.max(...paths.map(({ at }) => at));
  const middle = 0.5 * (lowest + highest);
  const groupOf = (isUpper: boolean) => paths.filter(({ at }) => at > middle === isUpper);
  const [lower, upper] = [groupOf(false), groupOf(true)];
  const sum = (group: readonly Path[]) => group.reduce((total, one) => total + one.area, 0);
  const centre = (group: readonly Path[]) =>
    group.reduce((total, one) => total + one.at * one.area, 0) / sum(group);
  const slots = vents.reduce((total, { area: free, opening }) => {
    return total + slotExchange({ area: free, ...UNIT }, opening, DISCHARGE);
  }, 0);
  const single = (inside: number, outside: number): number =>
    (coverArea > 0 ? top(inside, outside) : 0) + slots * drive(inside, outside);
  if (sum(lower) === 0 || sum(upper) === 0) return { area, exchange: single };
  const stack = stackFlow({
    lowerArea: sum(lower),
    upperArea: sum(upper),
    height: centre(upper) - centre(lower),
    dischargeCoefficient: DISCHARGE,
    ...UNIT,
  });
  return {
    area,
    exchange: (inside, outside) => Math.max(stack * drive(inside, outside), single(inside, outside)),
  };
}
