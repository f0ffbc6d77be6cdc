import type { EditValue } from '@shoreglass/contract';
import type { FeedingPlan } from '@shoreglass/engine';
import type { SoundLife } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';

/** Two figures are as many as a kitchen scale shows: "0.24 g". */
export function doseText(mass: number): string {
  return `${Number((mass * 1000).toPrecision(2))} g`;
}

/**
 * The changes of the file by which the plan is fed so: the first feeding in the same place takes the new feed, amount and
 * interval; others in that place go, since the plan was found without them; where there is none, one is added.
 */
export function feedingEdits(routines: SoundLife['routines'], plan: FeedingPlan): Edit[] {
  const place = plan.onLand ? 'land' : 'water';
  const feedings = routines.flatMap((routine, at) =>
    routine.do === 'feed' && (routine.place ?? 'water') === place ? [at] : [],
  );
  const removed = (positions: readonly number[]): Edit[] =>
    [...positions].reverse().map((at) => ({ path: ['routines', at], value: undefined }));
  if (plan.mass <= 0) return removed(feedings);
  const values: Record<string, EditValue> = {
    feed: plan.feed,
    amount: doseText(plan.mass),
    every: `${plan.everyDays} d`,
  };
  const [first, ...others] = feedings;
  if (first !== undefined)
    return [
      ...Object.entries(values).map(([key, value]) => ({ path: ['routines', first, key], value })),
      ...removed(others),
    ];
  const routine: EditValue = { do: 'feed', ...values, ...(plan.onLand ? { place: 'land' } : {}) };
  return [
    routines.length === 0
      ? { path: ['routines'], value: [routine] as unknown as EditValue }
      : { path: ['routines', routines.length], value: routine },
  ];
}
