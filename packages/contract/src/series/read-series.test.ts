import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSeries } from './read-series.ts';

const head = '# name: Cellar\n# source: own logger\n';
const rows = (count: number, row: (index: number) => string) =>
  Array.from({ length: count }, (_, index) => row(index)).join('\n');
const clock = (minutes: number) =>
  `2026-01-0${1 + Math.floor(minutes / 1440)} ${String(Math.floor(minutes / 60) % 24).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

describe('readSeries', () => {
  it('reads start and step, with °F and decimal commas', () => {
    const text = `${head}# start: 2026-01-01 00:00\n# step: 1 h\ntemperature [°F];humidity [%]\n${rows(24, () => '50,0;80,5')}\n`;
    const { series } = readSeries(text, 'cellar.csv');
    expect(series?.name).toBe('Cellar');
    expect(series?.firstDay).toBe('2026-01-01');
    expect(series?.temperature).toHaveLength(24);
    expect(series?.temperature[5]).toBeCloseTo(10, 12);
    expect(series?.humidity[5]).toBeCloseTo(0.805, 12);
  });

  it('averages finer steps and starts at the first midnight', () => {
    // Every 20 minutes from noon of the first day to noon of the third; temperature = minutes since the start / 60.
    const text = `time,temperature [°C],humidity [%]\n${rows(144, (index) => `${clock(720 + index * 20)},${(index / 3).toFixed(6)},50`)}`;
    const { series } = readSeries(text, 'a.csv');
    expect(series?.firstDay).toBe('2026-01-02');
    expect(series?.temperature).toHaveLength(24);
    // 01-02 00:00, 00:20, 00:40 are 12 h, 12.333 h and 12.667 h after the start.
    expect(series?.temperature[0]).toBeCloseTo((12 + 12 + 1 / 3 + 12 + 2 / 3) / 3, 5);
  });

  it('fills a gap of some hours in a straight line and refuses a longer one', () => {
    const hours = (left: (hour: number) => boolean) =>
      `time,temperature [°C],humidity [%]\n${rows(24, (hour) => (left(hour) ? `${clock(hour * 60)},${hour},${hour}` : '')).replaceAll(/\n+/g, '\n')}`;
    const { series } = readSeries(
      hours((hour) => hour < 5 || hour > 8),
      'a.csv',
    );
    expect(series?.temperature[6]).toBeCloseTo(6, 9);
    const { problems } = readSeries(
      hours((hour) => hour < 5 || hour > 12),
      'a.csv',
    );
    expect(problems?.[0]).toMatchObject({ line: 7, message: expect.stringContaining('six hours') });
  });

  it.each([
    ['', 'is empty'],
    ['temperature [°C]\n1', "no column 'humidity'"],
    ['temperature,humidity\n1,2', 'no unit'],
    ['temperature [L],humidity [%]\n1,2', 'no unit'],
    ['temperature [°C],humidity [%]\n1,2', 'neither times'],
    ['time,temperature [°C],humidity [%]\n2026-01-01 00:00,1,2', 'one whole day'],
    ['time,temperature [°C],humidity [%]\nyesterday,1,2', 'has no time'],
    ['time,temperature [°C],humidity [%]\n2026-02-31 00:00,1,2', 'has no time'],
    [`temperature [°C],humidity [%]\n${'1'.repeat(13_000_000)}`, 'longer than'],
  ])('refuses %#', (text, message) => {
    expect(
      readSeries(text, 'a.csv')
        .problems?.map((problem) => problem.message)
        .join('\n'),
    ).toContain(message);
  });

  it('tells each bad row with line and column', () => {
    const text = readFileSync(join(import.meta.dirname, '..', 'testdata', 'room-with-holes.csv'), 'utf8');
    expect(
      readSeries(text, 'room.csv').problems?.map(({ line, column, message }) => [line, column, message]),
    ).toEqual([
      [4, 23, 'humidity is not a number in % within reason'],
      [5, 1, 'has 2 cells in place of 3'],
      [6, 1, 'goes back in time'],
      [7, 18, 'temperature is not a number in °C within reason'],
    ]);
  });

  it('never throws', () => {
    fc.assert(fc.property(fc.string(), (noise) => void readSeries(noise, 'a.csv')));
    fc.assert(
      fc.property(
        fc.string(),
        (noise) => void readSeries(`time,temperature [°C],humidity [%]\n${noise}`, 'a.csv'),
      ),
    );
  });
});
