import type { Plan } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Kept, keep, last, planOfFile } from './kept-files.ts';

const DAYS = 100;
const DUCKWEED = '  - { plant: lemna-minor, zone: pool, cover: 20 % }\n';
const SWEET_FLAG = '  - { plant: acorus-gramineus, zone: margin, cover: 60 % }\n';
const CUT = '  - { do: trim, plants: floating, keep: 10 %, every: 10 d, after: 20 d }\n';

/** The demo with other plants, a bright lamp, plenty of feed, and no animals, whose young differ from plan to plan. */
function planOf(plants: string, care = ''): Plan {
  const text = library
    .enclosure('beck-bank')
    .replace(/\nplants:\n(?: {2}- .*\n)+/, `\nplants:\n${plants}`)
    .replace(/\nanimals:\n(?: {2}.*\n)+/, '\n')
    .replace('lumens: 3100 lm', 'lumens: 9000 lm')
    .replace('amount: 0.12 g', 'amount: 1 g')
    .replace('\nroutines:\n', `\nroutines:\n${care}`);
  return planOfFile(text);
}

const kept = (plants: string, care?: string): Kept => keep(planOf(plants, care), DAYS);

describe('plants on the water and in wet ground, in a whole enclosure', () => {
  let bare: Kept;
  let floating: Kept;
  let cut: Kept;
  let margin: Kept;
  beforeAll(() => {
    bare = kept('  - { plant: hypnum-cupressiforme, zone: bank, cover: 35 % }\n');
    floating = kept(DUCKWEED);
    cut = kept(DUCKWEED, CUT);
    margin = kept(SWEET_FLAG);
  });

  test('every balance closes to 1e-10', () => {
    for (const { record } of [bare, floating, cut, margin])
      for (const [element, error] of Object.entries(record.closure))
        expect(Math.abs(error), element).toBeLessThan(1e-10);
  });

  test('start with the cover the file states', () => {
    expect(floating.course('floatingCover')![0]).toBeGreaterThan(15);
    expect(floating.course('floatingCover')![0]).toBeLessThan(30);
    expect(margin.course('emersedCover')![0]).toBeCloseTo(60, 0);
  });

  test('are followed only where they are planted', () => {
    expect(bare.course('floatingCover')).toBeUndefined();
    expect(bare.course('emersedCover')).toBeUndefined();
    expect(floating.plan.notModelled.join(' ')).not.toContain('uckweed');
    expect(margin.plan.notModelled.join(' ')).not.toContain('weet flag');
  });

  test('duckweed spreads, takes nutrients and shades the algae under it', () => {
    expect(last(floating.course('floatingCover'))).toBeGreaterThan(50);
    expect(last(floating.course('nitrate'))).toBeLessThan(last(bare.course('nitrate')));
    expect(last(floating.course('phosphate'))).toBeLessThan(last(bare.course('phosphate')));
    expect(last(floating.course('attachedAlgae'))).toBeLessThan(0.7 * last(bare.course('attachedAlgae')));
  });

  test('duckweed is cut back by the care that says so', () => {
    expect(last(cut.course('floatingCover'))).toBeLessThan(40);
  });

  test('sweet flag in the margin lives on the water', () => {
    expect(last(margin.course('emersedCover'))).toBeGreaterThan(30);
    expect(last(margin.course('nitrate'))).toBeLessThan(last(bare.course('nitrate')));
  });

  test('sweet flag gives off water of the pool, which the top-off makes good', () => {
    // little: what leaves a covered box is bounded by its opening, and the leaves moisten the air they give off into
    const sum = (course: Float64Array | undefined): number => course!.reduce((all, each) => all + each, 0);
    const [dry, planted] = [bare, margin].map(({ course }) => sum(course('topOff')));
    expect(planted!).toBeGreaterThan(1.005 * dry!);
    expect(sum(margin.course('relativeHumidity'))).toBeGreaterThan(sum(bare.course('relativeHumidity')));
  });
});
