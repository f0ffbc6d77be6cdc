import type { EditValue } from '@shoreglass/contract';
import { clockTime, type FeedingPlan } from '@shoreglass/engine';
import type { SoundLife } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';

/** Below this a dose is told in milligrams [kg]. */
const SMALL = 1e-5;

/** Two figures are as many as a scale shows: "0.24 g", "5.3 mg". */
export function doseText(mass: number): string {
  if (mass > 0 && mass < SMALL) return `${Number((mass * 1e6).toPrecision(2))} mg`;
  return `${Number((mass * 1000).toPrecision(2))} g`;
}

/** "21:30" as hours after midnight; undefined for no time of day. */
export function hourOfClock(text: string): number | undefined {
  const [hours, minutes] = text.split(':').map(Number);
  return text === '' || hours === undefined || minutes === undefined ? undefined : hours + minutes / 60;
}

/** The changes by which a feeding of the file is given in another place, or at another time of day. */
export function feedingMoves(
  at: number,
  { place, time }: { readonly place: string; readonly time: string },
): Edit[] {
  return [
    { path: ['routines', at, 'place'], value: place === 'land' ? 'land' : undefined },
    { path: ['routines', at, 'at'], value: time === '' ? undefined : time },
  ];
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
  const at = plan.hour === undefined ? undefined : clockTime(plan.hour);
  if (first !== undefined) {
    const given = routines[first];
    const isTimed = given?.do === 'feed' && given.at !== undefined;
    return [
      ...Object.entries(values).map(([key, value]) => ({ path: ['routines', first, key], value })),
      ...(at !== undefined || isTimed ? [{ path: ['routines', first, 'at'], value: at }] : []),
      ...removed(others),
    ];
  }
  const routine: EditValue = {
    do: 'feed',
    ...values,
    ...(plan.onLand ? { place: 'land' } : {}),
    ...(at === undefined ? {} : { at }),
  };
  return [
    routines.length === 0
      ? { path: ['routines'], value: [routine] as unknown as EditValue }
      : { path: ['routines', routines.length], value: routine },
  ];
}
