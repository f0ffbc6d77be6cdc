import { roundStep } from './ticks.ts';

/** The unit in which lengths are drawn and written. */
export type LengthUnit = 'cm' | 'in';

/** [m] */
const METRES: Readonly<Record<LengthUnit, number>> = { cm: 0.01, in: 0.0254 };

/** Length of one unit [m]. */
export function metresOf(unit: LengthUnit): number {
  return METRES[unit];
}

/** Marks of a ruler: their distance and places [m], and what stands beside each. */
export interface RulerMarks {
  readonly step: number;
  readonly marks: readonly { readonly at: number; readonly text: string }[];
}

/** Marks at round figures of the unit, at least `least` apart [m], from 0 to the length [m]. */
export function rulerMarks(length: number, least: number, unit: LengthUnit): RulerMarks {
  const metres = METRES[unit];
  const step = Math.max(1, roundStep(least / metres));
  const count = Math.floor(length / (step * metres) + 1e-6);
  const marks = Array.from({ length: count + 1 }, (_, index) => ({
    at: index * step * metres,
    text: String(index * step),
  }));
  return { step: step * metres, marks };
}
