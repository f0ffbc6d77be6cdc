import { openEnclosure } from '@shoreglass/contract';
import type { Hunter } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { carryOutLife } from './life-orders.ts';

describe('hunters offered against a pest', () => {
  // Snail hunters of the library are tropical: none is for an unheated cellar of 8 degC.
  it('are those that would be fine in the room of the plan', () => {
    const { plan } = openEnclosure(library.enclosure('beck-bank'), 'box.yaml');
    if (!plan) throw new Error('the example has errors');
    const pest = { id: 'planorbella-duryi', zone: 'pool' };
    const { heater: _, ...devices } = plan.devices;
    const cold = {
      ...plan,
      devices,
      room: { ...plan.room, temperature: { ...plan.room.temperature, mean: 8 } },
    };
    const offered = (place: typeof plan) =>
      (carryOutLife({ do: 'hunters', pest, plan: place }) as Hunter[]).map(({ population }) => population.id);
    expect(offered(plan).length).toBeGreaterThan(0);
    expect(offered(cold)).toEqual([]);
  });
});
