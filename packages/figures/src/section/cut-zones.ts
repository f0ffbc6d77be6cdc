import type { Zone } from '@shoreglass/engine';
import { remembered } from '../scene/remembered.ts';
import type { SectionPlan } from './section-plan.ts';

const cutOnce = remembered<SectionPlan, SectionPlan>();

/**
 * The plan with its zones as the cut along the middle of the width shows them: what is drawn in plan lies over the
 * strips and parts them, and what does not reach the middle is left out. A plan of strips alone is given back as it is.
 */
export function cutPlan(plan: SectionPlan): SectionPlan {
  if (plan.zones.every(({ outline }) => outline === undefined)) return plan;
  return cutOnce(plan, '', () => ({ ...plan, zones: cutZones(plan.zones, plan.box.width / 2) }));
}

/** Shorter stretches than this are not drawn [m]. */
const SHORTEST = 1e-4;

/** Stretches of zones from left to right, none over another; the topmost of those that meet at a place is kept. */
export function cutZones(zones: readonly Zone[], middle: number): Zone[] {
  const met = zones.filter((zone) => reaches(zone, middle));
  const layered = [...met.filter(({ outline }) => !outline), ...met.filter(({ outline }) => outline)];
  const edges = [...new Set(layered.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  return edges.flatMap((from, index): Zone[] => {
    const to = edges[index + 1];
    if (to === undefined || to - from < SHORTEST) return [];
    const top = layered.findLast((zone) => zone.from < from + SHORTEST && zone.to > to - SHORTEST);
    return top ? [stretchOf(top, from, to)] : [];
  });
}

function reaches({ outline }: Zone, middle: number): boolean {
  if (!outline) return true;
  const across = outline.map(({ y }) => y);
  return Math.min(...across) < middle && Math.max(...across) > middle;
}

function stretchOf(zone: Zone, from: number, to: number): Zone {
  const heightAt = (x: number) =>
    zone.to > zone.from
      ? zone.groundStart + ((zone.groundEnd - zone.groundStart) * (x - zone.from)) / (zone.to - zone.from)
      : zone.groundStart;
  return { ...zone, from, to, groundStart: heightAt(from), groundEnd: heightAt(to) };
}
