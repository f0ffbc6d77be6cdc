import type { PestAnswer, PopulationEnd } from '@shoreglass/engine';
import { countText } from '@shoreglass/figures';
import { percent } from '../../../outlook/turning-words.ts';

/** Share of what there would be otherwise by which others must change to be told [1], and the least number of animals. */
const [WORTH_TELLING, FEWEST] = [0.2, 1];

/** "12 on the last day, in four of five runs between 4 and 30; none left in 4 of 16 runs." */
export function endWords({ pest, gone, runs }: Pick<PestAnswer, 'pest' | 'gone' | 'runs'>): string {
  const [low, middle, high] = [countText(pest.q10), countText(pest.q50), countText(pest.q90)];
  const spread = low === high ? '' : `, in four of five runs between ${low} and ${high}`;
  const some = gone === 1 ? `any of the ${runs} runs` : `${Math.round(gone * runs)} of ${runs} runs`;
  const none = gone === 0 ? '' : `; none left in ${some}`;
  return `${middle} on the last day${spread}${none}.`;
}

/** "Left on the last day, fewest first: a bait a week: 0; half the feed: ~280; nothing is done: ~520." */
export function rankWords(answers: readonly PestAnswer[]): string {
  const ranked = [...answers].sort((a, b) => a.pest.q50 - b.pest.q50);
  const parts = ranked.map(({ name, pest }) => `${name.split(',')[0]}: ${countText(pest.q50)}`);
  return `Left on the last day, fewest first: ${parts.join('; ')}.`;
}

/** What the answer does to the pest, against doing nothing: "A third of what there would be", "Hardly fewer". */
export function gainWords(answer: PestAnswer, nothing: PestAnswer): string {
  const [left, without] = [answer.pest.q50, nothing.pest.q50];
  if (without < FEWEST) return 'Even when nothing is done there are hardly any left.';
  const share = left / without;
  if (share > 1.1) return 'More than when nothing is done.';
  if (share > 0.9) return 'Hardly different from doing nothing.';
  if (share < 0.01) return 'Next to none are left.';
  return `${percent(share)} of what there would be otherwise.`;
}

/** Others whose number on the last day is another than when nothing is done, those who suffer most first. */
export function changedOthers(
  answer: PestAnswer,
  nothing: PestAnswer,
): { readonly other: PopulationEnd; readonly before: number }[] {
  const id = answer.hunter?.id;
  return answer.others
    .filter((other) => other.id !== id)
    .map((other) => ({ other, before: nothing.others.find((each) => each.id === other.id)?.end.q50 ?? 0 }))
    .filter(
      ({ other, before }) =>
        Math.abs(other.end.q50 - before) >= Math.max(FEWEST, WORTH_TELLING * Math.max(before, other.end.q50)),
    )
    .sort((a, b) => ratio(a) - ratio(b));
}

const ratio = ({ other, before }: { other: PopulationEnd; before: number }) =>
  other.end.q50 / Math.max(before, 1);

/** "Mexican scuds: 20 instead of 180". */
export function otherWords({ other, before }: { other: PopulationEnd; before: number }): string {
  return `${other.name}: ${countText(other.end.q50)} instead of ${countText(before)}`;
}
