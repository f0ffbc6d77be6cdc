import { feedsFromWater, type PlantGroup, type Planting, type Zone } from '@shoreglass/engine';
import { type Noise, noiseFrom } from '../../noise/noise.ts';
import type { Point } from '../../scene/path.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { bladesPath, frondPath, tuftPath, whorlPath } from './sprigs.ts';

interface Stand {
  readonly frame: SectionFrame;
  readonly planting: Planting;
  readonly zone: Zone;
  readonly cover: number;
  readonly noise: Noise;
  readonly scale: number;
}

type Grow = (stand: Stand) => SceneNode[];

const GROWTH: Record<PlantGroup, Grow> = { submerged, floating, moss, emersed, land };

/** Plants that stand in the water, by the cover of the day. */
export function waterPlants(frame: SectionFrame): SceneNode {
  return stands(frame, ['submerged', 'floating']);
}

/** Plants of margin and bank, by the cover of the day. */
export function bankPlants(frame: SectionFrame): SceneNode {
  return stands(frame, ['land', 'emersed', 'moss']);
}

/** The series that holds the cover of a group; the others stay as planted. */
const COVER_SERIES: Partial<Record<PlantGroup, 'plantCover' | 'floatingCover' | 'emersedCover'>> = {
  submerged: 'plantCover',
  floating: 'floatingCover',
  emersed: 'emersedCover',
};

/** Cover of a planting on the day [0..1]: the outlook's where it computes the group, else the plan's. */
function coverOf(frame: SectionFrame, planting: Planting): number {
  const series = feedsFromWater(planting, frame.plan.zones) ? COVER_SERIES[planting.group] : undefined;
  const outlook = (series ? frame.day[series] : frame.day.plantings?.[planting.id])?.median;
  return Math.min(1, Math.max(0, outlook === undefined ? planting.cover : outlook / 100));
}

function stands(frame: SectionFrame, groups: readonly PlantGroup[]): SceneNode {
  const nodes = groups.flatMap((kind) =>
    frame.plan.plants
      .filter((planting) => planting.group === kind)
      .flatMap((planting) => {
        const zone = frame.plan.zones.find((candidate) => candidate.id === planting.zone);
        if (!zone) return [];
        const stand = {
          frame,
          planting,
          zone,
          cover: coverOf(frame, planting),
          noise: noiseFrom(frame.seed(planting.id)),
          scale: frame.pixelsPerMetre / 720,
        };
        return [
          group(
            { 'data-planting': planting.id, fill: 'none', 'stroke-linecap': 'round' },
            GROWTH[kind](stand),
          ),
        ];
      }),
  );
  return group({ 'data-part': `plants-${groups[0]}` }, nodes);
}

/** Places along a zone that fill it more and more evenly; the first ones stay when more are asked for. */
function places(zone: Zone, count: number, seed: number): number[] {
  const golden = 0.6180339887;
  return Array.from({ length: count }, (_, index) => {
    const share = (seed + index * golden) % 1;
    return zone.from + (zone.to - zone.from) * (0.03 + 0.94 * share);
  });
}

function submerged({ frame, zone, cover, noise, scale }: Stand): SceneNode[] {
  const width = (zone.to - zone.from) * frame.pixelsPerMetre;
  const count = Math.round((cover * width) / 9);
  return places(zone, count, noise()).flatMap((x) => {
    const floor = frame.ground.heightAt(x);
    const depth = (frame.level - floor) * frame.pixelsPerMetre;
    const tall = depth * (0.4 + 0.48 * noise()) * (0.55 + 0.45 * cover);
    const [sway, dark] = [noise() * 2 - 1, noise() > 0.5];
    if (depth < 8) return [];
    return [
      element('path', {
        d: whorlPath(frame.at(x, floor), tall, sway),
        stroke: dark ? frame.palette.mossDeep : frame.palette.moss,
        'stroke-width': Math.max(0.7, 1.1 * scale),
        'stroke-opacity': 0.9,
      }),
    ];
  });
}

function floating({ frame, zone, cover, noise, scale }: Stand): SceneNode[] {
  const width = (zone.to - zone.from) * frame.pixelsPerMetre;
  return places(zone, Math.round((cover * width) / 13), noise())
    .filter((x) => frame.ground.heightAt(x) < frame.level)
    .map((x) => {
      const [cx, cy] = frame.at(x, frame.level);
      const pad = 5.5 * scale;
      return element('path', {
        d: `M${cx - pad} ${cy - 1}q${pad} -3.4 ${2 * pad} 0zM${cx} ${cy}v${6 + 8 * noise()}M${cx + 2} ${cy}v${4 + 6 * noise()}`,
        fill: frame.palette.moss,
        stroke: frame.palette.mossDeep,
        'stroke-width': 0.7,
      });
    });
}

function moss({ frame, zone, cover, noise, scale }: Stand): SceneNode[] {
  const width = (zone.to - zone.from) * frame.pixelsPerMetre;
  const seed = noise();
  const tufts = places(zone, Math.round((cover * width) / 3.2), seed)
    .filter((x) => frame.ground.heightAt(x) > frame.level)
    .sort((a, b) => a - b);
  const paths: Record<'moss' | 'mossDeep', string[]> = { moss: [], mossDeep: [] };
  for (const x of tufts) {
    const path = tuftPath(groundPoint(frame, x), (6 + 4 * noise()) * scale, noise);
    paths[noise() > 0.4 ? 'moss' : 'mossDeep'].push(path);
  }
  return (['mossDeep', 'moss'] as const).map((ink) =>
    element('path', {
      d: paths[ink].join(''),
      stroke: frame.palette[ink],
      'stroke-width': Math.max(0.7, 1.2 * scale),
    }),
  );
}

function emersed({ frame, zone, cover, noise, scale }: Stand): SceneNode[] {
  const width = (zone.to - zone.from) * frame.pixelsPerMetre;
  return places(zone, plantCount(cover, width / 11), noise()).map((x) =>
    element('path', {
      d: bladesPath(groundPoint(frame, x), (46 + 34 * noise()) * scale, noise),
      stroke: noise() > 0.5 ? frame.palette.moss : frame.palette.mossDeep,
      'stroke-width': Math.max(0.8, 1.3 * scale),
    }),
  );
}

function land({ frame, zone, cover, noise, scale }: Stand): SceneNode[] {
  const width = (zone.to - zone.from) * frame.pixelsPerMetre;
  const plants = plantCount(cover, width / 42);
  return places(zone, plants, 0.3 + 0.3 * noise()).map((x) => {
    const base = groundPoint(frame, x);
    const tall = (44 + 30 * noise()) * scale;
    const fronds = [-0.95, -0.55, -0.12, 0.32, 0.72, 1.05].map((lean) =>
      frondPath(
        base,
        tall * (0.78 + 0.35 * noise()) * (1 - 0.12 * Math.abs(lean)),
        lean + 0.14 * (noise() - 0.5),
      ),
    );
    return element('path', {
      d: fronds.join(''),
      stroke: noise() > 0.5 ? frame.palette.moss : frame.palette.mossDeep,
      'stroke-width': Math.max(0.6, 1.05 * scale),
    });
  });
}

/** Plants drawn for a cover, of so many at full cover: at least one while any is left. */
function plantCount(cover: number, full: number): number {
  return cover < 0.005 ? 0 : Math.max(1, Math.round(cover * full));
}

function groundPoint(frame: SectionFrame, x: number): Point {
  return frame.at(x, frame.ground.heightAt(x));
}
