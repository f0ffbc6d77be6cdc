import { expectedRun, type Plan, prepareOutlook, runMembers, summarise } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Kept, keep, last, planOfFile } from './kept-files.ts';

const DAYS = 150;
const MOSS = '  - { plant: hypnum-cupressiforme, zone: bank, cover: 40 % }\n';
const FERN = '  - { plant: asplenium-scolopendrium, zone: bank, cover: 30 % }\n';
const SPRINKLED = '  - { plant: hypnum-cupressiforme, zone: bank, cover: 40 %, start: fragments }\n';
const CUT =
  '  - { do: trim, plants: land, zone: bank, keep: 20 %, cuttings: left, every: 30 d, after: 30 d }\n';

interface Given {
  readonly plants: string;
  readonly care?: string;
  readonly room?: string;
  readonly lumens?: number;
  readonly open?: number;
}

/** The demo with other plants and care, without animals, whose young differ from plan to plan. */
function planOf({ plants, care = '', room, lumens = 3100, open = 3 }: Given): Plan {
  const text = library
    .enclosure('beck-bank')
    .replace(/\nplants:\n(?: {2}- .*\n)+/, `\nplants:\n${plants}`)
    .replace(/\nanimals:\n(?: {2}.*\n)+/, '\n')
    .replace('lumens: 3100 lm', `lumens: ${lumens} lm`)
    .replace('open: 3 %', `open: ${open} %`)
    .replace('humidity: { mean: 55 %', `humidity: { mean: ${room ?? '55 %'}`)
    .replace('\nroutines:\n', `\nroutines:\n${care}`);
  return planOfFile(text);
}

const kept = (given: Given): Kept => keep(planOf(given), DAYS);
const MOSS_COVER = 'planting:bank-hypnum-cupressiforme-1';
const FERN_COVER = 'planting:bank-asplenium-scolopendrium-2';

describe('moss and plants on land, in a whole enclosure', () => {
  let both: Kept;
  let cut: Kept;
  let sprinkled: Kept;
  let dark: Kept;
  beforeAll(() => {
    both = kept({ plants: MOSS + FERN });
    cut = kept({ plants: MOSS + FERN, care: CUT });
    sprinkled = kept({ plants: SPRINKLED });
    dark = kept({ plants: MOSS + FERN, lumens: 100 });
  });

  test('every balance closes to 1e-10', () => {
    for (const { record } of [both, cut, sprinkled, dark])
      for (const [element, error] of Object.entries(record.closure))
        expect(Math.abs(error), element).toBeLessThan(1e-10);
  });

  test('are computed and no longer told as drawn only', () => {
    expect(both.plan.notModelled.join(' ')).not.toMatch(/moss|fern/i);
    expect(both.course(MOSS_COVER)?.[0]).toBeCloseTo(40, 0);
    expect(both.course(FERN_COVER)?.[0]).toBeCloseTo(30, 0);
    expect(last(both.course('transpiration'))).toBeGreaterThan(0);
    expect(sprinkled.course('transpiration')).toBeUndefined();
  });

  test('covers stay between nothing and all', () => {
    for (const { course } of [both, cut, sprinkled, dark])
      for (const cover of course(MOSS_COVER) ?? []) {
        expect(cover).toBeGreaterThanOrEqual(0);
        expect(cover).toBeLessThanOrEqual(100);
      }
  });

  test('ferns spread in good light and both shrink in the dark', () => {
    expect(last(both.course(FERN_COVER))).toBeGreaterThan(40);
    expect(last(dark.course(FERN_COVER))).toBeLessThan(30);
    expect(last(dark.course(MOSS_COVER))).toBeLessThan(30);
  });

  test('cutting holds the fern and lets light to the moss', () => {
    expect(Math.max(...(cut.course(FERN_COVER)?.slice(31) ?? []))).toBeLessThan(
      last(both.course(FERN_COVER)),
    );
    expect(last(cut.course(MOSS_COVER))).toBeGreaterThan(last(both.course(MOSS_COVER)));
  });

  test('fragments wait before they grow', () => {
    const course = sprinkled.course(MOSS_COVER);
    expect(course?.[25]).toBeCloseTo(40, 6);
    expect(last(course)).toBeGreaterThan(41);
  });

  test('under an open cover in a dry room moss fares worse', () => {
    const dry = kept({ plants: MOSS, room: '30 %', open: 90 });
    const moist = kept({ plants: MOSS });
    expect(last(dry.course('relativeHumidity'))).toBeLessThan(70);
    expect(last(dry.course(MOSS_COVER))).toBeLessThan(last(moist.course(MOSS_COVER)));
  });

  test('every kind of moss, land and margin of the library lives a month there', () => {
    const kinds = Object.values(library.data.plants).filter(({ group }) =>
      ['moss', 'land', 'emersed'].includes(group),
    );
    expect(kinds.length).toBeGreaterThan(20);
    const plants = kinds.map(({ id }) => `  - { plant: ${id}, zone: bank, cover: 3 % }\n`).join('');
    const prepared = prepareOutlook(planOf({ plants }), { days: 30, members: 2, seed: 1 });
    expect(prepared.setting.stands).toHaveLength(kinds.length);
    const { series, closure } = expectedRun(prepared);
    for (const [k, id] of prepared.setting.seriesIds.entries())
      if (id.startsWith('planting:')) expect(series[k]?.at(-1), id).toBeGreaterThan(1);
    for (const [element, error] of Object.entries(closure))
      expect(Math.abs(error), element).toBeLessThan(1e-10);
  });

  test('what fails is told with its cause', () => {
    const prepared = prepareOutlook(planOf({ plants: MOSS + FERN, lumens: 100 }), {
      days: DAYS,
      members: 4,
      seed: 1,
    });
    const ahead = summarise(prepared, expectedRun(prepared), [runMembers(prepared, 0, 4)]);
    const failing = ahead.turningPoints.find(({ subject }) => subject === MOSS_COVER);
    expect(failing?.kind).toBe('falls below');
    expect(failing?.because[0]?.term).toBe('too little light');
    expect(failing?.sentence).toMatch(/^Cover of plait moss falls below 20 %/);
  });
});
