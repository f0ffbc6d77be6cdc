import { type AdditionEffect, type SeriesId, seriesSpec } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';

/** Share of what would be there without that must change to be told [1]. */
const WORTH_TELLING = 0.03;

/** Whether an effect is more than its own rounding and more than a trace of what would be there anyway. */
export function moves({ series, course, without }: AdditionEffect): boolean {
  const { digits } = seriesSpec(series as SeriesId);
  const most = Math.max(...course.map(Math.abs));
  return most >= 0.5 * 10 ** -digits && most >= WORTH_TELLING * Math.abs(without.q50);
}

/** "On the last day 34 with them, 81 without, medians; run by run 47 fewer, in four of five between 60 fewer and 20 fewer." */
export function effectSentence({ series, without, with: included, difference }: AdditionEffect): string {
  const { unit, digits } = seriesSpec(series as SeriesId);
  const counted = unit === 'animals';
  const shown = counted ? '' : unit;
  const text = (value: number) => quantityText(counted ? wholeAnimals(value) : value, shown, digits);
  const change = (value: number) => {
    if (Number(Math.abs(value).toFixed(digits)) === 0) return 'no change';
    if (!counted) return `${value > 0 ? '+' : ''}${quantityText(value, unit, digits)}`;
    return `${quantityText(wholeAnimals(Math.abs(value)), '')} ${value > 0 ? 'more' : 'fewer'}`;
  };
  const [low, high] = [change(difference.q10), change(difference.q90)];
  const spread = low === high ? '' : `, in four of five between ${low} and ${high}`;
  return `On the last day ${text(included.q50)} with them, ${text(without.q50)} without, medians; run by run ${change(difference.q50)}${spread}.`;
}

/** Whole animals, large numbers to two figures. */
function wholeAnimals(value: number): number {
  return value < 100 ? Math.round(value) : Number(value.toPrecision(2));
}
