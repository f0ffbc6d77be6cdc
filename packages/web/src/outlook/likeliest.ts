import type { TurningPoint } from '@shoreglass/engine';

/** The few turning points with the highest probability, in the order of their days. */
export function likeliest(points: readonly TurningPoint[], count: number): readonly TurningPoint[] {
  const kept = new Set([...points].sort((a, b) => b.probability - a.probability).slice(0, count));
  return points.filter((point) => kept.has(point));
}
