import { numberText } from '../type/number-text.ts';

/** Three figures are as many as a budget is good for. */
export function amountText(amount: number, unit: string): string {
  const size = Math.abs(amount);
  const digits = size === 0 || size >= 100 ? 0 : size >= 10 ? 1 : size >= 0.1 ? 2 : 3;
  if (Number(size.toFixed(digits)) === 0) return `0\u00a0${unit}`;
  return `${amount > 0 ? '+' : '−'}${numberText(size, digits)}\u00a0${unit}`;
}
