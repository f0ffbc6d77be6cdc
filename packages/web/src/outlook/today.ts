const DAY_MILLISECONDS = 86_400_000;

/** Day of the run that a calendar date is, by its date alone; undefined outside the run. */
export function dayOfRun(startDate: string, days: number, now: Date): number | undefined {
  const [year = 1970, month = 1, dayOfMonth = 1] = startDate.split('-').map(Number);
  const start = Date.UTC(year, month - 1, dayOfMonth);
  const today = Date.UTC(now.getFullYear(), now.getMonth(), now.getDate());
  const day = Math.round((today - start) / DAY_MILLISECONDS);
  return day >= 0 && day < days ? day : undefined;
}
