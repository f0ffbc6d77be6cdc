import { group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { inkStroke } from '../shapes.ts';

/** The ground surface as one ink stroke, with a fainter second pass as a pen would leave. */
export function groundLine(frame: SectionFrame): SceneNode {
  const points = frame.ground.samples.map((x) => frame.at(x, frame.ground.heightAt(x)));
  const stroke = { stroke: frame.palette.ink };
  return group({ 'data-part': 'ground-line' }, [
    inkStroke(points, frame.seed('ground'), { ...stroke, 'stroke-width': 1.5 }),
    inkStroke(points, frame.seed('ground/second'), {
      ...stroke,
      'stroke-width': 0.6,
      'stroke-opacity': 0.45,
    }),
  ]);
}
