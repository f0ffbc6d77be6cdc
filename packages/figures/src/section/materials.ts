import type { Layer } from '@shoreglass/engine';
import type { Ink, Palette } from '../palette/palette.ts';
import { element, type SceneNode } from '../scene/scene.ts';
import type { SectionFrame } from './frame.ts';
import { groundBuildUp } from './layer-bodies.ts';

/** How a ground material is drawn: its wash, and a light pattern over it that tells it apart without colour. */
export interface MaterialLook {
  readonly pattern: MaterialPattern;
  readonly wash: Ink;
  readonly opacity: number;
}

export type MaterialPattern =
  | 'crumbs'
  | 'grains'
  | 'pebbles'
  | 'cells'
  | 'foam'
  | 'weave'
  | 'leaves'
  | 'void';

const SOIL: MaterialLook = { pattern: 'crumbs', wash: 'soil', opacity: 0.72 };

/** Words in a material's name that tell its grain; the layer's kind decides where none is found. */
const BY_WORD: readonly (readonly [RegExp, MaterialLook])[] = [
  [/soil|mould|peat|coir|humus|loam|compost|bark/i, SOIL],
  [/gravel|pebble|lava|pumice|grit/i, { pattern: 'pebbles', wash: 'stone', opacity: 0.55 }],
  [/sand|silt/i, { pattern: 'grains', wash: 'soil', opacity: 0.3 }],
];

const BY_KIND: Record<Layer['kind'], MaterialLook> = {
  'false bottom': { pattern: 'void', wash: 'stone', opacity: 0.08 },
  drainage: { pattern: 'cells', wash: 'litter', opacity: 0.2 },
  foam: { pattern: 'foam', wash: 'stone', opacity: 0.4 },
  mesh: { pattern: 'weave', wash: 'stone', opacity: 0.3 },
  substrate: SOIL,
  litter: { pattern: 'leaves', wash: 'litter', opacity: 0.5 },
};

export function materialLook(layer: Pick<Layer, 'kind' | 'material' | 'name'>): MaterialLook {
  if (layer.kind !== 'substrate') return BY_KIND[layer.kind];
  return firstNamed(layer.name) ?? firstNamed(layer.material) ?? BY_KIND.substrate;
}

/** The material whose word comes first: what a mix is mostly made of is named first. */
function firstNamed(text: string): MaterialLook | undefined {
  let first: { at: number; look: MaterialLook } | undefined;
  for (const [word, look] of BY_WORD) {
    const at = text.search(word);
    if (at >= 0 && (first === undefined || at < first.at)) first = { at, look };
  }
  return first?.look;
}

interface Tile {
  readonly size: number;
  /** Strokes in a tile of that size. */
  readonly path: string;
  readonly ink: Ink;
  readonly opacity: number;
}

/** Patterns are sparse on purpose: at phone size they must not close up to a grey. */
const TILES: Record<Exclude<MaterialPattern, 'void'>, Tile> = {
  crumbs: {
    size: 18,
    path: 'M2 4l3 -1.6M9 2.6l2 1.2M14 6.4l2.6 -1.4M4.4 10.4l1.6 1M11 11l3 -1.6M2.6 15.6l2.4 -1.2M8.6 15l1 .8M15 15.4l1.6 -1',
    ink: 'soilDeep',
    opacity: 0.62,
  },
  grains: {
    size: 11,
    path: 'M1.5 2h.1M6 1.2h.1M9.2 4.1h.1M3.8 5.6h.1M7.1 7.6h.1M1.4 9h.1M10 9.8h.1M4.6 10.2h.1',
    ink: 'soilDeep',
    opacity: 0.85,
  },
  pebbles: {
    size: 16,
    path: 'M2 4a2.6 1.8 0 1 0 5.2 0a2.6 1.8 0 1 0 -5.2 0M9.6 3a2 1.5 0 1 0 4 0a2 1.5 0 1 0 -4 0M5.4 11.4a3 2 0 1 0 6 0a3 2 0 1 0 -6 0M13 9.4a1.3 1 0 1 0 2.6 0a1.3 1 0 1 0 -2.6 0M1 13.6a1.4 1 0 1 0 2.8 0a1.4 1 0 1 0 -2.8 0',
    ink: 'ink',
    opacity: 0.34,
  },
  cells: {
    size: 15,
    path: 'M.6 4a3.2 3.2 0 1 0 6.4 0a3.2 3.2 0 1 0 -6.4 0M8.1 3.8a3.2 3.2 0 1 0 6.4 0a3.2 3.2 0 1 0 -6.4 0M4.4 11.2a3.2 3.2 0 1 0 6.4 0a3.2 3.2 0 1 0 -6.4 0M11.9 11.2a3.2 3.2 0 0 1 3.1 -3.1M15 14.4a3.2 3.2 0 0 1 -3.1 -3.2M0 8.1a3.2 3.2 0 0 1 0 6.3',
    ink: 'soilDeep',
    opacity: 0.6,
  },
  foam: {
    size: 9,
    path: 'M2 2.4a1.2 1.2 0 1 0 2.4 0a1.2 1.2 0 1 0 -2.4 0M6 6a1.4 1.4 0 1 0 2.8 0a1.4 1.4 0 1 0 -2.8 0M1 7a.9 .9 0 1 0 1.8 0a.9 .9 0 1 0 -1.8 0',
    ink: 'ink',
    opacity: 0.4,
  },
  weave: { size: 5, path: 'M0 0L5 5M5 0L0 5', ink: 'ink', opacity: 0.4 },
  leaves: {
    size: 15,
    path: 'M2 5q3 -3 6 0q-3 2.4 -6 0M9 11q2.6 -3 5.2 -.6q-2.4 3 -5.2 .6M1.6 12.4l3.4 -1',
    ink: 'soilDeep',
    opacity: 0.6,
  },
};

/** What a pattern definition needs of its drawing. */
export interface PatternSetting {
  readonly palette: Palette;
  readonly pixelsPerMetre: number;
  id(name: string): string;
}

/** The pattern definitions of the materials that a plan uses. */
export function materialPatterns(frame: SectionFrame): SceneNode[] {
  const used = frame.plan.zones.flatMap((zone) =>
    groundBuildUp(zone).map((layer) => materialLook(layer).pattern),
  );
  return materialTiles(used, frame);
}

/** The definitions of the patterns named, each once. */
export function materialTiles(used: readonly MaterialPattern[], setting: PatternSetting): SceneNode[] {
  return (Object.keys(TILES) as (keyof typeof TILES)[])
    .filter((pattern) => used.includes(pattern))
    .map((pattern) => patternTile(setting, pattern, TILES[pattern]));
}

export function patternId(frame: SectionFrame, pattern: MaterialPattern): string {
  return frame.url(`pattern-${pattern}`);
}

function patternTile(setting: PatternSetting, name: string, tile: Tile): SceneNode {
  const ink: Palette[Ink] = setting.palette[tile.ink];
  const scale = Math.min(1, Math.max(0.72, setting.pixelsPerMetre / 700));
  return element(
    'pattern',
    {
      id: setting.id(`pattern-${name}`),
      width: tile.size,
      height: tile.size,
      patternUnits: 'userSpaceOnUse',
      patternTransform: `scale(${Math.round(scale * 100) / 100})`,
    },
    element('path', {
      d: tile.path,
      fill: 'none',
      stroke: ink,
      'stroke-width': name === 'grains' ? 1.1 : 0.8,
      'stroke-linecap': 'round',
      'stroke-opacity': tile.opacity,
    }),
  );
}
