import type { Plan, Zone } from '../plan/plan.ts';
import { planZones, stretchesOwned } from './plan-zones.ts';
import { isStraightAcross } from './profile.ts';

/** Curved ground is cut into stretches no longer than this [m]. */
const STRETCH = 0.01;
/** How far inside its stretch the ground of an end is taken [m]. */
const INSIDE = 1e-7;

/**
 * Returns the zones as a line along the length meets them: straight stretches from left to right without outlines, for
 * drawing the section. A zone met more than once, or with curved ground, gives several stretches with its name.
 * @param plan box and zones that can be drawn
 * @param y of the line, from the front pane [m]; the middle of the width when left out
 * @source derived
 */
export function cutAt(plan: Pick<Plan, 'box' | 'zones'>, y = plan.box.width / 2): readonly Zone[] {
  if (isStraightAcross(plan)) return plan.zones;
  const inside = Math.min(plan.box.width - INSIDE, Math.max(INSIDE, y));
  return stretchesOwned(planZones(plan), plan.box.length, inside).flatMap(({ from, to, owner }): Zone[] => {
    if (!owner) return [];
    const { outline: _, ...zone } = owner.zone;
    const [slope] = owner.slopeAt(from + INSIDE, inside);
    const start = owner.groundAt(from + INSIDE, inside);
    const end = owner.groundAt(to - INSIDE, inside);
    const isStraight = Math.abs(start + slope * (to - from) - end) < 1e-4;
    const parts = isStraight ? 1 : Math.ceil((to - from) / STRETCH);
    const at = (share: number) => from + (to - from) * share;
    const heightAt = (x: number) => owner.groundAt(Math.min(to - INSIDE, Math.max(from + INSIDE, x)), inside);
    return Array.from({ length: parts }, (_, part) => ({
      ...zone,
      from: at(part / parts),
      to: at((part + 1) / parts),
      groundStart: heightAt(at(part / parts)),
      groundEnd: heightAt(at((part + 1) / parts)),
    }));
  });
}
