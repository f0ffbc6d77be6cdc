import { noiseFrom } from '../../noise/noise.ts';
import { type Point, polyline, smoothLine } from '../../scene/path.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { waterBodies } from '../water-body.ts';

/** Pump, its tube to the return, the water that runs back, and bags of carbonate. */
export function equipment(frame: SectionFrame): SceneNode | undefined {
  const seat = pumpSeat(frame);
  return group({ 'data-part': 'equipment', 'stroke-linecap': 'round' }, [
    frame.plan.devices.pump ? pump(frame, seat) : undefined,
    ...frame.plan.hardscape
      .filter((piece) => piece.kind === 'carbonate' && piece.course.length === 0)
      .map((piece, index) => carbonateBag(frame, piece.id, bagSpot(frame, seat, index))),
  ]);
}

interface Seat {
  /** [m] */
  readonly x: number;
  readonly floor: number;
  /** Room above the floor it stands on [m]. */
  readonly room: number;
}

/** Pixels at which the pump and its tube stand upright in the drawing; text keeps clear of them. */
export function pumpLines(frame: SectionFrame): number[] {
  if (!frame.plan.devices.pump) return [];
  const { x } = pumpSeat(frame);
  return [-1, 0, 1].map((side) => frame.x(x + side * 0.024));
}

/** The pump stands in the false bottom at the far end from the water; without one, in the deepest corner. */
function pumpSeat(frame: SectionFrame): Seat {
  const hidden = frame.plan.zones.find((zone) => zone.layers.some((layer) => layer.kind === 'false bottom'));
  const water = waterBodies(frame)[0];
  if (!hidden) {
    const x = water ? water.from + (water.to - water.from) * 0.1 : frame.plan.box.length * 0.06;
    return { x, floor: frame.ground.heightAt(x), room: 0.05 };
  }
  const far = (hidden.from + hidden.to) / 2 > (water ? (water.from + water.to) / 2 : 0);
  const inset = Math.min(0.06, (hidden.to - hidden.from) * 0.3);
  const layer = hidden.layers.find((candidate) => candidate.kind === 'false bottom');
  return { x: far ? hidden.to - inset : hidden.from + inset, floor: 0, room: layer?.thickness ?? 0.05 };
}

function pump(frame: SectionFrame, seat: Seat): SceneNode {
  const { palette } = frame;
  const width = 0.042 * frame.pixelsPerMetre;
  const height = Math.min(0.042, seat.room * 0.74) * frame.pixelsPerMetre;
  const [x, floor] = frame.at(seat.x, seat.floor);
  const body = { x: x - width / 2, y: floor - height - 1, width, height };
  const slits = [0.3, 0.5, 0.7]
    .map((share) => `M${body.x + 4} ${body.y + height * share}h${width * 0.45}`)
    .join('');
  const outlet = returnPoint(frame, seat);
  const tube = polyline([
    [x, body.y],
    [x, frame.y(outlet.height)],
  ]);
  const line = { d: tube, fill: 'none' };
  return group({ 'data-part': 'pump' }, [
    element('path', { ...line, stroke: palette.ink, 'stroke-width': 4 }),
    element('path', { ...line, stroke: palette.paper, 'stroke-width': 2.4 }),
    element('path', { ...line, stroke: palette.waterDeep, 'stroke-width': 1.6, 'stroke-dasharray': '5 4' }),
    spout(frame, x, outlet.height),
    element('rect', { ...body, rx: 2.5, fill: palette.raised, stroke: palette.ink, 'stroke-width': 1.2 }),
    element('path', { d: slits, stroke: palette.ink, 'stroke-width': 0.8, fill: 'none' }),
  ]);
}

/** The tube ends just above the ground where it comes out. */
function returnPoint(frame: SectionFrame, seat: Seat): { height: number } {
  const surface = Math.max(frame.ground.heightAt(seat.x), frame.level);
  return { height: Math.min(frame.plan.box.height * 0.95, surface + 0.022) };
}

