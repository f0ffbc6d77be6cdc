import { describe, expect, it } from 'vitest';
import { deathsIn, keep, last, planOfFile, shrimpPool } from './kept-files.ts';

// Facts of the trade, common practice, no source: from a small breeding group of direct-developing land crabs young show
// within about four months and are near adult at about five months; a few hundred days can overfill the place; adults
// short of food turn on each other, protein every three to four days prevents most of it; without extra feed a crowded
// pool outgrazes its film. Whole runs of files; the same on the life module alone stands in its own tests.

const SLOW = 120_000;

/** An invented box for land crabs: a beach, moist warm land with leaves, no gaps; fed as given. */
const crabBox = (feed: string): string => `
shoreglass: 1
name: Crab box
start: 2026-03-01
glass: { length: 80 cm, width: 45 cm, height: 45 cm, thickness: 6 mm }
cover: { open: 1 %, transmission: 90 %, mesh: { open: 40 %, hole: 1 mm } }
zones:
  - id: pool
    name: Pool
    kind: pool
    from: 0 cm
    to: 25 cm
    ground: { left: 4 cm, right: 10.5 cm }
    layers:
      - { kind: substrate, material: fine-gravel }
  - id: bank
    name: Bank
    kind: bank
    from: 25 cm
    to: 80 cm
    ground: { left: 10.5 cm, right: 18 cm }
    layers:
      - { kind: drainage, material: expanded-clay, thickness: 6 cm }
      - { kind: substrate, material: coir }
water: { level: 10 cm, fill: hard-tap, top-off: reverse-osmosis }
settled: { filter: matured, handles: 15 mg, algae: 0.5 g/m² }
room:
  temperature: { mean: 25 °C, season: 1 K, day: 1 K, peak: 07-25 }
  humidity: { mean: 65 %, season: 5 %, day: -3 %, peak: 08-10 }
  carbon-dioxide: 600 ppm
devices:
  lamps:
    - { name: Lamp, power: 10 W, lumens: 900 lm, on: 09:00, lit: 11 h }
  pump: { name: Sponge filter, power: 3 W, flow: 80 L/h, films: 0.3 m² }
animals:
  - { species: geosesarma-dennerle, zone: bank, adults: 6 }
routines:
  - { do: top-off, every: 3 d }
  - { do: water-change, share: 30 %, water: hard-tap, every: 14 d }
  - { do: feed, feed: shrimp-pellet, ${feed}, place: land, at: 21:00 }
actions:
  - { do: add-litter, material: oak-litter, mass: 60 g, place: land, after: 0 d }
  - { do: add-litter, material: oak-litter, mass: 60 g, place: land, after: 150 d }
`;

function crabs(feed: string, days: number) {
  const kept = keep(planOfFile(crabBox(feed)), days);
  return {
    adults: kept.course('population:geosesarma-dennerle:adult')!,
    young: kept.course('population:geosesarma-dennerle:juvenile')!,
    died: deathsIn(kept),
  };
}

describe('six land crabs (common practice, no source)', () => {
  it(
    'well fed show young within four months, near adult some five months later, and overfill the place in a few hundred days',
    () => {
      const { adults, young, died } = crabs('amount: 3 g, every: 3 d', 300);
      const shown = young.findIndex((count) => count >= 3);
      expect(shown).toBeGreaterThan(25);
      expect(shown).toBeLessThan(120);
      const grown = adults.findIndex((count, day) => day > shown && count > 6);
      expect(grown - shown).toBeGreaterThan(110);
      expect(grown - shown).toBeLessThan(230);
      expect(adults[299]! + young[299]!).toBeGreaterThan(10 * 6);
      expect(died.crowding).toBeGreaterThan(20);
    },
    SLOW,
  );

  it(
    'short of food turn on each other; protein every three to four days prevents most of it',
    () => {
      const eaten = (feed: string): number => crabs(feed, 360).died['eaten by own kind'];
      const hungry = eaten('amount: 1 g, every: 3 d');
      expect(hungry).toBeGreaterThan(10);
      for (const days of [3, 4])
        expect(eaten(`amount: ${days} g, every: ${days} d`)).toBeLessThan(0.2 * hungry);
      // As much protein, but every third week only: they go hungry between.
      expect(eaten('amount: 21 g, every: 21 d')).toBeGreaterThan(5);
    },
    SLOW,
  );
});

/** Bright, without plants, its stones well grown over; nobody feeds. */
const filmPool = (adults: number): string =>
  shrimpPool({
    adults,
    after: 5,
    handles: 15,
    algae: 3,
    warmth: 23,
    lamp: '{ name: Lamp, power: 8 W, lumens: 700 lm, on: 10:00, lit: 8 h }',
  });

describe('a crowded pool (common practice, no source)', () => {
  it(
    'without extra feed outgrazes its film and starves, a sparse one does neither',
    () => {
      const grazed = (adults: number): { film: number; starved: number; left: number } => {
        const kept = keep(planOfFile(filmPool(adults)), 120);
        const late = kept.course('attachedAlgae')!.subarray(60);
        const film = late.reduce((sum, value) => sum + value, 0) / late.length;
        const left = last(kept.course('population:neocaridina-davidi:adult')) / adults;
        return { film, starved: deathsIn(kept).starvation / adults, left };
      };
      const sparse = grazed(4);
      const crowd = grazed(300);
      expect(crowd.film).toBeLessThan(0.6 * sparse.film);
      expect(sparse.starved).toBeLessThan(0.05);
      expect(crowd.starved).toBeGreaterThan(0.2);
    },
    SLOW,
  );
});
