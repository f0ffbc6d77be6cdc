import { loadBundledEnclosure, startFromReadings } from '@shoreglass/contract';
import { expect, test } from 'vitest';
import { inventedOutlook } from '../../../outlook/testdata/invented-outlook.ts';
import { standingOf } from './against-outlook.ts';
import { readingsLine } from './measured-year.ts';
import { isoDate, localDate, readingsBySeries } from './readings-store.ts';

const outlook = inventedOutlook({});
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

test('a reading outside somebody’s band names the owner and the limit', () => {
  const low = standingOf(outlook, 'KH', { value: 2.4, day: 0 });
  expect(plain(low?.band)).toBe('Below 3.0 °dKH, the limit of amphipods.');
  expect(low?.alarm).toBe(true);
  expect(standingOf(outlook, 'KH', { value: 3.4, day: 0 })?.alarm).toBe(false);
  expect(standingOf(outlook, 'pH', { value: 7, day: 0 })?.band).toBe('Nobody here sets a limit.');
});

test('it is held against the runs of its day, and against none on a day without one', () => {
  expect(plain(standingOf(outlook, 'KH', { value: 4, day: 0 })?.outlook)).toBe(
    'Higher than nineteen runs in twenty (1.0 °dKH to 1.0 °dKH).',
  );
  expect(standingOf(outlook, 'KH', { value: 4, day: undefined })?.outlook).toBe('');
  expect(standingOf(inventedOutlook({ members: 1 }), 'KH', { value: 4, day: 0 })?.outlook).toBe('');
});

test('points fall on the day of the run their date is', () => {
  const points = readingsBySeries(
    [
      { on: '2026-03-11', values: { pH: 7.2, KH: 4 } },
      { on: '2025-01-01', values: { pH: 6 } },
    ],
    outlook,
  );
  expect(points.get('pH')).toEqual([{ day: 10, value: 7.2 }]);
  expect(points.get('KH')).toEqual([{ day: 10, value: 4 }]);
  expect(isoDate(localDate('2026-12-31'))).toBe('2026-12-31');
});

test('a day’s readings become one line that the engine reads; warmth and oxygen are no part of the water', () => {
  const values = { KH: 4, pH: 7.2, waterTemperature: 21, nitrate: 2.26, oxygen: 8 };
  const line = readingsLine({ on: '2026-03-11', values });
  expect(line).toBe('pH 7.2, KH 4 °dKH, NO3 2.26 mg N/L');
  const { plan } = loadBundledEnclosure('beck-bank');
  const started = startFromReadings(plan, line);
  expect('wrong' in started ? started.wrong : started.readings).toHaveLength(3);
});
