import { polyline } from '../scene/path.ts';
import type { Spot } from './clip.ts';
import type { SolidFrame } from './solid-frame.ts';

/** A closed outline in space as it is seen. */
export function pathOf({ projection }: SolidFrame, spots: readonly Spot[]): string {
  return polyline(
    spots.map(([x, y, z]) => projection.at(x, y, z)),
    true,
  );
}
