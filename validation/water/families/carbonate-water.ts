import { speciate } from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import { readWater } from '../read-water.ts';
import { waterFigures } from '../water-figures.ts';

/** A water solved as it is given: open, closed, or with its pH. */
export const carbonateWater: Calculation = (inputs) => {
  const water = readWater(inputs);
  return waterFigures(water.composition, speciate(water));
};
