import type { HardscapePiece } from '../plan/plan.ts';
import type { BufferOffer } from './buffer-question.ts';

/**
 * The piece that a mass of an offer makes: volume and contents in proportion.
 * @param mass [kg], > 0
 * @param grain diameter [m], > 0
 * @source derived
 */
export function bufferPiece({ perKilogram }: BufferOffer, mass: number, grain: number): HardscapePiece {
  const contents = Object.entries(perKilogram.contents).map(([id, amount]) => [id, (amount ?? 0) * mass]);
  return {
    ...perKilogram,
    mass,
    volume: perKilogram.volume * mass,
    contents: Object.fromEntries(contents) as HardscapePiece['contents'],
    grain,
  };
}

/** Steps in which masses are weighed out, by the size of the mass [kg]. */
const STEPS = [
  { below: 0.02, step: 0.0005 },
  { below: 0.1, step: 0.001 },
  { below: 0.5, step: 0.005 },
  { below: Number.POSITIVE_INFINITY, step: 0.02 },
] as const;

/** The next mass up that can be weighed at home [kg]: half a gram, 1 g, 5 g or 20 g steps. @source assumed */
export function weighable(mass: number): number {
  const { step } = STEPS.find(({ below }) => mass < below)!;
  // A hair less, so that a mass that is a step already stays itself.
  return Math.ceil(mass / step - 1e-9) * step;
}
