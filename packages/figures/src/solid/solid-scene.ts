import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { materialTiles } from '../section/materials.ts';
import { farBox, nearBox } from './box-lines.ts';
import { clipped } from './clip.ts';
import { type BandOfFaces, bandsOfFaces, groundBands, patternsShown } from './ground-bands.ts';
import { pathOf } from './outline-path.ts';
import { nearSides } from './sides.ts';
import { type SolidFrame, solidFrame } from './solid-frame.ts';
import type { SolidOptions } from './solid-options.ts';

/**
 * The enclosure as a body, turned and tilted: far panes, ground under the water, the water, ground above it, then what
 * shows through the near panes. A sight line that has passed the water surface meets only what lies below the level,
 * so these five drawn in this order hide one another as they should.
 */
export function solidScene(options: SolidOptions): Scene {
  const frame = solidFrame(options);
  const bands = bandsOfFaces(frame);
  const patterns = materialTiles(patternsShown(frame), {
    palette: frame.palette,
    pixelsPerMetre: frame.projection.pixelsPerMetre,
    id: frame.id,
  });
  return sceneOf(options.size, viewSentence(options), [
    element('defs', {}, ...patterns),
    farBox(frame),
    group({ 'data-part': 'under-water' }, groundBands(frame, bands, 'below')),
    waterSurface(frame, bands),
    group({ 'data-part': 'above-water' }, groundBands(frame, bands, 'above')),
    nearSides(frame),
    nearBox(frame),
  ]);
}

function waterSurface(frame: SolidFrame, bands: readonly BandOfFaces[]): SceneNode {
  const { palette, plan } = frame;
  const { level } = plan.water;
  const d = bands
    .flatMap(({ faces }) => faces.filter(({ kind }) => kind === 'top'))
    .map(({ spots }) => clipped(spots, level, 'below'))
    .filter((spots) => spots.length >= 3)
    .map((spots) =>
      pathOf(
        frame,
        spots.map(([x, y]) => [x, y, level] as const),
      ),
    )
    .join('');
  return element('path', { 'data-part': 'water', d, fill: palette.water, 'fill-opacity': 0.62 });
}

const FROM = [
  'front',
  'front right',
  'right',
  'back right',
  'back',
  'back left',
  'left',
  'front left',
] as const;

/** From where one looks, in words: "from the front right, 30° from above". */
export function viewWords(turn: number, tilt: number): string {
  const eighth = (Math.round(turn / 45) % 8) + 8;
  return `from the ${FROM[eighth % 8]}, ${Math.round(tilt)}° from above`;
}

function viewSentence({ plan, turn, tilt }: SolidOptions): string {
  return `${plan.name} as a body, seen ${viewWords(turn, tilt)}.`;
}
