import type { Zone } from '@shoreglass/engine';
import { noiseFrom } from '../../noise/noise.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import { type Anchor, anchorsOf } from '../anchors.ts';
import type { SectionFrame } from '../frame.ts';
import { subjectsOf } from '../subjects.ts';
import { type Silhouette, silhouetteOf } from './silhouettes.ts';

const MOST_FIGURES = 10;

/** A few tiny ink figures in the zone each population uses; more of them the more animals, on a log scale. */
export function animals(frame: SectionFrame): SceneNode {
  const anchors = anchorsOf(frame, subjectsOf(frame.plan, frame.day));
  return group(
    { 'data-part': 'animals', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' },
    frame.plan.populations.map((population) => {
      const anchor = anchors.find(({ subject }) => subject.key === `population:${population.id}`);
      const zone = frame.plan.zones.find((candidate) => candidate.id === population.zone);
      const count = frame.day.populations[population.id]?.median ?? 0;
      if (!anchor || !zone || count < 0.5) return undefined;
      const look = {
        figures: figuresFor(count),
        shape: silhouetteOf(`${population.name} ${population.species}`),
      };
      return group(
        { 'data-population': population.id },
        spots(frame, { anchor, zone, count: look.figures }).map(({ x, y, turn }) => {
          const scale =
            Math.max(0.7, Math.min(1.05, frame.pixelsPerMetre / 720)) * (0.8 + 0.4 * Math.abs(turn));
          const place = `translate(${x.toFixed(1)} ${y.toFixed(1)}) scale(${(turn > 0.1 ? -scale : scale).toFixed(2)} ${scale.toFixed(2)})`;
          return group({ transform: place }, silhouetteNodes(frame, look.shape));
        }),
      );
    }),
  );
}

function silhouetteNodes({ palette }: SectionFrame, { solid, hollow, line }: Silhouette): SceneNode[] {
  const ink = { stroke: palette.ink, 'stroke-width': 0.75 };
  const nodes = [
    line === '' ? undefined : element('path', { ...ink, d: line, fill: 'none' }),
    solid === '' ? undefined : element('path', { d: solid, fill: palette.ink }),
  ];
  const shell = hollow === '' ? undefined : element('path', { ...ink, d: hollow, fill: palette.raised });
  return [shell, ...nodes].filter((node) => node !== undefined);
}

/** One figure for a single animal, then about three more for every factor of ten. */
function figuresFor(count: number): number {
  return Math.min(MOST_FIGURES, Math.max(1, Math.round(1 + 3 * Math.log10(Math.max(1, count)))));
}

/** The first stands at the label's anchor, the others anywhere in the zone; the same ones stay as numbers change. */
function spots(
  frame: SectionFrame,
  { anchor, zone, count }: { anchor: Anchor; zone: Zone; count: number },
): { x: number; y: number; turn: number }[] {
  const noise = noiseFrom(frame.seed(anchor.subject.key));
  return Array.from({ length: count }, (_, index) => {
    const [across, up, turn] = [noise(), noise(), noise() * 2 - 1];
    const x = index === 0 ? anchor.x : zone.from + (zone.to - zone.from) * (0.03 + 0.94 * across);
    const floor = frame.ground.heightAt(x);
    const depth = Math.max(0, frame.level - floor);
    const height =
      index === 0
        ? anchor.height
        : anchor.way === 'base'
          ? floor + 0.004 + up * up * depth * 0.8
          : restingHeight(frame, anchor, { floor, up });
    const [px, py] = frame.at(x, height);
    return { x: px + (index === 0 ? 7 : 0), y: py - 2, turn };
  });
}

/** On the ground, or spread around the anchor's height for what climbs. */
function restingHeight(
  frame: SectionFrame,
  anchor: Anchor,
  { floor, up }: { floor: number; up: number },
): number {
  const lift = anchor.height - frame.ground.heightAt(anchor.x);
  return lift < 0.02 ? floor + 0.002 : floor + lift * (0.5 + up * 0.9);
}
