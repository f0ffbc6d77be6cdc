import { LAND_PLANT_CAUSES, type Plan, type SeriesId } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { beforeAll, describe, expect, test } from 'vitest';
import { foodFlows } from '../packages/engine/src/community/food-flows.ts';
import { plantOutlooks } from '../packages/engine/src/community/plant-outlook.ts';
import { bookReader } from '../packages/engine/src/outlook/book-reader.ts';
import { expectedDocument } from '../packages/engine/src/outlook/summarise.ts';
import { keep, last, planOfFile } from './kept-files.ts';

const DAYS = 200;
const SOFT = '  - { plant: pilea-depressa, zone: bank, cover: 30 % }\n';
const TOUGH = '  - { plant: marcgravia-umbellata, zone: bank, cover: 30 % }\n';
const PLANTS = `${SOFT}${TOUGH}  - { plant: elodea-nuttallii, zone: pool, cover: 30 % }\n  - { plant: acorus-gramineus, zone: margin, cover: 40 % }\n`;
const CRAYFISH = '  - { species: procambarus-virginalis, zone: pool, adults: 6 }\n';
const WOODLICE = '  - { species: porcellio-scaber, zone: bank, adults: 200 }\n';

/** The demo with other plants and animals, without feed, leaves or wood. */
function planOf(animals: string): Plan {
  const text = library
    .enclosure('beck-bank')
    .replace(/\nplants:\n(?: {2}- .*\n)+/, `\nplants:\n${PLANTS}`)
    .replace(/\nanimals:\n(?: {2}.*\n)+/, animals ? `\nanimals:\n${animals}` : '\n')
    .replace(/ {2}- \{ do: feed.*\n/g, '');
  return planOfFile(text);
}

function kept(animals: string) {
  const run = keep(planOf(animals), DAYS);
  const { plan, prepared, record } = run;
  const { shape } = bookReader(prepared);
  return {
    ...run,
    flows: foodFlows({ plan, shape, rows: record.bookRows, days: DAYS }),
    plants: plantOutlooks(prepared, record, expectedDocument(prepared, record).series, shape),
  };
}

const SOFT_COVER = 'planting:bank-pilea-depressa-1' as const;
const TOUGH_COVER = 'planting:bank-marcgravia-umbellata-2' as const;

describe('animals that eat living plants, in a whole enclosure', () => {
  let alone: ReturnType<typeof kept>;
  let eaten: ReturnType<typeof kept>;
  beforeAll(() => {
    alone = kept('');
    eaten = kept(CRAYFISH + WOODLICE);
  });

  test('every balance closes to 1e-10', () => {
    for (const { record } of [alone, eaten])
      for (const [element, error] of Object.entries(record.closure))
        expect(Math.abs(error), element).toBeLessThan(1e-10);
  });

  test('leave less of water plants than grows without them', () => {
    expect(last(eaten.course('plantCover'))).toBeLessThan(last(alone.course('plantCover')));
    const foods = eaten.flows.map(({ eater, food }) => `${eater}: ${food}`);
    expect(foods).toContain('procambarus-virginalis: plants');
    expect(foods).toContain('procambarus-virginalis: dead plants');
    expect(foods).toContain('porcellio-scaber: land plants');
    expect(foods).toContain('porcellio-scaber: marsh plants');
  });

  test('take soft plants rather than tough ones, and are told as what kept them back', () => {
    const share = (cover: SeriesId): number => last(eaten.course(cover)) / last(alone.course(cover));
    expect(share(SOFT_COVER)).toBeLessThan(share(TOUGH_COVER));
    const cause = LAND_PLANT_CAUSES.at(-1)!;
    expect(cause).toBe('eaten by animals');
    const told = eaten.plants.map(({ id, heldBack }) => [id, heldBack[cause]] as const);
    expect(told.find(([id]) => id === 'bank-pilea-depressa-1')![1]).toBeGreaterThan(0);
    for (const { heldBack } of alone.plants) expect(heldBack[cause] ?? 0).toBe(0);
  });
});
