import type { DayState } from '../day/day-state.ts';
import { numberText, quantityText } from '../type/number-text.ts';
import type { SectionPlan } from './section-plan.ts';
import { subjectsOf } from './subjects.ts';

/** The drawing in one sentence, for those who hear it. */
export function sectionSentence(plan: SectionPlan, day: DayState): string {
  const water = [
    day.waterLevel ? quantityText(day.waterLevel.median, 'cm', 1) : '',
    day.waterVolume ? quantityText(day.waterVolume.median, 'L', 1) : '',
    day.waterTemperature ? quantityText(day.waterTemperature.median, '°C', 1) : '',
  ].filter((part) => part !== '');
  const named = subjectsOf(plan, day).map(
    ({ number, name, alarm }) => `${number} ${name}${alarm ? ` (${alarm})` : ''}`,
  );
  const parts = [water.length > 0 ? `water ${water.join(', ')}` : '', named.join(', ')].filter(
    (part) => part !== '',
  );
  return `Section of ${plan.name} on day ${numberText(Math.round(day.day))}: ${parts.join('; ')}.`;
}
