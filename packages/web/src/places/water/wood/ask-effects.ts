import { type Inquiry, type PieceEffect, type Plan, withAndWithout } from '@shoreglass/engine';

/** Asks what each piece does to the water; loaded only when the question is asked. */
export function askEffects(plan: Plan, days: number, seed: number): Inquiry<PieceEffect[]> {
  return withAndWithout(plan, { days, seed });
}
