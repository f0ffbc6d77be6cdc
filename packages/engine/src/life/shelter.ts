import { VARIABLE_INDEX } from '../variables/variables.ts';
import type { Cover } from './surroundings.ts';

const { submergedPlants, litterCarbon, submergedArea, landLitterCarbon, moss, landPlants, landArea } =
  VARIABLE_INDEX;

/** Plants and leaves per surface at which half of the cover is there [mol C/m2]: some 60 g dry. @source assumed */
const HALF_COVER = 2;
/** Cover that crevices of stone, wood and gravel give where nothing grows. @source assumed */
const CREVICES = 0.25;

function coverOf(stock: number, area: number): number {
  if (!(area > 0)) return CREVICES;
  const density = stock / area;
  return CREVICES + ((1 - CREVICES) * density) / (density + HALF_COVER);
}

/**
 * Cover in the water and on land [0..1]: crevices, and plants and leaves with their density.
 * @source assumed: saturating with the stock of plants and leaves per surface
 */
export function setCover(values: Float64Array): Cover {
  const plants = values[moss]! + values[landPlants]!;
  return {
    inWater: coverOf(values[submergedPlants]! + values[litterCarbon]!, values[submergedArea]!),
    onLand: coverOf(values[landLitterCarbon]! + plants, values[landArea]!),
    besideLeaves: coverOf(plants, values[landArea]!),
  };
}

/**
 * Both sides of fallen leaves over their carbon [m2/mol]: 140 cm2 of leaf a gram, 48 % of it carbon.
 * @source memory: leaves of oak and beech 120 to 200 cm2/g; larch needles 117 (fellner-2016)
 */
const LEAF_SURFACE = 0.7;

/** Surface of the leaves that lie on land, both sides [m2], >= 0. @source derived: `LEAF_SURFACE` times their carbon */
export function leafSurface(values: Float64Array): number {
  return LEAF_SURFACE * Math.max(0, values[landLitterCarbon]!);
}
