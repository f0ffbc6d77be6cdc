import { cbrt } from '../numerics/elementary.ts';
import { square } from '../numerics/small-powers.ts';
import type { HardscapePiece } from '../plan/plan.ts';
import type { Column } from './column.ts';

/** A range of heights in which a piece takes up an even share of the open section. */
export interface HardscapeBand {
  readonly piece: string;
  /** True when the piece lies loose, without a course of its own. */
  readonly isLoose: boolean;
  readonly low: number;
  readonly high: number;
  /** Part of the open section displaced in the band [0..1]. */
  readonly share: number;
  /** Surface of the piece per volume of it [m2/m3]; 0 for loose litter, whose leaves count as litter. */
  readonly surfacePerVolume: number;
}

/** A loose piece takes up at most this part of the open section over its height: assumed. */
const LARGEST_LOOSE_SHARE = 0.25;

interface Extent {
  readonly low: number;
  readonly high: number;
  readonly volume: number;
  readonly surfacePerVolume: number;
}

/** Parts between neighbouring points of the course, each with volume by length times thickness. */
function courseExtents(piece: HardscapePiece): Extent[] {
  const parts = piece.course.slice(1).map(([x, z, thickness], i) => {
    const [startX, startZ, startThickness] = piece.course[i] as readonly [number, number, number, number?];
    const mean = 0.5 * (startThickness + thickness);
    const run = Math.sqrt(square(x - startX) + square(z - startZ));
    return {
      low: Math.min(z, startZ) - mean / 2,
      high: Math.max(z, startZ) + mean / 2,
      mean,
      weight: run * mean,
    };
  });
  const total = parts.reduce((sum, part) => sum + part.weight, 0);
  return parts
    .filter((part) => part.weight > 0)
    .map(({ low, high, mean, weight }) => ({
      low: Math.max(0, low),
      high: Math.max(0, high),
      volume: (piece.volume * weight) / total,
      surfacePerVolume: piece.kind === 'litter' ? 0 : 4 / mean,
    }));
}

/** A loose piece rests on the lowest ground, as tall as a cube, or taller where the ground narrows like a wedge. */
function looseExtent(piece: HardscapePiece, open: Column, floor: number): Extent {
  const side = cbrt(piece.volume);
  const roomy = open.heightOf(open.integralTo(floor) + piece.volume / LARGEST_LOOSE_SHARE);
  return {
    low: floor,
    high: Math.max(floor + side, roomy),
    volume: piece.volume,
    surfacePerVolume: piece.kind === 'litter' ? 0 : 6 / side,
  };
}

/**
 * Returns the bands in which hardscape displaces water: each part's volume is spread over its heights in proportion
 * to the open section there, so that no height is ever overfilled by one piece alone. Parts wholly in the ground
 * displace nothing. Surface: a round branch 4/d, a cube 6/side.
 * @param open open section by height, without hardscape [m2]
 * @param floor height of the lowest ground [m]
 * @source derived; shapes assumed
 */
export function hardscapeBands(
  pieces: readonly HardscapePiece[],
  open: Column,
  floor: number,
): HardscapeBand[] {
  const bands: HardscapeBand[] = [];
  for (const piece of pieces) {
    if (!(piece.volume > 0)) continue;
    const course = courseExtents(piece);
    for (const { low, high, volume, surfacePerVolume } of course.length > 0
      ? course
      : [looseExtent(piece, open, floor)]) {
      const available = open.integralTo(high) - open.integralTo(low);
      if (available > 0)
        bands.push({
          piece: piece.id,
          isLoose: course.length === 0,
          low,
          high,
          share: volume / available,
          surfacePerVolume,
        });
    }
  }
  return bands;
}
