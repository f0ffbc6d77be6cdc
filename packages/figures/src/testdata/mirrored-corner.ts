import type { SectionPlan } from '../section/section-plan.ts';
import { ALDER_CORNER } from './alder-corner.ts';

/** The invented enclosure seen from behind: land on the left, water on the right, beside the labels. */
const { length } = ALDER_CORNER.box;

export const MIRRORED_CORNER: SectionPlan = {
  ...ALDER_CORNER,
  id: 'mirrored-corner',
  zones: [...ALDER_CORNER.zones].reverse().map((zone) => ({
    ...zone,
    from: length - zone.to,
    to: length - zone.from,
    groundStart: zone.groundEnd,
    groundEnd: zone.groundStart,
  })),
  hardscape: ALDER_CORNER.hardscape.map((piece) => ({
    ...piece,
    course: piece.course.map(([x, z, thickness]) => [length - x, z, thickness] as const),
  })),
};
