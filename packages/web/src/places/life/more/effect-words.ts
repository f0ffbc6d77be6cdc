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

/** "34 with them, 81 without: 47 fewer; in four runs of five 60 to 20 fewer." */
export function effectSentence({ series, without, with: included, difference }: AdditionEffect): string {
  const { unit, digits } = seriesSpec(series as SeriesId);
  const counted = unit === 'animals';
  const shown = counted ? '' : unit;
  const text = (value: number) => quantityText(value, shown, digits);
  const change = (value: number) => {
    if (Number(Math.abs(value).toFixed(digits)) === 0) return 'no change';
    if (!counted) return `${value > 0 ? '+' : ''}${quantityText(value, unit, digits)}`;
    return `${quantityText(Math.abs(value), '', digits)} ${value > 0 ? 'more' : 'fewer'}`;
  };
  const [low, high] = [change(difference.q10), change(difference.q90)];
  const spread = low === high ? '' : `; in four runs of five between ${low} and ${high}`;
  return `On the last day ${text(included.q50)} with them, ${text(without.q50)} without: ${change(difference.q50)}${spread}.`;
}