function towardsWater(frame: SectionFrame, x: number): 1 | -1 {
  const body = waterBodies(frame)[0];
  return body && (body.from + body.to) / 2 > x ? 1 : -1;
}

function spout(frame: SectionFrame, x: number, height: number): SceneNode {
  const y = frame.y(height);
  const way = towardsWater(frame, (x - frame.layout.inside.left) / frame.pixelsPerMetre);
  const d = `M${x} ${y + 1}Q${x} ${y - 5} ${x + way * 6} ${y - 5}L${x + way * 10} ${y - 3}`;
  return group({ fill: 'none' }, [
    element('path', { d, stroke: frame.palette.ink, 'stroke-width': 4 }),
    element('path', { d, stroke: frame.palette.paper, 'stroke-width': 2.4 }),
  ]);
}

/** Water that runs over the ground from the return of the pump to the open water. */
export function trickle(frame: SectionFrame): SceneNode | undefined {
  if (!frame.plan.devices.pump) return undefined;
  const start = pumpSeat(frame).x;
  const way = towardsWater(frame, start);
  const course: Point[] = [];
  const samples = way > 0 ? frame.ground.samples : [...frame.ground.samples].reverse();
  for (const x of samples) {
    if ((x - start) * way < 0.012) continue;
    const height = frame.ground.heightAt(x);
    const [px, py] = frame.at(x, height);
    course.push([px, py - 2]);
    if (height < frame.level) break;
  }
  if (course.length < 3) return undefined;
  return group({ fill: 'none', 'data-part': 'trickle' }, [
    element('path', {
      d: smoothLine(course),
      stroke: frame.palette.waterDeep,
      'stroke-width': 3.4,
      'stroke-opacity': 0.6,
    }),
    element('path', {
      d: smoothLine(course),
      stroke: frame.palette.paper,
      'stroke-width': 0.8,
      'stroke-dasharray': '7 9',
    }),
  ]);
}

/** Beside the pump where water passes, further bags further along. */
function bagSpot(frame: SectionFrame, seat: Seat, index: number): Point {
  const way = towardsWater(frame, seat.x);
  const x = Math.min(frame.plan.box.length - 0.02, Math.max(0.02, seat.x + way * (0.052 + 0.04 * index)));
  return frame.at(x, seat.floor);
}

function carbonateBag(frame: SectionFrame, id: string, [x, floor]: Point): SceneNode {
  const { palette } = frame;
  const size = Math.max(9, 0.03 * frame.pixelsPerMetre);
  const noise = noiseFrom(frame.seed(id));
  const grains = Array.from({ length: 14 }, () => {
    const [across, up] = [noise() - 0.5, noise()];
    const reach = 0.72 * (1 - 0.35 * up);
    return `M${(x + across * size * reach).toFixed(1)} ${(floor - 2 - up * size * 0.62).toFixed(1)}h.1`;
  }).join('');
  const sack = smoothLine(
    [
      [x - size * 0.5, floor - 1],
      [x - size * 0.42, floor - size * 0.5],
      [x - size * 0.1, floor - size * 0.86],
      [x + size * 0.1, floor - size * 0.86],
      [x + size * 0.42, floor - size * 0.5],
      [x + size * 0.5, floor - 1],
    ],
    true,
  );
  return group({ 'data-piece': id }, [
    element('path', { d: sack, fill: palette.raised, stroke: palette.ink, 'stroke-width': 1 }),
    element('path', {
      d: `M${x - 2} ${floor - size * 0.86}l-3 -4M${x + 2} ${floor - size * 0.86}l3 -4M${x - 3} ${floor - size * 0.86}h6`,
      stroke: palette.ink,
      'stroke-width': 0.9,
      fill: 'none',
    }),
    element('path', { d: grains, stroke: palette.ink, 'stroke-width': 1.7, fill: 'none' }),
  ]);
}
