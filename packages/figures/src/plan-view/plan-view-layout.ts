import type { Size } from '../scene/scene.ts';
import type { ShapePlan } from './plan-view-options.ts';

/** Where the glass stands in a plan view: inner faces [px]; the front pane lies at the bottom. */
export interface PlanViewLayout {
  readonly pixelsPerMetre: number;
  readonly inside: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
}

/** As left and right in the section, so that both have one scale at the same width. */
const MARGIN = { left: 26, right: 10, top: 12, bottom: 26 } as const;

export function planViewLayout(plan: Pick<ShapePlan, 'box'>, size: Size): PlanViewLayout {
  const { length, width } = plan.box;
  const room = {
    width: Math.max(40, size.width - MARGIN.left - MARGIN.right),
    height: Math.max(40, size.height - MARGIN.top - MARGIN.bottom),
  };
  const pixelsPerMetre = Math.min(room.width / length, room.height / width);
  return {
    pixelsPerMetre,
    inside: {
      left: MARGIN.left,
      right: MARGIN.left + length * pixelsPerMetre,
      top: MARGIN.top,
      bottom: MARGIN.top + width * pixelsPerMetre,
    },
  };
}

/** The height at which a plan view fills a given width [px]. */
export function planViewHeight(plan: Pick<ShapePlan, 'box'>, width: number): number {
  const { length, width: depth } = plan.box;
  const room = Math.max(40, width - MARGIN.left - MARGIN.right);
  return Math.ceil((room / length) * depth + MARGIN.top + MARGIN.bottom);
}
