import { readEnclosure } from '@shoreglass/contract';
import { expectedRun, prepareOutlook, runMembers } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, test } from 'vitest';
import { planOfFile } from './kept-files.ts';

const MEMBERS = 60;
const DAYS = 3;

/** The demo with nothing but what may come along on bought plants. */
function textWith(animals: string, plants = ''): string {
  return library
    .enclosure('beck-bank')
    .replace(
      /\nplants:\n(?: {2}- .*\n)+/,
      `\nplants:\n  - { plant: ceratophyllum-demersum, zone: pool, cover: 15 % }\n${plants}`,
    )
    .replace(/\nanimals:\n(?: {2}.*\n)+/, `\nanimals:\n${animals}`);
}

describe('what comes along by accident', () => {
  test('is there in its share of the runs, keeps no band, and every run closes', () => {
    const text = textWith(
      '  - { species: physella-acuta, zone: pool, adults: 2, chance: 40 % }\n',
      '  - { plant: lemna-minor, zone: pool, cover: 1 %, chance: 40 % }\n',
    );
    const plan = planOfFile(text);
    expect(plan.bands.map(({ owner }) => owner)).not.toContain('Physella acuta');
    const prepared = prepareOutlook(plan, { days: DAYS, members: MEMBERS, seed: 3 });
    const { seriesIds } = prepared.setting;
    const { series } = runMembers(prepared, 0, MEMBERS);
    const sharePresent = (id: (typeof seriesIds)[number]): number => {
      const at = seriesIds.indexOf(id);
      const there = Array.from(
        { length: MEMBERS },
        (_, member) => series[(member * seriesIds.length + at) * DAYS]! > 0,
      );
      return there.filter(Boolean).length / MEMBERS;
    };
    // Four standard errors of 0.4 in 60 draws are 0.25
    for (const id of ['population:physella-acuta', 'floatingCover'] as const)
      expect(Math.abs(sharePresent(id) - 0.4), id).toBeLessThan(0.25);
    const record = expectedRun(prepared);
    for (const [element, error] of Object.entries(record.closure))
      expect(Math.abs(error), element).toBeLessThan(1e-10);
    expect(record.series[seriesIds.indexOf('population:physella-acuta')]![0]).toBe(0);
  });

  test('cannot come on a later day', () => {
    const { problems } = readEnclosure(
      textWith('  - { species: physella-acuta, zone: pool, adults: 2, chance: 40 %, after: 20 d }\n'),
      'guests.yaml',
    );
    const told = JSON.stringify(problems);
    expect(told).toContain('is given beside a day on which they move in');
    expect(told).toContain('Leave out `after`');
  });
});
