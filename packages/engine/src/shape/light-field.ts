import { coverTransmission, oppositeViewFactor, RETURNED_BY_PANES } from '../light/surface-light.ts';
import { square } from '../numerics/small-powers.ts';
import type { Lamp } from '../plan/devices.ts';
import type { Plan } from '../plan/plan.ts';

/** Elements of a luminous panel along its length and breadth. */
const ALONG = 6;
const ACROSS = 3;
/** Gap between rim and lamp where the file says nothing [m]. @source assumed */
const ABOVE_RIM = 0.02;

interface Element {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

function panelOf(lamp: Lamp, { length, width, height }: Plan['box']): NonNullable<Lamp['panel']> {
  return lamp.panel ?? { x: length / 2, y: width / 2, z: height + ABOVE_RIM, length, breadth: width };
}

function elementsOf({ x, y, z, length, breadth }: NonNullable<Lamp['panel']>): Element[] {
  const elements: Element[] = [];
  for (let i = 0; i < ALONG; i++)
    for (let j = 0; j < ACROSS; j++)
      elements.push({
        x: x + length * ((i + 0.5) / ALONG - 0.5),
        y: y + breadth * ((j + 0.5) / ACROSS - 0.5),
        z,
      });
  return elements;
}

/** Light of one lamp through the cover. */
export interface LampField {
  readonly lamp: Lamp;
  /** On a level surface at a point [umol/(m2 s)]; 0 above the lamp. */
  at(x: number, y: number, z: number): number;
}

/**
 * Returns the light of a lamp at any point inside [umol/(m2 s)]: each of 18 elements of its panel sends
 * flux cos^2/(pi d^2) straight down through the cover, and the panes return a fifth of what misses a level plane there.
 * @param lamp with or without a place of its own; without, it lights the whole cover evenly
 * @param box the glass and its cover
 * @validity diffuse panels without lens; a narrow beam is brighter below and darker beside
 * @source derived: cosine law; panes assumed
 */
export function lampField(lamp: Lamp, box: Plan['box']): LampField {
  const panel = panelOf(lamp, box);
  const elements = elementsOf(panel);
  const isInside = panel.z < box.height;
  const cover = isInside ? 1 : coverTransmission(box);
  const flux = lamp.photonFlux * cover;
  const perElement = flux / elements.length;
  const base = box.length * box.width;
  const least = square(Math.max(panel.length / ALONG, panel.breadth / ACROSS) / 2);
  return {
    lamp,
    at(x, y, z) {
      const drop = panel.z - z;
      if (!(drop > 1e-3)) return 0;
      let direct = 0;
      for (const element of elements) {
        const distance = square(element.x - x) + square(element.y - y) + drop * drop;
        // Nearer than half an element the point formula would blow up: the element counts as a disc of its size.
        direct += (perElement * drop * drop) / (Math.PI * distance * Math.max(distance, least));
      }
      const missed = 1 - oppositeViewFactor(box.length, box.width, drop);
      return direct + (RETURNED_BY_PANES * missed * flux) / base;
    },
  };
}
