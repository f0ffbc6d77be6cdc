import type { Plan, Zone } from '../plan/plan.ts';
import { bandsIn, geometryOf } from './geometry.ts';
import { centimetres, type GeometryProblem, TOLERANCE } from './geometry-problem.ts';
import { lowestOpening } from './lowest-opening.ts';
import { openingProblems, pieceProblems, roofProblems } from './opening-problems.ts';
import { coverageProblems } from './outline-problems.ts';
import { highestGround, lowestGround } from './plan-zones.ts';
import { isStraightAcross, profileOf } from './profile.ts';
import { hardscapeProblems, sectionProblems } from './section-problems.ts';

type GeometryPlan = Pick<Plan, 'box' | 'zones' | 'hardscape' | 'water'>;

function gapProblems({ box, zones }: GeometryPlan): GeometryProblem[] {
  const found: GeometryProblem[] = [];
  let x = 0;
  for (const zone of [...zones].sort((a, b) => a.from - b.from)) {
    if (zone.from > x + TOLERANCE) {
      found.push({
        place: `zones.${zone.id}.from`,
        message: `no zone covers ${centimetres(x)} to ${centimetres(zone.from)}; it counts as bare base glass`,
        mend: `Let ${zone.name} start at ${centimetres(x)}.`,
      });
    }
    x = Math.max(x, zone.to);
  }
  const last = zones.find((zone) => zone.to === x);
  if (last && x < box.length - TOLERANCE) {
    found.push({
      place: `zones.${last.id}.to`,
      message: `no zone covers ${centimetres(x)} to ${centimetres(box.length)}; it counts as bare base glass`,
      mend: `Let ${last.name} end at ${centimetres(box.length)}.`,
    });
  }
  return found;
}

function groundProblems(zone: Zone, height: number): GeometryProblem[] {
  const found: GeometryProblem[] = [];
  const highest = highestGround(zone);
  const ends = zone.groundStart >= zone.groundEnd ? 'groundStart' : 'groundEnd';
  const side = zone.outline ? 'outline' : ends;
  if (highest > height + TOLERANCE) {
    found.push({
      place: `zones.${zone.id}.${side}`,
      message: `the ground of ${zone.name} reaches ${centimetres(highest)}, above the glass at ${centimetres(height)}`,
      mend: `Lower it to ${centimetres(height)} or less.`,
    });
  }
  const lowerLayers = zone.layers.slice(0, -1).reduce((total, layer) => total + layer.thickness, 0);
  if (lowerLayers > highest + TOLERANCE) {
    found.push({
      place: `zones.${zone.id}.layers`,
      message: `the layers below the topmost of ${zone.name} add up to ${centimetres(lowerLayers)}, more than its ground of ${centimetres(highest)}`,
      mend: 'Make layers thinner or raise the ground.',
    });
  }
  return found;
}

/** The level against the lowest opening, the lowest height that holds water, and the pool floor. */
function levelProblems(plan: GeometryPlan): GeometryProblem[] {
  const { level } = plan.water;
  const { floor } = geometryOf(plan);
  const place = 'water.level';
  const opening = lowestOpening(plan.box);
  if (!(level <= opening.height)) {
    return [
      {
        place,
        message: `the water at ${centimetres(level)} would run over ${opening.name} at ${centimetres(opening.height)}`,
        mend: `Set the level below ${centimetres(opening.height)}.`,
      },
    ];
  }
  if (level <= floor + TOLERANCE) {
    return [
      {
        place,
        message: `the water at ${centimetres(level)} does not rise above the lowest place that holds water, ${centimetres(floor)}`,
        mend: `Set the level above ${centimetres(floor)}.`,
      },
    ];
  }
  return plan.zones
    .filter((zone) => zone.kind === 'pool' && level <= lowestGround(zone))
    .map((zone) => ({
      place,
      message: `the water at ${centimetres(level)} lies below the floor of ${zone.name} at ${centimetres(lowestGround(zone))}`,
      mend: 'Raise the level or lower the ground of the pool.',
    }));
}

/**
 * Returns everything about box, zones, hardscape and water level that cannot stand as drawn, in the order a keeper
 * would mend it; empty when it is sound.
 * @source derived
 */
export function checkGeometry(plan: GeometryPlan): GeometryProblem[] {
  const undrawable = sectionProblems(plan);
  if (undrawable.length > 0) return undrawable;
  const overfull = hardscapeProblems(bandsIn(profileOf(plan), plan.hardscape), plan.box.height);
  const gaps = isStraightAcross(plan) ? gapProblems(plan) : coverageProblems(plan);
  const ground = plan.zones.flatMap((zone) => groundProblems(zone, plan.box.height));
  return [
    ...gaps,
    ...ground,
    ...openingProblems(plan.box),
    ...roofProblems(plan.zones, plan.box.height),
    ...pieceProblems(plan),
    ...overfull,
    ...(overfull.length === 0 ? levelProblems(plan) : []),
  ];
}
