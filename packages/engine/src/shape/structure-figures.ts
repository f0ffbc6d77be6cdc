import { WATER_DENSITY } from '../climate/moisture-pools.ts';
import { zoneAt } from '../geometry/plan-zones.ts';
import type { PaneName, Plan } from '../plan/plan.ts';
import { FOAM_YIELD } from '../structure/expanding-foam.ts';
import { EDGE_STRENGTH, lastingStrength, SURFACE_STRENGTH } from '../structure/glass-strength.ts';
import {
  GLASS_MODULUS,
  leastThickness,
  type PaneUnderWater,
  paneDeflection,
  paneStress,
  type TopEdge,
} from '../structure/pane-under-water.ts';
import { curingTimeByDiffusion } from '../structure/sealant.ts';
import { layerVolumes, type ShapeGround } from './shape-ground.ts';
import type { PaneCase, PaneFigures, StructureFigures } from './shape-sheet.ts';
import { structureAdvice } from './structure-advice.ts';

/** Working stress of annealed glass under lasting water load [Pa]. @source assumed: from en-16612 and ncsea-glass; about 5 MPa is common practice in small boxes */
export const ALLOWED_STRESS: Readonly<Record<TopEdge, number>> = { free: 4e6, braced: 5e6 };
/** Time and share of breakages for which the strength is stated. @source assumed */
const TEN_YEARS = 10 * 365.25 * 86400;
const BREAKAGE = 0.001;
/** Thickness on sale and what the maker may leave off [m]. @source en-572-2 (memory) */
const STOCK = [0.004, 0.005, 0.006, 0.008, 0.01, 0.012, 0.015, 0.019, 0.025] as const;
const shortfall = (thickness: number): number =>
  thickness < 0.0075 ? 0.0002 : thickness < 0.0125 ? 0.0003 : thickness < 0.02 ? 0.0005 : 0.001;

/** Places along a pane at which the ground is looked at. */
const SAMPLES = 12;

const DAY = 86400;
/** Thickness of the bead between panes, and leg of the inner fillet [m]. @source sealant-sheets; fillet common practice */
const JOINT = 0.002;
const FILLET = 0.006;
const WASTE = 1.15;
const CARTRIDGE = 310e-6;
/** Silicone before filling, and foam before anything goes in [s]. @source common practice, no source: about a week, and 24 h */
const BEFORE_FILLING = 7 * DAY;
const FOAM_CURE = DAY;
const CAN = 750e-6;
/** Shaped by hand a can gives about half its yield. @source common practice, no source */
const HAND_SHAPED = 0.5;

const strengthOf = (edge: TopEdge): number =>
  lastingStrength(edge === 'free' ? EDGE_STRENGTH : SURFACE_STRENGTH, TEN_YEARS, BREAKAGE);

function caseOf(pane: PaneUnderWater, thickness: number): PaneCase {
  const stress = paneStress(pane, thickness);
  return {
    depth: pane.waterDepth,
    stress,
    deflection: paneDeflection(pane, thickness, GLASS_MODULUS),
    factor: strengthOf(pane.topEdge) / stress,
  };
}

/** Greatest depth at which a pane keeps to a stress: root by bisection, for stress rises with depth. */
function depthFor(pane: PaneUnderWater, thickness: number, stress: number): number {
  if (paneStress(pane, thickness) <= stress) return pane.height;
  let low = 0;
  let high = pane.height;
  for (let i = 0; i < 40; i++) {
    const waterDepth = 0.5 * (low + high);
    if (paneStress({ ...pane, waterDepth }, thickness) > stress) high = waterDepth;
    else low = waterDepth;
  }
  return low;
}

/** Highest ground against a pane [m], counted as if it were water. */
function groundAgainst(pane: PaneName, { plan, field }: ShapeGround): number {
  const { length, width } = plan.box;
  const near = (x: number, y: number): number => {
    const insideX = Math.min(length - 1e-6, Math.max(1e-6, x));
    const insideY = Math.min(width - 1e-6, Math.max(1e-6, y));
    const zone = zoneAt(field.zones, insideX, insideY);
    // Foam glued to the pane stands by itself.
    return !zone || zone.zone.layers.at(-1)?.kind === 'foam' ? 0 : zone.groundAt(insideX, insideY);
  };
  const along = pane === 'front' || pane === 'back';
  const edge = pane === 'front' || pane === 'left' ? 0 : along ? width : length;
  let highest = 0;
  for (let i = 0; i < SAMPLES; i++) {
    const s = ((i + 0.5) * (along ? length : width)) / SAMPLES;
    highest = Math.max(highest, along ? near(s, edge) : near(edge, s));
  }
  return highest;
}

