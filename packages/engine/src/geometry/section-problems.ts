import type { Plan, Zone } from '../plan/plan.ts';
import { centimetres, type GeometryProblem, TOLERANCE } from './geometry-problem.ts';
import type { HardscapeBand } from './hardscape-bands.ts';
import { outlineProblems } from './outline-problems.ts';

/** Hardscape may take up at most this part of the open section at any height. */
const MOST_DISPLACED = 0.95;

function boxProblems({ box }: Pick<Plan, 'box'>): GeometryProblem[] {
  return (['length', 'width', 'height'] as const)
    .filter((side) => !(box[side] > 0 && Number.isFinite(box[side])))
    .map((side) => ({
      place: `box.${side}`,
      message: `the ${side} of the box must be more than 0`,
      mend: `Give the inner ${side} of the glass.`,
    }));
}

function zoneProblems(zone: Zone, box: Plan['box']): GeometryProblem[] {
  const { length } = box;
  const found: GeometryProblem[] = [];
  const place = `zones.${zone.id}`;
  const numbers = [zone.from, zone.to, zone.groundStart, zone.groundEnd];
  if (!numbers.every(Number.isFinite)) {
    return [
      { place, message: `${zone.name} has a length or height that is not a number`, mend: 'Fill it in.' },
    ];
  }
  if (!zone.outline && !(zone.to - zone.from > TOLERANCE)) {
    found.push({
      place: `${place}.to`,
      message: `${zone.name} ends at ${centimetres(zone.to)}, not beyond its start at ${centimetres(zone.from)}`,
      mend: `Move the end beyond ${centimetres(zone.from)}.`,
    });
  }
  if (!zone.outline && (zone.from < -TOLERANCE || zone.to > length + TOLERANCE)) {
    found.push({
      place: `${place}.${zone.from < -TOLERANCE ? 'from' : 'to'}`,
      message: `${zone.name} reaches outside the box (0 to ${centimetres(length)})`,
      mend: `Keep it between 0 and ${centimetres(length)}.`,
    });
  }
  if (!zone.outline && Math.min(zone.groundStart, zone.groundEnd) < 0) {
    found.push({
      place: `${place}.groundStart`,
      message: `the ground of ${zone.name} lies below the base of the box`,
      mend: 'Raise it to 0 or more.',
    });
  }
  for (const layer of zone.layers) {
    if (layer.thickness >= 0 && layer.porosity >= 0 && layer.porosity <= 1 && layer.filmSurface >= 0)
      continue;
    found.push({
      place: `${place}.layers`,
      message: `${layer.name} in ${zone.name} has a thickness or film surface below 0, or a porosity outside 0 to 1`,
      mend: 'Correct the layer.',
    });
  }
  return found;
}

function overlapProblems(zones: readonly Zone[]): GeometryProblem[] {
  const ordered = zones.filter(({ outline }) => !outline).sort((a, b) => a.from - b.from);
  return ordered.slice(1).flatMap((zone, i) => {
    const before = ordered[i] as Zone;
    if (zone.from >= before.to - TOLERANCE) return [];
    return [
      {
        place: `zones.${zone.id}.from`,
        message: `${zone.name} overlaps ${before.name} by ${centimetres(before.to - zone.from)}`,
        mend: `Let ${zone.name} start at ${centimetres(before.to)}.`,
      },
    ];
  });
}

/**
 * Returns what makes the section impossible to draw: sizes that are not positive, zones without length, outside the
 * box or overlapping, ground below the base, layers that cannot exist.
 * @source derived
 */
export function sectionProblems(plan: Pick<Plan, 'box' | 'zones'>): GeometryProblem[] {
  const box = boxProblems(plan);
  if (box.length > 0) return box;
  if (plan.zones.length === 0) {
    return [{ place: 'zones', message: 'the enclosure has no zone', mend: 'Add at least a pool.' }];
  }
  return [
    ...plan.zones.flatMap((zone) => [...zoneProblems(zone, plan.box), ...outlineProblems(zone, plan.box)]),
    ...overlapProblems(plan.zones),
  ];
}

/**
 * Returns the first piece of hardscape that lies loose and does not fit below the rim [m], or the largest of those
 * that together fill the open section at some height.
 * @source derived
 */
export function hardscapeProblems(bands: readonly HardscapeBand[], rim: number): GeometryProblem[] {
  const tooLarge = bands.find(({ isLoose, high }) => isLoose && high > rim + TOLERANCE);
  if (tooLarge) {
    return [
      {
        place: `hardscape.${tooLarge.piece}`,
        message: `the piece would reach ${centimetres(tooLarge.high)}, above the rim at ${centimetres(rim)}`,
        mend: 'Check its volume, or draw its course.',
      },
    ];
  }
  const edges = [...new Set(bands.flatMap(({ low, high }) => [low, high]))].sort((a, b) => a - b);
  for (const [i, from] of edges.entries()) {
    const to = edges[i + 1] ?? from;
    const here = bands.filter(({ low, high }) => low <= from && high >= to);
    const share = here.reduce((total, band) => total + band.share, 0);
    const [largest] = here.toSorted((a, b) => b.share - a.share);
    if (to > from && largest && share > MOST_DISPLACED) {
      return [
        {
          place: `hardscape.${largest.piece}`,
          message: `hardscape would fill the open water between ${centimetres(from)} and ${centimetres(to)}`,
          mend: 'Use fewer or smaller pieces, or lower the ground there.',
        },
      ];
    }
  }
  return [];
}
