import { type Dimension, toPlanUnit } from '@shoreglass/engine';
import type { Quantity } from '@shoreglass/library';

/** A value of the library in the plan's unit. */
export function plain({ value, unit }: Quantity, dimension: Dimension): number {
  return toPlanUnit(value, unit, dimension);
}
