import { roundStep } from '../scale/ticks.ts';
import type { Size } from '../scene/scene.ts';
import { textWidth } from '../type/text-width.ts';
import type { SectionPlan } from './section-plan.ts';

export interface SectionLayout {
  readonly size: Size;
  readonly pixelsPerMetre: number;
  /** Inner faces of the glass [px]. */
  readonly inside: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  /** Where the labels stand: x of their text and the width they may take; width 0 without labels. */
  readonly labelColumn: {
    readonly left: number;
    readonly width: number;
    readonly top: number;
    readonly bottom: number;
  };
  /** Height of the lane nearest the ruler along which leaders of the water run to the right [px]. */
  readonly laneTop: number;
  /** Distance between figures of the rulers [cm]. */
  readonly rulerStep: number;
}

export const LANE_SPACING = 5;
const GUTTER = 34;

interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function sectionLayout(plan: SectionPlan, size: Size, labels: boolean): SectionLayout {
  const margins = marginsFor(plan, size.width, labels);
  const { length, height } = plan.box;
  const room = {
    width: Math.max(40, size.width - margins.left - margins.right),
    height: Math.max(40, size.height - margins.top - margins.bottom),
  };
  const pixelsPerMetre = Math.min(room.width / length, room.height / height);
  const inside = {
    left: margins.left,
    right: margins.left + length * pixelsPerMetre,
    top: margins.top,
    bottom: margins.top + height * pixelsPerMetre,
  };
  return {
    size,
    pixelsPerMetre,
    inside,
    labelColumn: {
      left: inside.right + GUTTER,
      width: labels ? Math.max(60, size.width - inside.right - GUTTER - 4) : 0,
      top: 8,
      bottom: inside.bottom + margins.bottom - 4,
    },
    laneTop: inside.bottom + 30,
    rulerStep: roundStep((labels ? 46 : 30) / (pixelsPerMetre / 100)),
  };
}

/** The height at which the section fills a given width. */
export function sectionHeight({
  plan,
  width,
  labels,
}: {
  plan: SectionPlan;
  width: number;
  labels: boolean;
}): number {
  const margins = marginsFor(plan, width, labels);
  const { length, height } = plan.box;
  const room = Math.max(40, width - margins.left - margins.right);
  return Math.ceil((room / length) * height + margins.top + margins.bottom);
}

function marginsFor(plan: SectionPlan, width: number, labels: boolean): Margins {
  const lamp = plan.devices.lamps.length > 0;
  if (!labels) return { left: 26, right: 10, top: lamp ? 38 : 22, bottom: 24 };
  const column = labelColumnWidth(plan, width);
  const lanes = plan.populations.length + 3;
  return { left: 36, right: column + GUTTER, top: lamp ? 54 : 30, bottom: 40 + lanes * LANE_SPACING };
}

/** Room for the longest name with a number before it, within reason; fixed by the plan, so that days do not move it. */
function labelColumnWidth(plan: SectionPlan, width: number): number {
  const names = [...plan.populations, ...plan.plants].map(({ name }) => name);
  const widest = [...names, 'attached algae'].reduce((most, name) => Math.max(most, textWidth(name, 15)), 0);
  return Math.min(width * 0.29, Math.max(150, widest + textWidth('~8800 g/m²', 15, 'strong')));
}
