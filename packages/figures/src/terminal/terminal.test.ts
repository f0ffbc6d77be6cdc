import { expect, it } from 'vitest';
import { ALDER_YEAR } from '../testdata/alder-year.ts';
import { condensed, sparkline } from './sparkline.ts';
import { textFan } from './text-fan.ts';

it('draws a straight rise with every block once', () => {
  expect(sparkline([0, 1, 2, 3, 4, 5, 6, 7], 8)).toBe('▁▂▃▄▅▆▇█');
  expect(sparkline([0, 1, 2, 3, 4, 5, 6, 7], 8, { ascii: true })).toBe('_.:-=+*#');
});

it('averages stretches where there are more values than columns, and leaves gaps open', () => {
  expect(condensed([1, 3, 5, 7], 2)).toEqual([2, 6]);
  expect(sparkline([0, Number.NaN, 7], 3)).toBe('▁ █');
  expect(sparkline([], 10)).toBe('');
  expect(sparkline([4, 4, 4], 3)).toBe('▅▅▅');
});

it('writes a fan within its width and height, in plain characters when asked', () => {
  const series = ALDER_YEAR.series.KH;
  if (!series) throw new Error('the invented year has carbonate hardness');
  const lines = textFan({ id: 'KH', series, width: 60, height: 10, ascii: true });
  expect(lines).toHaveLength(10);
  for (const line of lines) {
    expect(line.length).toBeLessThanOrEqual(60);
    expect(line).toMatch(/^[ -~]*$/);
  }
  expect(lines.some((line) => line.startsWith('>= 3 |'))).toBe(true);
  const medianRows = lines.map((line, row) => (line.includes('#') ? row : -1)).filter((row) => row >= 0);
  expect(medianRows.length).toBeGreaterThan(2);
});
