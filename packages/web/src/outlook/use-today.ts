import type { AheadDocument } from '@shoreglass/engine';
import { useEffect, useState } from 'react';
import { useChosenDay } from './chosen-day.ts';
import { dayOfRun } from './today.ts';

/** Today as a day of the run; the chosen day starts there, or on the first day. */
export function useToday(document: AheadDocument): number | undefined {
  const { id, startDate } = document.enclosure;
  const [today] = useState(() => dayOfRun(startDate, document.run.days, new Date()));
  useEffect(() => {
    const { of, startOn } = useChosenDay.getState();
    if (of !== id) startOn(id, today ?? 0);
  }, [id, today]);
  return today;
}
