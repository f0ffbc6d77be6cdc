import type { FixedSeriesId } from '@shoreglass/engine';
import { describe, expect, test } from 'vitest';
import { keep, planOfFile } from './kept-files.ts';

const DAYS = 90;

/** A plain box of 25 L of rain water on sand in a warm room, with what lies in it; nobody lives there. */
function box(hardscape: readonly string[], more: readonly string[] = []): string {
  return [
    'shoreglass: 1',
    'name: Soft water',
    'start: 2026-03-01',
    'glass: { length: 50 cm, width: 30 cm, height: 35 cm, thickness: 6 mm }',
    'cover: { open: 10 % }',
    'zones:',
    '  - id: pool',
    '    kind: pool',
    '    from: 0 cm',
    '    to: 50 cm',
    '    ground: { left: 3 cm, right: 3 cm }',
    '    layers: [{ kind: substrate, material: coarse-sand }]',
    'water: { level: 19 cm, fill: rain, top-off: rain }',
    'room:',
    '  temperature: { mean: 23 °C, season: 0 K, day: 1 K, peak: 07-25 }',
    '  humidity: { mean: 55 %, season: 0 %, day: 0 %, peak: 08-10 }',
    ...(hardscape.length > 0 ? ['hardscape:', ...hardscape.map((piece) => `  - ${piece}`)] : []),
    'routines:',
    '  - { do: top-off, every: 3 d }',
    ...more,
  ].join('\n');
}

function courses(text: string) {
  const { course, record } = keep(planOfFile(text), DAYS);
  const series = (id: FixedSeriesId): Float64Array => course(id)!;
  return { series, closure: record.closure };
}

const WOOD = '{ id: wood, material: oak-wood, mass: 600 g }';
const CORAL = (grams: number) => `{ id: coral, material: crushed-coral, mass: ${grams} g }`;
const PEAT = (grams: number) => `{ id: peat, material: sphagnum-peat, mass: ${grams} g }`;

