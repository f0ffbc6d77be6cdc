const DAYS_BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const;

/**
 * Returns the day of the year of an ISO date, 1 for the first of January [1..366].
 * @param date 'YYYY-MM-DD', Gregorian
 * @throws RangeError when it is not such a date.
 * @source derived
 */
export function dayOfYear(date: string): number {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date.slice(0, 10));
  const [year, month, day] = (parts ?? []).slice(1).map(Number);
  const before = DAYS_BEFORE_MONTH[(month ?? 0) - 1];
  if (year === undefined || month === undefined || !day || day > 31 || before === undefined) {
    throw new RangeError(`${date} is not a date of the form YYYY-MM-DD`);
  }
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return before + day + (isLeap && month > 2 ? 1 : 0);
}
