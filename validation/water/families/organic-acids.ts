import { alkalinityOf, speciate } from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import { readWater } from '../read-water.ts';
import { alkalinityFigure, waterFigures } from '../water-figures.ts';

/** A water with organic acids or phosphate; carbonate alkalinity is what the organic anions leave of it. */
export const organicAcids: Calculation = (inputs) => {
  const water = readWater(inputs);
  const solved = speciate(water);
  return {
    ...waterFigures(water.composition, solved),
    carbonate_alkalinity: alkalinityFigure(alkalinityOf(water.composition) - solved.organicAnion),
  };
};
