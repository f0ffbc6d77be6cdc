import { describe, expect, it } from 'vitest';
import { turnedTo } from './room-of.ts';

const hours = (days: number) => Float64Array.from({ length: days * 24 }, (_, hour) => Math.floor(hour / 24));
const record = (days: number, firstDay: string) => ({
  name: 'room',
  source: 'invented',
  firstDay,
  temperature: hours(days),
  humidity: hours(days),
});

describe('turnedTo', () => {
  it('starts a record of a year on the plan’s day of the year and brings its head to the end', () => {
    // 1 March is day 59 after 1 January in an ordinary year.
    const { temperature, humidity } = turnedTo(record(365, '2013-01-01'), '2026-03-01');
    expect(temperature[0]).toBe(59);
    expect(temperature[24 * 305]).toBe(364);
    expect(temperature[24 * 306]).toBe(0);
    expect(temperature[24 * 365 - 1]).toBe(58);
    expect([...humidity]).toEqual([...temperature]);
  });
  it('goes round the turn of the year', () => {
    // From 1 November back to 1 February: 92 days on, a year round from there.
    expect(turnedTo(record(365, '2013-11-01'), '2026-02-01').temperature[0]).toBe(92);
  });
  it('leaves a shorter record as it is', () => {
    expect(turnedTo(record(30, '2013-01-01'), '2026-03-01').temperature[0]).toBe(0);
  });
});
