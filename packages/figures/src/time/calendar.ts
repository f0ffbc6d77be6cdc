export interface CalendarDay {
  readonly year: number;
  /** 1 to 12 */
  readonly month: number;
  readonly dayOfMonth: number;
}

export const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** Name of month 1 to 12 in three letters, or four where three would mislead nobody but look clipped. */
export function shortMonth(month: number): string {
  const name = MONTHS[month - 1] ?? '';
  return name.length <= 4 ? name : name.slice(0, 3);
}

/** Calendar day of a day of the run; `startDate` is the ISO date of day 0. */
export function calendarDay(startDate: string, day: number): CalendarDay {
  const [year = 1970, month = 1, dayOfMonth = 1] = startDate.slice(0, 10).split('-').map(Number);
  return civilDay(dayNumber(year, month, dayOfMonth) + Math.floor(day));
}

/** "2026-05-14" of a day of the run. */
export function isoDay(startDate: string, day: number): string {
  const { year, month, dayOfMonth } = calendarDay(startDate, day);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${year}-${two(month)}-${two(dayOfMonth)}`;
}

/** "14 May" of a day of the run. */
export function dateLabel(startDate: string, day: number): string {
  const date = calendarDay(startDate, day);
  return `${date.dayOfMonth} ${shortMonth(date.month)}`;
}

/** Days of the run, within 0 to `days`, on which a month begins. */
export function monthStarts(startDate: string, days: number): { day: number; date: CalendarDay }[] {
  const starts: { day: number; date: CalendarDay }[] = [];
  for (let day = 0; day <= days; day++) {
    const date = calendarDay(startDate, day);
    if (date.dayOfMonth === 1) starts.push({ day, date });
  }
  return starts;
}

/**
 * Days from 1970-01-01 in the proleptic Gregorian calendar; the year is counted from March, so that the leap day
 * is its last.
 * @source derived: 146097 days in 400 years, 153 days in the 5 months from March
 */
function dayNumber(year: number, month: number, dayOfMonth: number): number {
  const marchYear = month <= 2 ? year - 1 : year;
  const marchMonth = (month + 9) % 12;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  return marchYear * 365 + leapDays + Math.floor((153 * marchMonth + 2) / 5) + dayOfMonth - 719469;
}

function civilDay(number: number): CalendarDay {
  const shifted = number + 719468;
  const era = Math.floor(shifted / 146097);
  const dayOfEra = shifted - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = ((marchMonth + 2) % 12) + 1;
  const year = era * 400 + yearOfEra + (month <= 2 ? 1 : 0);
  return { year, month, dayOfMonth: dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1 };
}
