import type { AheadDocument, QuantileSeries, SeriesId } from '@shoreglass/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DAY_SERIES, dayStateOf } from './day/day-state.ts';
import { fanChartScene } from './fan/fan-chart.ts';
import { budgetBarsScene } from './marks/budget-bars.ts';
import { intervalLineScene } from './marks/interval-line.ts';
import { palette } from './palette/palette.ts';
import { ribbonScene } from './ribbon/ribbon-scene.ts';
import { type Scene, walkScene } from './scene/scene.ts';
import { sceneToSvg } from './scene/scene-to-svg.ts';
import { sectionHeight } from './section/layout.ts';
import { sectionLegend } from './section/section-legend.ts';
import type { SectionPlan } from './section/section-plan.ts';
import { sectionScene } from './section/section-scene.ts';
import { ALDER_CORNER } from './testdata/alder-corner.ts';
import { ALDER_YEAR } from './testdata/alder-year.ts';
import { CROWDED_CORNER, CROWDED_YEAR } from './testdata/crowded-corner.ts';

const value = fc.oneof(
  fc.double({ min: -50, max: 150, noNaN: true }),
  fc.constantFrom(0, 1e-9, 1e6, Number.NaN),
);

const series: fc.Arbitrary<QuantileSeries> = fc.integer({ min: 0, max: 6 }).chain((length) => {
  const values = fc.array(value, { minLength: length, maxLength: length });
  const sorted = fc.tuple(values, values, values, values, values, values);
  return sorted.map(([expected, q05, q25, q50, q75, q95]) => ({
    name: 'anything at all',
    unit: 'mg/L',
    days: Array.from({ length }, (_, index) => index * 20),
    expected,
    q05,
    q25,
    q50,
    q75,
    q95,
    band: { low: 3, high: 80, lowOwner: 'somebody', highOwner: 'somebody else' },
  }));
});

const IDS: readonly SeriesId[] = [
  ...DAY_SERIES,
  ...ALDER_CORNER.populations.map(({ id }) => `population:${id}` as const),
];

const documents: fc.Arbitrary<AheadDocument> = fc
  .dictionary(fc.constantFrom(...IDS), series)
  .map((all) => ({ ...ALDER_YEAR, series: { ...all } }));

/** A bare glass with one flat zone, dry or flooded. */
const bare = fc
  .record({
    ground: fc.double({ min: 0, max: 0.4, noNaN: true }),
    level: fc.double({ min: 0, max: 0.4, noNaN: true }),
    open: fc.constantFrom(0, 0.3, 1),
  })
  .map(
    ({ ground, level, open }): SectionPlan => ({
      ...ALDER_CORNER,
      id: 'bare glass 1&2',
      box: { ...ALDER_CORNER.box, coverOpenFraction: open },
      zones: ALDER_CORNER.zones.slice(0, 1).map((zone) => ({
        ...zone,
        to: ALDER_CORNER.box.length,
        groundStart: ground,
        groundEnd: ground,
      })),
      water: { level },
    }),
  );

function numbersOf(scene: Scene): number[] {
  return [...walkScene(scene)].flatMap(({ attributes }) =>
    Object.values(attributes).filter((attribute) => typeof attribute === 'number'),
  );
}

function expectDrawable(scene: Scene): void {
  expect(numbersOf(scene).every(Number.isFinite)).toBe(true);
  expect(sceneToSvg(scene)).not.toMatch(/NaN|Infinity|undefined/);
}

describe('scenes stay finite', () => {
  it('for sections of any outlook, day and size', () => {
    const days = fc.integer({ min: -5, max: 400 });
    const plans = fc.oneof(fc.constantFrom(ALDER_CORNER, CROWDED_CORNER), bare);
    fc.assert(
      fc.property(
        documents,
        days,
        plans,
        fc.boolean(),
        fc.integer({ min: 240, max: 1400 }),
        (document, day, plan, labels, width) => {
          const size = { width, height: sectionHeight({ plan, width, labels }) };
          expectDrawable(
            sectionScene({ plan, day: dayStateOf(document, day), size, palette: palette('day'), labels }),
          );
        },
      ),
      { numRuns: 40 },
    );
  });

  it('for ribbons and fan charts of any outlook', () => {
    fc.assert(
      fc.property(documents, fc.integer({ min: 280, max: 1400 }), (document, width) => {
        expectDrawable(
          ribbonScene({
            document,
            day: 40,
            today: 12,
            strips: IDS,
            width,
            rowHeight: 56,
            palette: palette('night'),
          }),
        );
        for (const [id, own] of Object.entries(document.series))
          expectDrawable(
            fanChartScene({
              id: id as SeriesId,
              series: own,
              name: own.name,
              startDate: '2026-02-27',
              width,
              height: 260,
              palette: palette('day'),
            }),
          );
      }),
      { numRuns: 40 },
    );
  });
});

