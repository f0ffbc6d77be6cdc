import type { PestAnswer } from '@shoreglass/engine';
import { countText } from './number-text.ts';

/** Below this many, none count as left, in the median of the runs [1]. */
const FEWEST = 1;

/** What becomes of hunters put in against a pest, as a sentence: they starve, stay, or become many themselves. `derived`. */
export function hunterWords({ hunter, others }: Pick<PestAnswer, 'hunter' | 'others'>): string | undefined {
  const own = others.find(({ id }) => id === hunter?.id);
  if (!hunter || !own) return undefined;
  const most = Math.max(...own.course);
  const peak = own.course.indexOf(most);
  const last = own.end.q50;
  if (last < FEWEST) {
    const end = own.course.findIndex((count, day) => day > peak && count < FEWEST);
    return `The ${own.name} themselves die out${end > 0 ? ` about day ${end}` : ''}: find them food or another home in time.`;
  }
  const left = countText(last) === '1' ? '1 is left' : `${countText(last)} are left`;
  if (last < 0.75 * most)
    return most > hunter.adults
      ? `Of the ${own.name} ${left}, after at most ${countText(most)} on day ${peak}.`
      : `Of the ${hunter.adults} ${own.name} ${left} on the last day.`;
  if (last > 1.5 * hunter.adults)
    return `The ${own.name} multiply to ${countText(last)} and hunt on: you would have them in place of the others.`;
  return `The ${own.name} are still there on the last day, ${countText(last)} of them, and go on hunting.`;
}
