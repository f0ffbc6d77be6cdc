import type { TurningPoint } from '@shoreglass/engine';
import { needsKeeper } from './turning-words.ts';

/** How much more what needs the keeper weighs than news, such as first young [1]. */
const ALARM = 2;

/** The few turning points that matter most, what needs the keeper before news, in the order of their days. */
export function weightiest(points: readonly TurningPoint[], count: number): readonly TurningPoint[] {
  const weight = ({ kind, probability }: TurningPoint): number =>
    needsKeeper(kind) ? ALARM * probability : probability;
  const kept = new Set([...points].sort((a, b) => weight(b) - weight(a)).slice(0, count));
  return points.filter((point) => kept.has(point));
}
