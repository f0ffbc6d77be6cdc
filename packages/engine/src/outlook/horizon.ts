import { quantileOfSorted } from '../numerics/quantiles.ts';
import type { HandsOffHorizon } from './document.ts';
import type { Event } from './event.ts';

/**
 * Returns how long the enclosure can be left to its routine [days]: per member the first day on which any band is
 * left (for three days running) or a population dies out; the run's length where neither happens.
 * @source derived
 */
export function handsOffHorizon(events: readonly Event[], members: number, days: number): HandsOffHorizon {
  const ending = events.filter(({ ends }) => ends);
  const horizon = new Float64Array(members).fill(days);
  const limitedBy = new Map<Event, number>();
  let unbroken = 0;
  for (let member = 0; member < members; member += 1) {
    let first: Event | undefined;
    for (const event of ending) {
      const day = event.days[member]!;
      if (day >= 0 && (first === undefined || day < first.days[member]!)) first = event;
    }
    if (!first) {
      unbroken += 1;
      continue;
    }
    horizon[member] = first.days[member]!;
    limitedBy.set(first, (limitedBy.get(first) ?? 0) + 1);
  }
  horizon.sort();
  return {
    q10: quantileOfSorted(horizon, 0.1),
    q50: quantileOfSorted(horizon, 0.5),
    q90: quantileOfSorted(horizon, 0.9),
    unbroken: unbroken / members,
    limitedBy: [...limitedBy]
      .map(([{ subject, kind, owner }, count]) => ({ subject, kind, owner, share: count / members }))
      .sort((a, b) => b.share - a.share || (a.subject < b.subject ? -1 : 1)),
  };
}
