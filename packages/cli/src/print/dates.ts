const DAY = 86_400_000;
const FORMAT = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' });

/** The calendar day of a day of the run, such as '12 May'. */
export function calendarDay(startDate: string, day: number): string {
  return FORMAT.format(new Date(Date.parse(`${startDate}T00:00:00Z`) + Math.round(day) * DAY));
}
