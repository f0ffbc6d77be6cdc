import type { DayState } from '../day/day-state.ts';
import type { SectionPlan } from './section-plan.ts';
import { type Subject, subjectsOf } from './subjects.ts';

export type LegendEntry = Pick<Subject, 'key' | 'letter' | 'number' | 'name' | 'interval' | 'alarm'>;

/** What the plate letters of a section without labels stand for, in the order of the letters. */
export function sectionLegend({ plan, day }: { plan: SectionPlan; day: DayState }): LegendEntry[] {
  return subjectsOf(plan, day).map(({ key, letter, number, name, interval, alarm }) => ({
    key,
    letter,
    number,
    name,
    interval,
    ...(alarm ? { alarm } : {}),
  }));
}
