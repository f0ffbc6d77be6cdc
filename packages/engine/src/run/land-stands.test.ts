import { describe, expect, it } from 'vitest';
import type { Plan, Planting, Zone } from '../plan/plan.ts';
import { landStands } from './land-stands.ts';

const box: Plan['box'] = {
  length: 1,
  width: 0.5,
  height: 0.5,
  glassThickness: 0.008,
  coverOpenFraction: 0.1,
  coverTransmission: 0.9,
};
const zone = (given: Partial<Zone> & Pick<Zone, 'id' | 'kind'>): Zone => ({
  name: given.id,
  from: 0,
  to: 1,
  groundStart: 0.1,
  groundEnd: 0.1,
  layers: [],
  ...given,
});
const planting = (given: Partial<Planting>): Planting => ({
  id: 'a',
  name: 'a',
  group: 'moss',
  zone: 'bank',
  cover: 0.5,
  fullCoverBiomass: 10,
  ...given,
});
const LAMP = { name: 'bar', power: 20, photonFlux: 40, onAt: 9, hours: 10 };

function standsOf(zones: readonly Zone[], plants: readonly Planting[], lamps = [LAMP]) {
  return landStands({
    box,
    zones,
    plants,
    devices: { lamps },
    water: { level: 0.15 } as Plan['water'],
  });
}

describe('plantings on land', () => {
  const zones = [
    zone({ id: 'pool', kind: 'pool', to: 0.4, groundStart: 0.02, groundEnd: 0.02 }),
    zone({ id: 'bank', kind: 'bank', from: 0.4, to: 0.8, groundStart: 0.1, groundEnd: 0.3 }),
    zone({ id: 'back', kind: 'wall', from: 0.8, to: 1, groundStart: 0.45, groundEnd: 0.45 }),
  ];

  it('take the dry part of sloping ground, and the face of a wall', () => {
    const [bank, wall] = standsOf(zones, [planting({}), planting({ id: 'b', zone: 'back' })]);
    // 0.4 m by 0.5 m, rising from 10 to 30 cm past a level of 15 cm: three quarters are dry
    expect(bank?.area).toBeCloseTo(0.15, 12);
    // half a metre wide, from 15 to 45 cm
    expect(wall?.area).toBeCloseTo(0.15, 12);
    expect([bank?.offGround, wall?.offGround]).toEqual([false, true]);
    expect(wall?.light).toBeLessThan(bank!.light);
  });

  it('know their shore', () => {
    const [bank, wall] = standsOf(zones, [planting({}), planting({ id: 'b', zone: 'back' })]);
    expect([bank?.shore, wall?.shore]).toEqual([0.5, 0]);
    const outline = [
      { x: 0.5, y: 0, ground: 0.2 },
      { x: 1, y: 0, ground: 0.2 },
      { x: 1, y: 0.3, ground: 0.2 },
      { x: 0.5, y: 0.3, ground: 0.2 },
    ];
    const isle = [
      zone({ id: 'pool', kind: 'pool' }),
      zone({ id: 'bank', kind: 'bank', outline, from: 0.5, to: 1 }),
    ];
    expect(standsOf(isle, [planting({})])[0]?.shore).toBeCloseTo(0.8, 12);
  });

  it('leave out what stands in water', () => {
    const plants = [
      planting({ zone: 'pool' }),
      planting({ id: 'b', group: 'submerged', zone: 'pool' }),
      planting({ id: 'c', group: 'emersed' }),
    ];
    expect(standsOf(zones, plants).map(({ id, layer }) => [id, layer])).toEqual([['c', 'tall']]);
    const drowned = [zone({ id: 'bank', kind: 'bank' })];
    expect(standsOf(drowned, [planting({})])).toEqual([]);
  });

  it('stand in the dark without lamps, and brighter under two', () => {
    const dark = standsOf(zones, [planting({})], [])[0];
    expect([dark?.light, dark?.hoursLit]).toEqual([0, 0]);
    const one = standsOf(zones, [planting({})])[0]!;
    const two = standsOf(zones, [planting({})], [LAMP, LAMP])[0]!;
    expect(one.hoursLit).toBeCloseTo(10, 12);
    expect(two.light).toBeCloseTo(2 * one.light, 9);
  });
});
