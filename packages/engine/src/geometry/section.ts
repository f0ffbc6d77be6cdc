import type { Plan, Zone } from '../plan/plan.ts';
import { TOLERANCE } from './geometry-problem.ts';
import { sectionProblems } from './section-problems.ts';
import { type ZoneSection, zoneSection } from './zone-section.ts';

/** The enclosure cut along its length, zones from left to right without gaps. */
export interface Section {
  readonly width: number;
  readonly length: number;
  readonly height: number;
  readonly zones: readonly ZoneSection[];
  /** Ground heights at the two end panes, and pairs left and right of each boundary between zones [m]. */
  readonly ends: readonly [number, number];
  readonly steps: readonly (readonly [number, number])[];
}

/** The zones from left to right, stretches without one filled with bare base glass. */
function withBareBase(zones: readonly Zone[], length: number): Zone[] {
  const filled: Zone[] = [];
  let x = 0;
  const bareTo = (to: number): void => {
    if (to - x <= TOLERANCE) return;
    const place = { id: `bare-${filled.length}`, name: 'bare base', kind: 'pool', from: x, to } as const;
    filled.push({ ...place, groundStart: 0, groundEnd: 0, layers: [] });
  };
  for (const zone of [...zones].sort((a, b) => a.from - b.from)) {
    bareTo(zone.from);
    filled.push(zone);
    x = zone.to;
  }
  bareTo(length);
  return filled;
}

/**
 * Returns the section of a plan.
 * @throws RangeError when the box or a zone cannot be drawn.
 * @source derived
 */
export function sectionOf(plan: Pick<Plan, 'box' | 'zones'>): Section {
  const [first] = sectionProblems(plan);
  if (first) throw new RangeError(`${first.place}: ${first.message}`);
  const { box } = plan;
  const ordered = withBareBase(plan.zones, box.length);
  const leftmost = ordered[0] as Zone;
  const last = ordered.at(-1) as Zone;
  return {
    width: box.width,
    length: box.length,
    height: box.height,
    zones: ordered.map(zoneSection),
    ends: [leftmost.groundStart, last.groundEnd],
    steps: ordered.slice(1).map((zone, i) => [(ordered[i] as Zone).groundEnd, zone.groundStart]),
  };
}
