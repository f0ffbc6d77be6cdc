import type { Layer, Zone } from '@shoreglass/engine';
import type { SectionFrame } from './frame.ts';

/** One layer of one zone in the section: where it lies [m], cut off by the ground surface. */
export interface LayerBody {
  readonly zone: Zone;
  readonly layer: Layer;
  readonly top: boolean;
  readonly columns: readonly LayerColumn[];
}
export interface LayerColumn {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/** Every layer of every zone, bottom up; the topmost reaches the ground whatever its thickness says. */
export function layerBodies(frame: SectionFrame): LayerBody[] {
  return frame.plan.zones.flatMap((zone) => zoneBodies(frame, zone));
}

/** A zone without layers is solid below its ground. */
const SOLID: Layer = {
  kind: 'substrate',
  material: 'solid',
  name: '',
  thickness: 0,
  porosity: 0,
  filmSurface: 0,
};

/** Layers of a zone, bottom up. */
export function groundBuildUp(zone: Zone): readonly Layer[] {
  return zone.layers.length > 0 ? zone.layers : [SOLID];
}

function zoneBodies({ ground }: SectionFrame, zone: Zone): LayerBody[] {
  const columnsX = [zone.from, ...ground.samples.filter((x) => x > zone.from && x < zone.to), zone.to];
  const layers = groundBuildUp(zone);
  let base = 0;
  return layers.map((layer, index) => {
    const top = index === layers.length - 1;
    const [low, high] = [base, base + layer.thickness];
    base = high;
    const columns = columnsX.map((x) => {
      const surface = Math.max(0, ground.heightAt(x));
      return { x, low: Math.min(low, surface), high: top ? surface : Math.min(high, surface) };
    });
    return { zone, layer, top, columns };
  });
}

/** Columns cut off at a height, such as the water level; undefined when nothing lies below it. */
export function below(columns: readonly LayerColumn[], height: number): LayerColumn[] | undefined {
  const cut = columns.map(({ x, low, high }) => ({
    x,
    low: Math.min(low, height),
    high: Math.min(high, height),
  }));
  return cut.some((column) => column.high - column.low > 1e-6) ? cut : undefined;
}
