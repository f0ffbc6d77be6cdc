import type { Corner, Plan, Zone } from '../plan/plan.ts';
import { centimetres, type GeometryProblem, TOLERANCE } from './geometry-problem.ts';
import { outlineArea } from './ground-surface.ts';
import { isWholeWidth, liesOnOthers, planZones, stretchesOwned } from './plan-zones.ts';
import { rowsOf } from './rows.ts';

const at = ({ x, y }: Pick<Corner, 'x' | 'y'>): string =>
  `${centimetres(x)} from the left, ${centimetres(y)} from the front`;

/** Twice the signed area of a triangle; its sign tells on which side of a-b the point c lies. */
const side = (a: Corner, b: Corner, c: Corner): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Where two edges cross inside both, or nothing. */
function crossingOf(a: Corner, b: Corner, c: Corner, d: Corner): Pick<Corner, 'x' | 'y'> | undefined {
  const [one, two, three, four] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (!(one * two < 0 && three * four < 0)) return undefined;
  const t = three / (three - four);
  return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
}

/** The first place where an outline crosses itself. */
function selfCrossing(outline: readonly Corner[]): Pick<Corner, 'x' | 'y'> | undefined {
  const n = outline.length;
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      const crossing = crossingOf(outline[i]!, outline[i + 1]!, outline[j]!, outline[(j + 1) % n]!);
      if (crossing) return crossing;
    }
  }
  return undefined;
}

function cornerProblems(
  zone: Zone,
  outline: readonly Corner[],
  { length, width }: Plan['box'],
): GeometryProblem[] {
  const place = `zones.${zone.id}.outline`;
  const broken = outline.findIndex(
    ({ x, y, ground }) => !(Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(ground)),
  );
  if (broken >= 0)
    return [
      {
        place,
        message: `corner ${broken + 1} of ${zone.name} has a place or height that is not a number`,
        mend: 'Fill it in.',
      },
    ];
  const outside = outline.findIndex(
    ({ x, y }) => x < -TOLERANCE || y < -TOLERANCE || x > length + TOLERANCE || y > width + TOLERANCE,
  );
  const found: GeometryProblem[] = [];
  if (outside >= 0)
    found.push({
      place: `${place}.${outside}`,
      message: `corner ${outside + 1} of ${zone.name} (${at(outline[outside]!)}) lies outside the glass, ${centimetres(length)} by ${centimetres(width)}`,
      mend: `Keep it between 0 and ${centimetres(length)} along the front, and 0 and ${centimetres(width)} from front to back.`,
    });
  const sunk = outline.findIndex(({ ground }) => ground < 0);
  if (sunk >= 0)
    found.push({
      place: `${place}.${sunk}`,
      message: `the ground at corner ${sunk + 1} of ${zone.name} lies below the base of the box`,
      mend: 'Raise it to 0 or more.',
    });
  return found;
}

/**
 * Returns what makes an outlined zone impossible to draw: too few corners, a corner outside the glass or below the base,
 * an outline that crosses itself or encloses nothing, a roof that is not above the ground.
 * @param zone with or without outline
 * @param box the glass
 * @source derived
 */
export function outlineProblems(zone: Zone, box: Plan['box']): GeometryProblem[] {
  const { outline, roof } = zone;
  const place = `zones.${zone.id}.outline`;
  const found: GeometryProblem[] = [];
  if (roof && !(roof.top > roof.bottom && roof.bottom >= Math.min(zone.groundStart, zone.groundEnd)))
    found.push({
      place: `zones.${zone.id}.roof`,
      message: `the roof of ${zone.name} goes from ${centimetres(roof.bottom)} to ${centimetres(roof.top)}, which is not a slab above its ground`,
      mend: 'Let its top lie above its underside, and its underside above the ground.',
    });
  if (!outline) return found;
  if (outline.length < 3)
    return [
      ...found,
      { place, message: `the outline of ${zone.name} has fewer than three corners`, mend: 'Add corners.' },
    ];
  const corners = cornerProblems(zone, outline, box);
  if (corners.length > 0) return [...found, ...corners];
  const crossing = selfCrossing(outline);
  if (crossing)
    found.push({
      place,
      message: `the outline of ${zone.name} crosses itself ${at(crossing)}`,
      mend: 'Put its corners in order, one after the other around the zone.',
    });
  else if (outlineArea(outline) < TOLERANCE * TOLERANCE)
    found.push({
      place,
      message: `the outline of ${zone.name} encloses no area`,
      mend: 'Move its corners apart.',
    });
  return found;
}

/** Overlaps and bare base smaller than this part of the base go unmentioned. */
const WORTH_A_WORD = 0.002;
const LINES = 48;

/**
 * Returns where zones drawn in plan lie over one another without being islands, streams, caves or walls or lying on one as
 * wide as the box, and how much of the base no zone covers: warnings, for the plan can be drawn all the same.
 * @param plan box and zones that can be drawn
 * @source derived
 */
export function coverageProblems({ box, zones }: Pick<Plan, 'box' | 'zones'>): GeometryProblem[] {
  const sorted = planZones({ box, zones });
  const over = new Map<string, { top: Zone; below: Zone; area: number }>();
  let bare = 0;
  for (const { y, depth } of rowsOf(sorted, box.width, LINES)) {
    for (const { from, to, owner } of stretchesOwned(sorted, box.length, y)) {
      if (!owner) bare += (to - from) * depth;
      else if (!liesOnOthers(owner.zone.kind))
        addOverlaps(sorted, owner.zone, { from, to, y, depth, width: box.width }, over);
    }
  }
  const base = box.length * box.width;
  const found: GeometryProblem[] = [...over.values()]
    .filter(({ area }) => area > WORTH_A_WORD * base)
    .map(({ top, below, area }) => ({
      severity: 'warning',
      place: `zones.${top.id}.outline`,
      message: `${top.name} lies over ${below.name} on ${Math.round(area * 1e4)} cm²; ${top.name} counts there`,
      mend: 'Move a corner so that they meet, or make the upper one an island, stream, cave or wall.',
    }));
  if (bare > WORTH_A_WORD * base)
    found.push({
      severity: 'warning',
      place: 'zones',
      message: `no zone covers ${Math.round(bare * 1e4)} cm² of the base; it counts as bare glass`,
      mend: 'Draw a zone there, or widen one.',
    });
  return found;
}

function addOverlaps(
  sorted: ReturnType<typeof planZones>,
  top: Zone,
  { from, to, y, depth, width }: { from: number; to: number; y: number; depth: number; width: number },
  over: Map<string, { top: Zone; below: Zone; area: number }>,
): void {
  for (const other of sorted) {
    if (other.zone === top || liesOnOthers(other.zone.kind)) continue;
    // What is as wide as the box is the base on which others are drawn.
    if (isWholeWidth(other.zone, width) && !isWholeWidth(top, width)) continue;
    for (const owned of stretchesOwned([other], to, y)) {
      const shared = Math.min(to, owned.to) - Math.max(from, owned.from);
      if (!owned.owner || shared <= 0) continue;
      const key = `${top.id} ${other.zone.id}`;
      const entry = over.get(key) ?? { top, below: other.zone, area: 0 };
      entry.area += shared * depth;
      over.set(key, entry);
    }
  }
}
