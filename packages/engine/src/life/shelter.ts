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
  return {
    inWater: coverOf(values[submergedPlants]! + values[litterCarbon]!, values[submergedArea]!),
    onLand: coverOf(values[landLitterCarbon]! + values[moss]! + values[landPlants]!, values[landArea]!),
  };
}
