import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { huntersOf } from './hunters-of.ts';

describe('hunters against a pest', () => {
  it('are of the library, hunt that kind, live where it lives, and come with a group that can be kept', () => {
    const found = huntersOf({ id: 'planorbella-duryi', zone: 'pool' }, library);
    expect(found.length).toBeGreaterThan(0);
    // Sold everywhere as the answer to snails: common practice, no source.
    expect(found.map(({ population }) => population.id)).toContain('anentome-helena');
    for (const { population, adults } of found) {
      const animal = library.organism(population.id);
      expect(animal.habitat).toBe('water');
      expect(adults).toBe(animal.leastFounders.value);
      expect(population.zone).toBe('pool');
      expect(population.traits.hunts?.snails).toBeGreaterThanOrEqual(0.3);
    }
  });

  it('are not offered where it is too cold or too warm for them', () => {
    const at = (low: number, high: number) =>
      huntersOf({ id: 'folsomia-candida', zone: 'bank' }, library, [
        { series: 'airTemperature', low, high, from: 'the room' },
      ]).map(({ population }) => population.id);
    expect(at(24, 26)).toContain('lepidodactylus-lugubris');
    expect(at(15, 21)).not.toContain('lepidodactylus-lugubris');
  });

  it('are none where nothing of the library lives on that kind', () => {
    const kinds = new Set(
      Object.values(library.data.organisms).map(({ id }) => huntersOf({ id, zone: '' }, library).length),
    );
    expect(kinds.has(0)).toBe(true);
    expect(() => huntersOf({ id: 'unicorn', zone: '' }, library)).toThrow(/unicorn/);
  });
});