describe('a fan chart', () => {
  const chart = (series: QuantileSeries, width = 600) =>
    fanChartScene({
      id: 'pH',
      series,
      name: 'pH',
      startDate: '2026-02-27',
      width,
      height: 260,
      palette: palette('day'),
    });
  const course = [7, 7.2, 7.1];
  const expectedOnly: QuantileSeries = {
    name: 'pH',
    unit: '',
    days: [0, 1, 2],
    expected: course,
    q05: course,
    q25: course,
    q50: course,
    q75: course,
    q95: course,
  };

  it('explains the lines and tones that it shows, and none that it does not', () => {
    const alone = sceneToSvg(chart(expectedOnly));
    expect(alone).toContain('expected run');
    for (const word of ['median', 'half of the runs', 'nine in ten', 'nine runs in ten'])
      expect(alone).not.toContain(word);
    for (const width of [600, 340, 240]) {
      const spread = sceneToSvg(chart({ ...expectedOnly, q95: [7.1, 7.4, 7.6] }, width));
      for (const word of ['median', 'half of the runs', 'nine in ten', 'expected run'])
        expect(spread, `${width} px wide`).toContain(word);
    }
  });
});

describe('a section', () => {
  const draw = (day: number, name: 'day' | 'night' = 'day') =>
    sectionScene({
      plan: CROWDED_CORNER,
      day: dayStateOf(CROWDED_YEAR, day),
      size: { width: 960, height: 560 },
      palette: palette(name),
      labels: true,
    });

  it('is the same drawing for the same numbers, and another on another day', () => {
    expect(sceneToSvg(draw(90))).toBe(sceneToSvg(draw(90)));
    expect(sceneToSvg(draw(90))).not.toBe(sceneToSvg(draw(200)));
  });

  it('refers only to definitions it holds, under names no other palette uses', () => {
    for (const name of ['day', 'night'] as const) {
      const svg = sceneToSvg(draw(90, name));
      const held = new Set(Array.from(svg.matchAll(/ id="([^"]+)"/g), (match) => match[1]));
      const used = Array.from(svg.matchAll(/url\(#([^)]+)\)/g), (match) => match[1]);
      expect(used.filter((id) => !held.has(id))).toEqual([]);
      for (const id of held) expect(id).toContain(name);
    }
  });

  it('uses colours of its palette alone', () => {
    for (const name of ['day', 'night'] as const) {
      const own = new Set<string>(Object.values(palette(name)));
      const used = Array.from(sceneToSvg(draw(90, name)).matchAll(/#[0-9a-f]{6}\b/g), (match) => match[0]);
      expect([...new Set(used)].filter((colour) => !own.has(colour))).toEqual([]);
    }
  });

  it('raises and lowers its water with the day', () => {
    const level = (centimetres: number) => {
      const flat = { name: 'level', unit: 'cm', days: [0], expected: [centimetres] };
      const all = [centimetres];
      const document = {
        ...ALDER_YEAR,
        series: { waterLevel: { ...flat, q05: all, q25: all, q50: all, q75: all, q95: all } },
      };
      const scene = sectionScene({
        plan: ALDER_CORNER,
        day: dayStateOf(document, 0),
        size: { width: 960, height: 560 },
        palette: palette('day'),
        labels: true,
      });
      const caption = [...walkScene(scene)].find(
        ({ attributes }) => attributes['data-part'] === 'level-caption',
      );
      const [text] = caption?.children ?? [];
      return typeof text === 'object' ? Number(text.attributes.y) : Number.NaN;
    };
    const pixelsPerCentimetre = (level(10) - level(14)) / 4;
    const lowest = level(8);
    expect(lowest - level(12)).toBeCloseTo(4 * pixelsPerCentimetre, 1);
    expect(pixelsPerCentimetre).toBeGreaterThan(4);
  });

  it('has a legend with a letter for each thing it names, and words for what needs the keeper', () => {
    const legend = sectionLegend({ plan: CROWDED_CORNER, day: dayStateOf(CROWDED_YEAR, 10) });
    expect(new Set(legend.map(({ letter }) => letter)).size).toBe(legend.length);
    expect(legend.find(({ name }) => name === 'millipedes')?.alarm).toBe('above 5000');
  });
});

it('draws an interval line', () => {
  const [turningPoint] = ALDER_YEAR.turningPoints;
  if (!turningPoint) throw new Error('the invented year has turning points');
  expect(
    sceneToSvg(intervalLineScene({ turningPoint, days: 300, width: 180, palette: palette('day') })),
  ).toMatchSnapshot();
});

it('draws budget bars', () => {
  const terms = [
    { term: 'organic acids from wood', share: 0.58 },
    { term: 'nitrification', share: 0.27 },
  ];
  expect(
    sceneToSvg(budgetBarsScene({ terms, width: 240, palette: palette('day'), id: 'KH 1' })),
  ).toMatchSnapshot();
});
