import type { Plan, Vent, Zone } from '../plan/plan.ts';
import { centimetres, type GeometryProblem, TOLERANCE } from './geometry-problem.ts';

type Box = Plan['box'];

function ventProblems(vent: Vent, index: number, box: Box): GeometryProblem[] {
  const place = `box.vents.${index}`;
  const top = vent.height + vent.opening;
  const pane = vent.pane === 'front' || vent.pane === 'back' ? box.length : box.width;
  const found: GeometryProblem[] = [];
  if (top > box.height + TOLERANCE)
    found.push({
      place: `${place}.height`,
      message: `${vent.name} reaches ${centimetres(top)}, above the glass at ${centimetres(box.height)}`,
      mend: `Put its lower edge at ${centimetres(Math.max(0, box.height - vent.opening))} or less, or make it lower.`,
    });
  if (vent.length > pane + TOLERANCE)
    found.push({
      place: `${place}.length`,
      message: `${vent.name} is ${centimetres(vent.length)} long in a pane of ${centimetres(pane)}`,
      mend: `Make it ${centimetres(pane)} long or less.`,
    });
  return found;
}

/**
 * Returns vents and an overflow that do not lie within their panes.
 * @param box the glass
 * @source derived
 */
export function openingProblems(box: Box): GeometryProblem[] {
  const found = (box.vents ?? []).flatMap((vent, index) => ventProblems(vent, index, box));
  if (box.overflow && box.overflow.height > box.height + TOLERANCE)
    found.push({
      place: 'box.overflow.height',
      message: `the overflow at ${centimetres(box.overflow.height)} lies above the glass at ${centimetres(box.height)}`,
      mend: `Set it to ${centimetres(box.height)} or less.`,
    });
  return found;
}

/**
 * Returns slabs over caves that reach above the glass.
 * @param zones of the plan
 * @param height of the glass [m]
 * @source derived
 */
export function roofProblems(zones: readonly Zone[], height: number): GeometryProblem[] {
  return zones.flatMap(({ id, name, roof }) =>
    roof && roof.top > height + TOLERANCE
      ? [
          {
            place: `zones.${id}.roof`,
            message: `the roof of ${name} reaches ${centimetres(roof.top)}, above the glass at ${centimetres(height)}`,
            mend: `Lower it to ${centimetres(height)} or less.`,
          },
        ]
      : [],
  );
}

/**
 * Returns pieces of which the middle line leaves the glass in plan: a warning, for a branch may lean out of an open top,
 * but through no pane.
 * @param plan box and hardscape
 * @source derived
 */
export function pieceProblems({ box, hardscape }: Pick<Plan, 'box' | 'hardscape'>): GeometryProblem[] {
  return hardscape.flatMap(({ id, name, course }): GeometryProblem[] => {
    const point = course.findIndex(
      ([x, , , y = box.width / 2]) =>
        x < -TOLERANCE || x > box.length + TOLERANCE || y < -TOLERANCE || y > box.width + TOLERANCE,
    );
    if (point < 0) return [];
    const [x, , , y = box.width / 2] = course[point]!;
    return [
      {
        place: `hardscape.${id}.course.${point}`,
        message: `point ${point + 1} of ${name} (${centimetres(x)} from the left, ${centimetres(y)} from the front) lies outside the glass, ${centimetres(box.length)} by ${centimetres(box.width)}`,
        mend: `Keep it between 0 and ${centimetres(box.length)} along the front, and 0 and ${centimetres(box.width)} from front to back.`,
        severity: 'warning',
      },
    ];
  });
}
