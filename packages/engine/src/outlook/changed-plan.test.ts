import { describe, expect, it } from 'vitest';
import { dueDays, type FeedComposition, type Routine } from '../plan/care.ts';
import type { Plan } from '../plan/plan.ts';
import { changedPlan } from './trial.ts';

const feed: FeedComposition = { id: 'flake', name: 'flakes', carbon: 30, nitrogen: 5, phosphorus: 0.3 };
const every3: Routine = { kind: 'feed', feed, mass: 4, everyDays: 3, firstDay: 29 };
const plan = {
  devices: {},
  hardscape: [],
  populations: [],
  routines: [every3, { kind: 'top-off', everyDays: 4, firstDay: 0 }],
  actions: [
    { kind: 'feed', feed, mass: 8, day: 10 },
    { kind: 'feed', feed, mass: 8, day: 61 },
  ],
} as unknown as Plan;

/** What is fed on each day. */
function fedOn({ routines, actions }: Plan, days: number): number[] {
  const fed = new Array<number>(days).fill(0);
  for (const routine of routines)
    if (routine.kind === 'feed') for (const day of dueDays(routine, days)) fed[day]! += routine.mass;
  for (const action of actions) if (action.kind === 'feed') fed[action.day]! += action.mass;
  return fed;
}

describe('a plan with less feed', () => {
  it('gives as planned up to the day from which less is given, and its part on the same days after', () => {
    const whole = fedOn(plan, 100);
    for (const feedFrom of [0, 29, 30, 60, 62, 99]) {
      const part = fedOn(changedPlan(plan, { feedShare: 0.5, feedFrom }), 100);
      expect(part).toEqual(whole.map((mass, day) => (day < feedFrom ? mass : 0.5 * mass)));
    }
    expect(fedOn(changedPlan(plan, { feedShare: 0.5 }), 100)).toEqual(whole.map((mass) => 0.5 * mass));
  });

  it('leaves routines that end before that day, and all else, as they are', () => {
    const ended = { ...plan, routines: [{ ...every3, lastDay: 40 }, plan.routines[1]!] };
    expect(changedPlan(ended, { feedShare: 0.5, feedFrom: 50 }).routines).toEqual(ended.routines);
    const cut = changedPlan(ended, { feedShare: 0.5, feedFrom: 33 });
    expect(fedOn(cut, 100).flatMap((mass, day) => (mass > 0 ? [[day, mass]] : []))).toEqual([
      [10, 8],
      [29, 4],
      [32, 4],
      [35, 2],
      [38, 2],
      [61, 4],
    ]);
  });
});
