import type { Palette } from '../palette/palette.ts';
import { element, type Scene, sceneOf } from '../scene/scene.ts';
import { lookFill, lookPatterns, type TermLook } from './term-look.ts';

const SIDE = 18;

/** The pattern of a term as it stands in the bars, for the line of a table. */
export function termSwatchScene(look: TermLook, palette: Palette, id: string): Scene {
  const prefix = `swatch-${id.replaceAll(/[^A-Za-z0-9_-]/g, '_')}`;
  const scene = sceneOf({ width: SIDE, height: SIDE }, `pattern ${look.letter}`, [
    lookPatterns([look], prefix, palette),
    element('rect', {
      x: 0.5,
      y: 0.5,
      width: SIDE - 1,
      height: SIDE - 1,
      fill: lookFill(look, prefix),
      stroke: palette.ink,
      'stroke-width': 0.9,
    }),
  ]);
  return scene;
}
