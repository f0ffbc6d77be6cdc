import { noiseFrom } from '../../noise/noise.ts';
import { polyline } from '../../scene/path.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { inkStroke } from '../shapes.ts';
import { type WaterBody, waterBodies } from '../water-body.ts';
import { leafPath } from './sprigs.ts';

/** Leaves one gram of dry litter stands for in the drawing, and the most it shows. */
const LEAVES_PER_GRAM = 1.6;
const MOST_LEAVES = 44;
const FLECKS_PER_GRAM = 16;
const MOST_FLECKS = 140;

/** Leaf litter and detritus on the floor of the water, as much as the day has. */
export function litterOnFloor(frame: SectionFrame): SceneNode | undefined {
  const body = widest(waterBodies(frame));
  if (!body) return undefined;
  const { day, palette } = frame;
  const shrink = Math.min(1, frame.pixelsPerMetre / 600);
  const leaves = Math.min(
    MOST_LEAVES,
    Math.round((day.litter?.median ?? 0) * LEAVES_PER_GRAM * (0.5 + 0.5 * shrink)),
  );
  const flecks = Math.min(MOST_FLECKS, Math.round((day.detritus?.median ?? 0) * FLECKS_PER_GRAM));
  return group({ 'data-part': 'litter', 'stroke-linecap': 'round' }, [
    element('path', {
      d: scatter(frame, body, { count: flecks, name: 'detritus' })
        .map(([x, y]) => `M${x.toFixed(1)} ${(y - 1.2).toFixed(1)}h.1`)
        .join(''),
      stroke: palette.soilDeep,
      'stroke-width': 1.3,
      fill: 'none',
    }),
    element('path', {
      d: scatter(frame, body, { count: leaves, name: 'leaves' })
        .map(([x, y, turn, lift]) =>
          leafPath([x, y - 1.5 - 6 * lift * shrink], (11 + 5 * turn) * shrink, (turn - 0.5) * 1.3),
        )
        .join(''),
      fill: palette.litter,
      'fill-opacity': 0.75,
      stroke: palette.soilDeep,
      'stroke-width': 0.6,
    }),
  ]);
}

/** Attached algae: a film on everything under water, thicker and with longer filaments the more there is. */
export function attachedAlgae(frame: SectionFrame): SceneNode | undefined {
  const amount = Math.max(0, frame.day.attachedAlgae?.median ?? 0);
  if (amount < 0.02) return undefined;
  const thickness = Math.min(7, 1.2 + 1.5 * Math.sqrt(amount) * (frame.pixelsPerMetre / 700));
  const bodies = waterBodies(frame);
  const stroke = { stroke: frame.palette.algae, fill: 'none' };
  return group({ 'data-part': 'algae', 'clip-path': frame.url('under-water') }, [
    ...bodies.map((body, index) =>
      inkStroke(body.outline.slice(1), frame.seed(`algae/${index}`), {
        ...stroke,
        'stroke-width': thickness,
        'stroke-opacity': 0.42,
      }),
    ),
    ...bodies.map((body) =>
      element('path', { ...stroke, d: filaments(frame, body, thickness), 'stroke-width': 0.8 }),
    ),
  ]);
}

function filaments(frame: SectionFrame, body: WaterBody, thickness: number): string {
  const count = Math.round(((body.to - body.from) * frame.pixelsPerMetre) / 6);
  return scatter(frame, body, { count, name: 'filaments' })
    .map(([x, y, turn, lift]) =>
      polyline([
        [x, y],
        [x + (turn - 0.5) * 4, y - thickness * (0.9 + 0.9 * lift)],
      ]),
    )
    .join('');
}

/** Repeatable spots on the floor: pixel x and y, and two free numbers; a smaller count keeps the first spots. */
function scatter(
  frame: SectionFrame,
  body: WaterBody,
  { count, name }: { count: number; name: string },
): [x: number, y: number, turn: number, lift: number][] {
  const noise = noiseFrom(frame.seed(name));
  return Array.from({ length: count }, () => {
    const x = body.from + (body.to - body.from) * (0.02 + 0.9 * noise());
    const [left, floor] = frame.at(x, frame.ground.heightAt(x));
    return [left, floor, noise(), noise()] as [number, number, number, number];
  });
}

function widest(bodies: readonly WaterBody[]): WaterBody | undefined {
  return [...bodies].sort((a, b) => b.to - b.from - (a.to - a.from))[0];
}
