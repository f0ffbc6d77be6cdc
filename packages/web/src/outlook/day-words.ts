import { calendarDay, MONTHS } from '@shoreglass/figures';

/** "14 May 2026" of a day of the run. */
export function fullDate(startDate: string, day: number): string {
  const { dayOfMonth, month, year } = calendarDay(startDate, day);
  return `${dayOfMonth} ${MONTHS[month - 1]} ${year}`;
}

/** "day 171", counted from 0 on the first day of the run. */
export function dayNumber(day: number): string {
  return `day ${Math.round(day)}`;
}

/** "61 days", "1 day" */
export function daysText(days: number): string {
  const whole = Math.round(days);
  return whole === 1 ? '1 day' : `${whole} days`;
}
