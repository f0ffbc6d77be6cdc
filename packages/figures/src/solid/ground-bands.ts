import { zoneLook } from '../plan-view/parts/zones.ts';
import { element, type SceneNode } from '../scene/scene.ts';
import { materialLook } from '../section/materials.ts';
import { clipped } from './clip.ts';
import { bandsFarFirst, type Face, facesOf } from './ground-faces.ts';
import { pathOf } from './outline-path.ts';
import { pieceParts } from './pieces.ts';
import { slabParts } from './slabs.ts';
import type { SolidFrame } from './solid-frame.ts';
import { mixed } from './tint.ts';

/** The faces of one band of blocks, far blocks first. */
export interface BandOfFaces {
  readonly blocks: readonly (readonly [column: number, row: number])[];
  readonly faces: readonly Face[];
}

export function bandsOfFaces(frame: SolidFrame): BandOfFaces[] {
  return bandsFarFirst(frame).map((band) => ({
    blocks: band,
    faces: band.flatMap(([column, row]) => facesOf(frame, column, row)),
  }));
}

/** Ground, slabs over caves and pieces on one side of the water level, far bands first, each band over those behind it. */
export function groundBands(
  frame: SolidFrame,
  bands: readonly BandOfFaces[],
  keep: 'above' | 'below',
): SceneNode[] {
  const { level } = frame.plan.water;
  return bands.flatMap(({ blocks, faces: all }) => {
    const faces = all
      .map((face) => ({ ...face, spots: clipped(face.spots, level, keep) }))
      .filter(({ spots }) => spots.length >= 3);
    return [
      ...merged(faces).flatMap((run) => faceNodes(frame, run)),
      ...slabParts(frame, blocks, keep),
      ...pieceParts(frame, blocks[0] ?? [0, 0], keep),
    ];
  });
}

interface Run {
  readonly first: Face;
  readonly faces: Face[];
}

/** Neighbouring faces that look the same, drawn as one path. */
function merged(faces: readonly Face[]): Run[] {
  const runs: Run[] = [];
  for (const face of faces) {
    const last = runs.at(-1);
    const alike = last && last.first.zone === face.zone && last.first.kind === face.kind;
    if (alike && Math.abs(last.first.shade - face.shade) < 0.04) last.faces.push(face);
    else runs.push({ first: face, faces: [face] });
  }
  return runs;
}

function faceNodes(frame: SolidFrame, { first, faces }: Run): SceneNode[] {
  const { palette } = frame;
  const zone = frame.plan.zones[first.zone];
  const look = zone ? zoneLook(zone) : undefined;
  const wash = look
    ? mixed(palette.paper, palette[look.wash], Math.min(1, look.opacity * 1.25))
    : palette.paper;
  const fill = mixed(wash, palette.name === 'day' ? palette.soilDeep : palette.paper, first.shade * 0.6);
  const d = faces.map(({ spots }) => pathOf(frame, spots)).join('');
  const pattern = look && look.pattern !== 'void' ? frame.url(`pattern-${look.pattern}`) : undefined;
  return [
    element('path', { d, fill, stroke: fill, 'stroke-width': 0.7, 'stroke-linejoin': 'round' }),
    ...(pattern ? [element('path', { d, fill: pattern })] : []),
  ];
}

/** Patterns of everything that shows: tops from above and all layers on the sides. */
export function patternsShown(frame: SolidFrame) {
  return frame.plan.zones.flatMap((zone) => [
    zoneLook(zone).pattern,
    ...zone.layers.map((layer) => materialLook(layer).pattern),
  ]);
}
