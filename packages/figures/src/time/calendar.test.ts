import fc from 'fast-check';
import { expect, it } from 'vitest';
import { calendarDay, dateLabel, monthStarts } from './calendar.ts';

it('counts days as the host calendar does, leap years and centuries included', () => {
  fc.assert(
    fc.property(
      fc.date({ min: new Date('1890-01-01'), max: new Date('2200-12-31'), noInvalidDate: true }),
      fc.integer({ min: 0, max: 2000 }),
      (start, days) => {
        const startDate = start.toISOString().slice(0, 10);
        const host = new Date(Date.parse(`${startDate}T00:00:00Z`) + days * 86_400_000);
        expect(calendarDay(startDate, days)).toEqual({
          year: host.getUTCFullYear(),
          month: host.getUTCMonth() + 1,
          dayOfMonth: host.getUTCDate(),
        });
      },
    ),
  );
});

it('names days and finds the beginnings of months', () => {
  expect(dateLabel('2024-02-28', 1)).toBe('29 Feb');
  expect(dateLabel('2023-02-28', 1)).toBe('1 Mar');
  expect(monthStarts('2025-11-24', 40).map(({ day, date }) => [day, date.month])).toEqual([
    [7, 12],
    [38, 1],
  ]);
});
