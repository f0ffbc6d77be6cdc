import type { Plan } from '../plan/plan.ts';
import type { GapFigure } from './shape-sheet.ts';

/**
 * Returns the openings through which animals may leave, widest first [m]: the width is that of the largest body that
 * passes, of a mesh its holes, of a bare slot its opening, of a bare part of the cover its shorter side were it a strip
 * along the length.
 * @param plan the glass and its cover
 * @source derived
 */
export function gapFigures({ box }: Pick<Plan, 'box'>): GapFigure[] {
  const gaps: GapFigure[] = (box.vents ?? []).map(({ name, mesh, length, opening }) => ({
    place: 'box.vents',
    name,
    width: Math.min(length, opening, mesh?.hole ?? Number.POSITIVE_INFINITY),
  }));
  if (box.coverOpenFraction > 0)
    gaps.push({
      place: 'box.coverOpenFraction',
      name: box.coverMesh ? 'the mesh of the cover' : 'the open part of the cover',
      width: box.coverMesh?.hole ?? box.coverOpenFraction * Math.min(box.length, box.width),
    });
  if (box.coverGap !== undefined && box.coverGap > 0)
    gaps.push({ place: 'box.coverGap', name: 'the slit between cover and glass', width: box.coverGap });
  if (box.overflow) gaps.push({ place: 'box.overflow', name: 'the overflow', width: box.overflow.bore });
  return gaps.sort((a, b) => b.width - a.width);
}