function paneFigures(pane: PaneName, ground: ShapeGround): PaneFigures {
  const { box, water } = ground.plan;
  const length = pane === 'front' || pane === 'back' ? box.length : box.width;
  const { height, glassThickness: thickness, topEdge = 'free' } = box;
  const ratio = length / height;
  if (ratio < 0.5 || ratio > 4)
    return {
      pane,
      length,
      height,
      outside: `a pane ${ratio.toFixed(2)} times as long as high lies outside the table (0.5 to 4): ask a glazier or engineer`,
    };
  const under = (waterDepth: number, edge: TopEdge): PaneUnderWater => ({
    length,
    height,
    waterDepth,
    topEdge: edge,
    density: WATER_DENSITY,
  });
  const full = under(height, topEdge);
  const planned = Math.min(height, Math.max(water.level, groundAgainst(pane, ground)));
  const least = leastThickness(full, ALLOWED_STRESS[topEdge]);
  const stock = STOCK.find((one) => one - shortfall(one) >= least);
  return {
    pane,
    length,
    height,
    ...(planned > 0 ? { planned: caseOf(under(planned, topEdge), thickness) } : {}),
    full: caseOf(full, thickness),
    otherEdge: caseOf(under(height, topEdge === 'free' ? 'braced' : 'free'), thickness),
    fillTo: depthFor(full, thickness, ALLOWED_STRESS[topEdge]),
    least,
    ...(stock === undefined ? {} : { stock }),
  };
}

function siliconeFigures({
  length,
  width,
  height,
  glassThickness,
}: Plan['box']): StructureFigures['silicone'] {
  const jointLength = 4 * height + 2 * (length + width);
  const section = glassThickness * JOINT + (FILLET * FILLET) / 2;
  const volume = jointLength * section * WASTE;
  return {
    jointLength,
    area: jointLength * glassThickness,
    volume,
    cartridges: Math.ceil(volume / CARTRIDGE),
    // Moisture reaches the joint from outside and, through the fillet, from inside.
    throughCure: curingTimeByDiffusion(Math.max(FILLET, glassThickness) / 2, 0.003, DAY),
    beforeFilling: BEFORE_FILLING,
  };
}

function foamFigures({ plan, patches }: ShapeGround): StructureFigures['foam'] {
  let volume = 0;
  for (const [i, zone] of plan.zones.entries())
    for (const { layer, volume: own } of layerVolumes(zone, patches[i]!, plan.water.level))
      if (layer.kind === 'foam' && layer.porosity < 0.5) volume += own;
  if (volume === 0) return undefined;
  return { volume, cans: Math.ceil(volume / (CAN * FOAM_YIELD * HAND_SHAPED)), cure: FOAM_CURE };
}

const PANES: readonly PaneName[] = ['front', 'back', 'left', 'right'];

/**
 * Returns stress and deflection of the panes [Pa, m], thickness, silicone and foam, with what they assume. It gives
 * figures for an ideal pane and never a permission to build.
 * @param ground of a plan that can be drawn
 * @source derived; ncsea-glass for strength
 */
export function structureFigures(ground: ShapeGround): StructureFigures {
  const { plan } = ground;
  const topEdge = plan.box.topEdge ?? 'free';
  const panes = PANES.map((pane) => paneFigures(pane, ground));
  const foam = foamFigures(ground);
  return {
    topEdge,
    thickness: plan.box.glassThickness,
    allowedStress: ALLOWED_STRESS[topEdge],
    panes,
    advice: structureAdvice(panes, plan.box.glassThickness, topEdge),
    silicone: siliconeFigures(plan.box),
    ...(foam ? { foam } : {}),
  };
}
