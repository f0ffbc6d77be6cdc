import { areaBetween, type Point } from '../../scene/path.ts';
import { remembered } from '../../scene/remembered.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { below, type LayerBody, type LayerColumn, layerBodies } from '../layer-bodies.ts';
import { materialLook, patternId } from '../materials.ts';
import { inkStroke, washOf } from '../shapes.ts';

/** Ground by layer: wash, pattern, pore water up to the level, and the boundary above each layer. */
export function groundLayers(frame: SectionFrame): SceneNode {
  const layers = layersOnce(frame.plan, frame.key, () =>
    layerBodies(frame)
      .filter((body) => body.columns.some((column) => column.high - column.low > 1e-6))
      .map((body) => dryLayer(frame, body)),
  );
  return group(
    { 'data-part': 'ground' },
    layers.map(({ body, wash, drawing }) => group({}, [wash, poreWater(frame, body), ...drawing])),
  );
}

/** A layer but for the water in it: its wash, and what is drawn over that water. */
interface DryLayer {
  readonly body: LayerBody;
  readonly wash: SceneNode;
  readonly drawing: readonly (SceneNode | undefined)[];
}

const layersOnce = remembered<SectionFrame['plan'], DryLayer[]>();

function dryLayer(frame: SectionFrame, body: LayerBody): DryLayer {
  const { palette } = frame;
  const look = materialLook(body.layer);
  const edges = edgesOf(frame, body.columns);
  const outline = [...edges.upper, ...[...edges.lower].reverse()];
  const seed = frame.seed(`${body.zone.id}/${body.layer.name}`);
  const patterned = look.pattern !== 'void';
  return {
    body,
    wash: washOf({ points: outline, fill: palette[look.wash], opacity: look.opacity, seed, bleed: 1 }),
    drawing: [
      patterned
        ? element('path', { d: areaBetween(edges.upper, edges.lower), fill: patternId(frame, look.pattern) })
        : undefined,
      body.top ? undefined : boundary(frame, body, seed),
      look.pattern === 'void' ? falseBottom(frame, body) : undefined,
    ],
  };
}

/** Water between the grains, lighter than open water and the fuller the more room there is. */
function poreWater(frame: SectionFrame, { columns, layer }: LayerBody): SceneNode | undefined {
  const wet = layer.porosity > 0 ? below(columns, frame.level) : undefined;
  if (!wet) return undefined;
  const { upper, lower } = edgesOf(frame, wet);
  return element('path', {
    d: areaBetween(upper, lower),
    fill: frame.palette.waterDeep,
    'fill-opacity': 0.12 + 0.2 * layer.porosity,
    'data-part': 'pore-water',
  });
}

function boundary(frame: SectionFrame, { columns }: LayerBody, seed: string): SceneNode {
  const points = columns
    .filter(({ x, high }) => frame.ground.heightAt(x) - high > 1e-4)
    .map(({ x, high }) => frame.at(x, high));
  return inkStroke(points, seed, {
    stroke: frame.palette.ink,
    'stroke-width': 0.8,
    'stroke-opacity': 0.55,
  });
}

const SUPPORT_SPACING = 0.075;

/** The plate of a false bottom, the legs it stands on, and the walls that close its ends down to the floor. */
function falseBottom(frame: SectionFrame, { columns }: LayerBody): SceneNode {
  const { palette } = frame;
  const plate = columns.map(({ x, high }) => frame.at(x, high));
  const [first, last] = [columns[0], columns[columns.length - 1]];
  const legs = first && last ? legPositions(first.x, last.x) : [];
  const columnAt = (x: number) => columns.find((column) => column.x >= x - 1e-9);
  return group(
    { 'data-part': 'false-bottom', stroke: palette.ink, fill: 'none', 'stroke-linecap': 'round' },
    [
      inkStroke(plate, frame.seed('plate'), { 'stroke-width': 1.8, 'stroke-dasharray': '4 1.6' }),
      ...[first, last].map((end) =>
        end ? verticalStroke(frame, { x: end.x, from: end.low, to: end.high }, 1.4) : undefined,
      ),
      ...legs.map((x) => {
        const column = columnAt(x);
        return column ? leg(frame, x, column) : undefined;
      }),
    ],
  );
}

function leg(frame: SectionFrame, x: number, { low, high }: LayerColumn): SceneNode {
  const half = 0.004;
  const points: Point[] = [
    frame.at(x - half, high),
    frame.at(x - half, low),
    frame.at(x + half, low),
    frame.at(x + half, high),
  ];
  return element('path', {
    d: areaBetween(points.slice(0, 2), [...points.slice(2)].reverse()),
    fill: frame.palette.paper,
    'fill-opacity': 0.65,
    'stroke-width': 0.8,
  });
}

function legPositions(from: number, to: number): number[] {
  const count = Math.max(2, Math.round((to - from) / SUPPORT_SPACING));
  return Array.from({ length: count - 1 }, (_, index) => from + ((to - from) * (index + 1)) / count);
}

function verticalStroke(
  frame: SectionFrame,
  at: { x: number; from: number; to: number },
  width: number,
): SceneNode {
  return element('line', {
    x1: frame.x(at.x),
    y1: frame.y(at.from),
    x2: frame.x(at.x),
    y2: frame.y(at.to),
    'stroke-width': width,
  });
}

function edgesOf(frame: SectionFrame, columns: readonly LayerColumn[]): { upper: Point[]; lower: Point[] } {
  return {
    upper: columns.map(({ x, high }) => frame.at(x, high)),
    lower: columns.map(({ x, low }) => frame.at(x, low)),
  };
}
