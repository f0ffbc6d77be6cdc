import { noiseFrom } from '../../noise/noise.ts';
import { polyline } from '../../scene/path.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { inkStroke, washOf } from '../shapes.ts';
import { type WaterBody, waterBodies } from '../water-body.ts';

/** The open water: a wash that deepens downwards, a few blooms in it, and pigment gathered along its edge. */
export function openWater(frame: SectionFrame): SceneNode | undefined {
  const bodies = waterBodies(frame);
  if (bodies.length === 0) return undefined;
  return group(
    { 'data-part': 'water', 'clip-path': frame.url('glass') },
    bodies.map((body, index) => waterNode(frame, body, index)),
  );
}

/** Definitions the water needs: its gradient, and its outline to clip what stands in it. */
export function waterDefinitions(frame: SectionFrame): SceneNode[] {
  const { palette } = frame;
  const stop = (offset: number, color: string, opacity: number) =>
    element('stop', { offset, 'stop-color': color, 'stop-opacity': opacity });
  const outlines = waterBodies(frame).map((body) => element('path', { d: polyline(body.outline, true) }));
  return [
    element(
      'linearGradient',
      { id: frame.id('depth'), x1: 0, y1: 0, x2: 0, y2: 1 },
      stop(0, palette.water, 0.75),
      stop(0.18, palette.water, 0.95),
      stop(1, palette.waterDeep, 0.95),
    ),
    element('clipPath', { id: frame.id('under-water') }, ...outlines),
  ];
}

function waterNode(frame: SectionFrame, body: WaterBody, index: number): SceneNode {
  const { palette } = frame;
  const seed = frame.seed(`water/${index}`);
  return group({}, [
    element('path', { d: polyline(body.outline, true), fill: frame.url('depth') }),
    washOf({ points: body.outline, fill: palette.water, opacity: 0.34, seed, bleed: 2.4 }),
    group({ 'clip-path': frame.url('under-water') }, [
      ...blooms(frame, body, seed),
      pigmentEdge(frame, body, seed),
    ]),
  ]);
}

function blooms(frame: SectionFrame, body: WaterBody, seed: string): SceneNode[] {
  const noise = noiseFrom(`${seed}/bloom`);
  const [left, right] = [frame.x(body.from), frame.x(body.to)];
  const depth = frame.level * frame.pixelsPerMetre;
  return Array.from({ length: 5 }, () => {
    const radius = depth * (0.25 + 0.45 * noise());
    return element('ellipse', {
      cx: left + (right - left) * noise(),
      cy: frame.y(frame.level * (0.1 + 0.8 * noise())),
      rx: radius * (1.3 + noise()),
      ry: radius * 0.7,
      fill: noise() > 0.45 ? frame.palette.paper : frame.palette.waterDeep,
      'fill-opacity': 0.07,
    });
  });
}

/** Water-colour dries darker along its border. */
function pigmentEdge(frame: SectionFrame, body: WaterBody, seed: string): SceneNode {
  return inkStroke(body.outline.slice(1), `${seed}/edge`, {
    stroke: frame.palette.waterDeep,
    'stroke-width': 4,
    'stroke-opacity': 0.35,
  });
}

/** The surface as an ink line, with a second, broken one beneath it as a ripple. */
export function levelLine(frame: SectionFrame): SceneNode | undefined {
  const bodies = waterBodies(frame);
  if (bodies.length === 0) return undefined;
  const y = frame.y(frame.level);
  return group(
    { 'data-part': 'level', stroke: frame.palette.ink, fill: 'none', 'stroke-linecap': 'round' },
    bodies.flatMap(({ from, to }) => {
      const [left, right] = [frame.x(from), frame.x(to)];
      return [
        element('path', {
          d: `M${left} ${y - 2}Q${left + 2} ${y} ${left + 6} ${y}L${right} ${y}`,
          'stroke-width': 1.1,
        }),
        element('path', {
          d: polyline([
            [left + (right - left) * 0.12, y + 3.4],
            [right - (right - left) * 0.2, y + 3.4],
          ]),
          'stroke-width': 0.6,
          'stroke-opacity': 0.5,
          'stroke-dasharray': '14 7 5 11',
        }),
      ];
    }),
  );
}
