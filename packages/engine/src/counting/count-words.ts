import { exp, log } from '../numerics/elementary.ts';
import type { Estimate } from './count.ts';

/**
 * A number of animals in three digits at most, whole from 10 on [text].
 * @param number of animals
 * @source definition
 */
export function animalsText(number: number): string {
  if (Math.abs(number) >= 10) return String(Number(Math.round(number).toPrecision(3)));
  return String(Number(number.toPrecision(2)));
}

/**
 * Days as people say them, in two or three digits [text]; beyond ten years as that.
 * @param days >= 0 [d]
 * @source definition
 */
export function daysText(days: number): string {
  if (days > 3652) return 'more than ten years';
  if (days < 10) return Number(days.toPrecision(2)) === 1 ? '1 day' : `${Number(days.toPrecision(2))} days`;
  return `${Math.round(days)} days`;
}

const perCent = (rate: number): string => String(Number(Math.abs(100 * (exp(rate) - 1)).toPrecision(2)));

/**
 * Per cent by which numbers change in a unit, without the sign [text].
 * @param rate of ln N [1/unit]
 * @source definition
 */
export function perCentText(rate: number): string {
  return `${perCent(rate)} %`;
}

/**
 * Per cent by which numbers change in a unit, with 'less' behind falls [text].
 * @param rate of ln N [1/unit]
 * @source definition
 */
export function changeText(rate: number): string {
  return `${perCent(rate)} %${rate < 0 ? ' less' : ''}`;
}

/**
 * From one change to another, both ways of their signs told [text].
 * @param low lower rate of ln N [1/unit]
 * @param high upper rate
 * @source definition
 */
export function changeRangeText(low: number, high: number): string {
  if (low >= 0) return `${perCent(low)} to ${perCent(high)} %`;
  if (high <= 0) return `${perCent(high)} to ${perCent(low)} %`;
  return `from ${perCent(low)} % less to ${perCent(high)} % more`;
}

/**
 * Times in which numbers double or halve, and how that time may range [text].
 * @param rate its best guess, not 0 [1/d]
 * @param range of the same sign where given
 * @source definition: ln 2 over the rate
 */
export function doublingText(rate: number, range?: readonly [low: number, high: number]): string {
  const days = (each: number): number => log(2) / Math.abs(each);
  const verb = rate > 0 ? 'double' : 'halve';
  if (!range) return `${verb} in ${daysText(days(rate))}`;
  const [short = 0, long = 0] = [days(range[0]), days(range[1])].sort((a, b) => a - b);
  return `${verb} in ${daysText(days(rate))} (${daysText(short).replace(/ days?$/, '')} to ${daysText(long)})`;
}

/**
 * A chance as people say it [text].
 * @param part 0 to 1
 * @source definition
 */
export function chanceText(part: number): string {
  if (part < 0.001) return 'less than 1 in 1000';
  if (part > 0.999) return 'almost certain';
  return `${Number((100 * part).toPrecision(2))} %`;
}

/**
 * A figure with its interval in brackets [text].
 * @param estimate figure and interval
 * @param text how a figure is written
 * @source definition
 */
export function rangeText({ value, low, high }: Estimate, text: (figure: number) => string): string {
  return `${text(value)} (${text(low)} to ${text(high)})`;
}
