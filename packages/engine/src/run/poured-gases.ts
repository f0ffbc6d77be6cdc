import type { WaterComposition } from '../plan/water-composition.ts';
import { type AiredWater, equilibrateWithAir } from '../water/equilibrate-with-air.ts';
import type { Air } from '../water/gases.ts';

/** Distance of the temperatures at which a water is worked out [K]. */
const STEP = 0.125;

export interface PouredGases {
  /** Inorganic carbon and oxygen of a water in balance with the room's air at a temperature [degC]. */
  at(water: WaterComposition, temperature: number): Pick<AiredWater, 'dissolvedInorganicCarbon' | 'oxygen'>;
}

/**
 * Gases of the waters poured in, worked out once every eighth of a degree and water, and interpolated: within 1e-5 of
 * `equilibrateWithAir`, of which a run would ask every day. Each is worked out afresh, so that it does not show who
 * asked first.
 * @param air of the room
 * @throws RangeError as `equilibrateWithAir` does.
 * @source derived: linear interpolation
 */
export function pouredGases(air: Air): PouredGases {
  const known = new WeakMap<WaterComposition, Map<number, AiredWater>>();
  const nodeAt = (water: WaterComposition, node: number): AiredWater => {
    let nodes = known.get(water);
    if (!nodes) {
      nodes = new Map();
      known.set(water, nodes);
    }
    let aired = nodes.get(node);
    if (!aired) {
      aired = equilibrateWithAir(water, node * STEP, air);
      nodes.set(node, aired);
    }
    return aired;
  };
  return {
    at(water, temperature) {
      const place = temperature / STEP;
      const node = Math.floor(place);
      const share = place - node;
      const low = nodeAt(water, node);
      if (share === 0) return low;
      const high = nodeAt(water, node + 1);
      return {
        dissolvedInorganicCarbon:
          low.dissolvedInorganicCarbon +
          share * (high.dissolvedInorganicCarbon - low.dissolvedInorganicCarbon),
        oxygen: low.oxygen + share * (high.oxygen - low.oxygen),
      };
    },
  };
}
