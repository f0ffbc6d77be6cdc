import { loadBundledEnclosure } from '@shoreglass/contract';
import {
  type AheadDocument,
  expectedRun,
  type Plan,
  prepareOutlook,
  runMembers,
  summarise,
} from '@shoreglass/engine';
import { beforeAll, describe, expect, test } from 'vitest';

const { plan } = loadBundledEnclosure('beck-bank');
const OPTIONS = { days: 120, members: 6, seed: 11 };

function outlook(of: Plan, batches: readonly (readonly [number, number])[]): AheadDocument {
  const prepared = prepareOutlook(of, OPTIONS);
  return summarise(
    prepared,
    expectedRun(prepared),
    batches.map(([from, to]) => runMembers(prepared, from, to)),
  );
}

describe('the demo over 120 days', () => {
  let document: AheadDocument;
  beforeAll(() => {
    document = outlook(plan, [[0, 6]]);
  });

  test('every balance closes to 1e-10, events included', () => {
    for (const [element, error] of Object.entries(document.closure)) {
      expect(Math.abs(error), element).toBeLessThan(1e-10);
    }
  });
  test('the same seed gives the same bits, however the members are shared out', () => {
    const again = outlook(plan, [
      [4, 6],
      [0, 1],
      [1, 4],
    ]);
    expect(JSON.stringify(again)).toBe(JSON.stringify(document));
  });
  test('holds a series for everything promised, finite and as long as the run', () => {
    const promised = [
      ...[
        'pH',
        'KH',
        'GH',
        'conductivity',
        'totalAmmonia',
        'nitrite',
        'nitrate',
        'oxygen',
        'waterTemperature',
      ],
      ...['airTemperature', 'relativeHumidity', 'waterVolume', 'attachedAlgae', 'plantCover'],
      ...plan.populations.flatMap(({ id }) =>
        ['', ':brooded', ':juvenile', ':adult'].map((stage) => `population:${id}${stage}`),
      ),
    ];
    for (const id of promised) {
      const series = document.series[id];
      expect(series, id).toBeDefined();
      for (const row of [series?.expected, series?.q05, series?.q50, series?.q95]) {
        expect(row?.length, id).toBe(OPTIONS.days);
        expect(row?.every(Number.isFinite), id).toBe(true);
      }
    }
  });
  test('quantiles are in order on every day', () => {
    for (const { q05, q25, q50, q75, q95 } of Object.values(document.series)) {
      for (let day = 0; day < OPTIONS.days; day += 1) {
        const row = [q05[day], q25[day], q50[day], q75[day], q95[day]];
        expect([...row].sort((a = 0, b = 0) => a - b)).toEqual(row);
      }
    }
  });
  test('members count whole animals', () => {
    const prepared = prepareOutlook(plan, OPTIONS);
    const { series } = runMembers(prepared, 0, 2);
    const { seriesIds, days } = prepared.setting;
    for (const [s, id] of seriesIds.entries()) {
      if (!id.startsWith('population:')) continue;
      for (let member = 0; member < 2; member += 1) {
        const start = (member * seriesIds.length + s) * days;
        expect(series.subarray(start, start + days).every(Number.isInteger), id).toBe(true);
      }
    }
  });
  // Common practice, no source: a planted, part-covered box keeps 60 to 100 % humidity; well-stirred cool water is
  // near 8 to 11 mg/L oxygen (saturation by Benson & Krause at 15 to 22 °C: 8.7 to 10.1 mg/L).
  test('stays within what such boxes are known for', () => {
    const within = (id: string, low: number, high: number): void => {
      const expected = document.series[id]?.expected ?? [];
      expect(Math.min(...expected), id).toBeGreaterThan(low);
      expect(Math.max(...expected), id).toBeLessThan(high);
    };
    within('relativeHumidity', 60, 100.1);
    within('oxygen', 7, 11);
    within('pH', 6.5, 8.6);
    within('totalAmmonia', -1e-12, 2);
    within('waterVolume', 35, 60);
  });
});

describe('answers that must go one way', () => {
  const lastKH = (of: Plan): number => {
    const prepared = prepareOutlook(of, OPTIONS);
    const position = prepared.setting.seriesIds.indexOf('KH');
    return expectedRun(prepared).series[position]?.at(-1) ?? Number.NaN;
  };
  // In the demo's own water calcite is near saturation, and carbonate rightly does not dissolve.
  test('in rain water carbonate raises carbonate hardness, more of it no less', () => {
    const soft: Plan = { ...plan, water: { ...plan.water, fill: plan.water.topOff } };
    const withCarbonate = (amount: number): Plan => ({
      ...soft,
      actions: [...plan.actions, { kind: 'add carbonate', amount, grain: 0.003, day: 1 }],
    });
    const [none, some, more] = [lastKH(soft), lastKH(withCarbonate(0.2)), lastKH(withCarbonate(0.8))];
    expect(some).toBeGreaterThan(none);
    expect(more).toBeGreaterThanOrEqual(some);
  });
  test('more feed takes carbonate hardness down', () => {
    const fedMore: Plan = {
      ...plan,
      routines: plan.routines.map((routine) =>
        routine.kind === 'feed' ? { ...routine, mass: routine.mass * 3 } : routine,
      ),
    };
    expect(lastKH(fedMore)).toBeLessThan(lastKH(plan));
  });
  test('evaporation leaves minerals behind: without top-off, general hardness rises', () => {
    const prepared = prepareOutlook({ ...plan, routines: [] }, OPTIONS);
    const position = prepared.setting.seriesIds.indexOf('GH');
    const hardness = expectedRun(prepared).series[position];
    expect(hardness?.at(-1)).toBeGreaterThan((hardness?.[0] ?? 0) * 1.05);
  });
});

describe('options out of range', () => {
  test.each([
    [{ ...OPTIONS, days: 0 }, 'days must be a whole number from 1 to 1500, not 0'],
    [{ ...OPTIONS, members: 1 }, 'members must be a whole number from 2 to 2000, not 1'],
    [{ ...OPTIONS, seed: -1 }, 'seed must be a whole number'],
  ])('are refused in words', (options, message) => {
    expect(() => prepareOutlook(plan, options)).toThrow(message);
  });
});