describe('slow forces in a plain box of rain water', () => {
  const bare = courses(box([]));
  const wood = courses(box([WOOD]));
  const buffered = courses(box([WOOD, CORAL(100)]));

  test('fresh wood takes it below pH 7 within weeks, and crushed coral stops that', () => {
    // common practice, no source
    expect(wood.series('pH')[27]!).toBeLessThan(6.8);
    expect(wood.series('pH')[DAYS - 1]!).toBeLessThan(6.8);
    expect(bare.series('pH')[27]! - wood.series('pH')[27]!).toBeGreaterThan(0.2);
    expect(buffered.series('pH')[27]!).toBeGreaterThan(7);
    expect(buffered.series('pH')[DAYS - 1]!).toBeGreaterThan(7.2);
  });

  test('bog wood takes weakly buffered water below pH 7 within weeks, which stays above it without the wood', () => {
    // common practice, no source; 0.5 °dKH to begin with. The filter is run in, so that ammonia of the first weeks, which a new
    // one leaves for a month in soft water, buffers neither
    const weak = (hardscape: readonly string[]) =>
      courses(
        box(hardscape, ['settled: { filter: matured, handles: 2 mg }']).replace(
          'fill: rain, top-off: rain',
          'fill: [{ water: distilled, share: 96 % }, { water: hard-tap, share: 4 % }], top-off: distilled',
        ),
      ).series('pH');
    const BOG_WOOD = '{ id: wood, material: bog-wood, mass: 1500 g }';
    const without = weak([]);
    const withIt = weak([BOG_WOOD]);
    for (const day of [13, 27, 41]) expect(without[day]!).toBeGreaterThan(7.1);
    expect(withIt[27]!).toBeLessThan(7);
    expect(withIt[41]!).toBeLessThan(without[41]! - 0.3);
    expect(weak([BOG_WOOD, CORAL(100)])[41]!).toBeGreaterThan(7.2);
  });

  test('wood colours the water so that one sees it', () => {
    expect(wood.series('colour')[DAYS - 1]!).toBeGreaterThan(bare.series('colour')[DAYS - 1]! + 20);
  });

  test('more coral never lowers carbonate hardness', () => {
    const runs = [0, 10, 50, 250].map((grams) => courses(box(grams > 0 ? [WOOD, CORAL(grams)] : [WOOD])));
    for (let k = 1; k < runs.length; k += 1)
      for (let day = 0; day < DAYS; day += 1)
        expect(runs[k]!.series('KH')[day]!).toBeGreaterThanOrEqual(runs[k - 1]!.series('KH')[day]! - 1e-3);
  });

  test('more wood never raises pH of distilled water', () => {
    // rain brings nitrogen, whose oxidation acid water slows: there wood may end a hundredth of pH higher
    const runs = [0, 150, 600, 2000].map((grams) =>
      courses(
        box(grams > 0 ? [`{ id: wood, material: oak-wood, mass: ${grams} g }`] : []).replace(
          'fill: rain, top-off: rain',
          'fill: distilled, top-off: distilled',
        ),
      ),
    );
    for (let k = 1; k < runs.length; k += 1)
      for (let day = 1; day < DAYS; day += 1)
        expect(runs[k]!.series('pH')[day]!).toBeLessThanOrEqual(runs[k - 1]!.series('pH')[day]! + 1e-3);
  });

  test('more peat never raises carbonate hardness, and it takes hard water down', () => {
    const hard = (grams: number) =>
      courses(
        box(grams > 0 ? [PEAT(grams)] : []).replace(
          'fill: rain',
          'fill: [{ water: hard-tap, share: 50 % }, { water: rain, share: 50 % }]',
        ),
      );
    const runs = [0, 20, 60, 180].map(hard);
    for (let k = 1; k < runs.length; k += 1)
      for (let day = 1; day < DAYS; day += 1)
        expect(runs[k]!.series('KH')[day]!).toBeLessThanOrEqual(runs[k - 1]!.series('KH')[day]! + 5e-3);
    expect(runs[3]!.series('KH')[DAYS - 1]!).toBeLessThan(0.75 * runs[0]!.series('KH')[DAYS - 1]!);
    // a gram of raw acid peat takes 0.3 to 1.2 meq: capacity times what is not saturated (Rippy & Nelson 2007)
    const taken = ((runs[0]!.series('KH')[10]! - runs[1]!.series('KH')[10]!) * 0.35665 * 24) / 20;
    expect(taken).toBeGreaterThan(0.3);
    expect(taken).toBeLessThan(1.2);
  });

  test('granules of baked soil soften water and hold it near pH 6 to 7', () => {
    const soil = courses(
      box([]).replace('coarse-sand', 'planting-granules').replace('fill: rain', 'fill: soft-tap'),
    );
    const sand = courses(box([]).replace('fill: rain', 'fill: soft-tap'));
    expect(soil.series('KH')[DAYS - 1]!).toBeLessThan(0.5 * sand.series('KH')[DAYS - 1]!);
    expect(soil.series('pH')[DAYS - 1]!).toBeGreaterThan(5.5);
    expect(soil.series('pH')[DAYS - 1]!).toBeLessThan(7.2);
    for (const [element, error] of Object.entries(soil.closure))
      expect(Math.abs(error), element).toBeLessThan(1e-10);
  });

  test('mud takes phosphate out of rich water down to what wetlands leave, sand and mud under sand do not', () => {
    const of = (ground: string, milligrams: number) =>
      courses(
        box(
          [],
          [
            `waters: [{ id: rich, source: invented, hardness: 8 °dGH, alkalinity: 6 °dKH, phosphate: ${milligrams} mg/L }]`,
          ],
        )
          .replace('[{ kind: substrate, material: coarse-sand }]', ground)
          .replace('fill: rain', 'fill: rich'),
      );
    const MUD = '[{ kind: substrate, material: pond-mud }]';
    const CAPPED =
      '[{ kind: substrate, material: pond-mud, thickness: 1 cm }, { kind: substrate, material: coarse-sand }]';
    const SAND = '[{ kind: substrate, material: coarse-sand }]';
    const leftOn = (run: ReturnType<typeof of>, day: number) => run.series('phosphate')[day]!;
    const [mud, sand, capped] = [of(MUD, 3), of(SAND, 3), of(CAPPED, 3)];
    // published: water of ponds over mud is rid of what dead fish bring within two to three weeks (Boros et al. 2015, abstract)
    expect(leftOn(mud, 21)).toBeLessThan(0.5 * leftOn(sand, 21));
    expect(leftOn(mud, DAYS - 1)).toBeLessThan(0.25 * leftOn(sand, DAYS - 1));
    expect(leftOn(capped, DAYS - 1)).toBeGreaterThan(0.9 * leftOn(sand, DAYS - 1));
    // wetlands come to rest at 0.01 to 0.05 mg/L (Kadlec 2016, abstract); here from below, above sand it goes on rising
    const [poor, last] = [of(MUD, 0), DAYS - 1];
    expect(leftOn(poor, last)).toBeGreaterThan(0.01);
    expect(leftOn(poor, last)).toBeLessThan(0.05);
    expect(leftOn(of(SAND, 0), last)).toBeGreaterThan(leftOn(poor, last));
    for (const [element, error] of Object.entries(mud.closure))
      expect(Math.abs(error), element).toBeLessThan(1e-10);
  });

  test('mist of tap water adds its salts, mist of rain hardly any', () => {
    const misted = (water: string) =>
      courses(box([], [`devices: { mister: { amount: 200 mL, at: ['08:00', '20:00'], water: ${water} } }`]));
    expect(misted('hard-tap').series('GH')[DAYS - 1]!).toBeGreaterThan(
      misted('rain').series('GH')[DAYS - 1]! + 1,
    );
  });

  test('every balance closes with wood, coral and peat in', () => {
    const { closure } = courses(
      box([WOOD, CORAL(50), PEAT(30), '{ id: leaves, material: alder-litter, mass: 10 g }']),
    );
    for (const [element, error] of Object.entries(closure))
      expect(Math.abs(error), element).toBeLessThan(1e-10);
  });
});
