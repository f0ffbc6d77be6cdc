const NO_BREAK_SPACE = '\u00a0';

/** A number with the digits of its series, a true minus and spaced thousands: "1 240", "−0.4". */
export function numberText(value: number, digits = 0): string {
  const fixed = Math.abs(value).toFixed(digits);
  const [whole = '0', fraction] = fixed.split('.');
  const spaced = whole.length > 4 ? whole.replaceAll(/\B(?=(\d{3})+$)/g, NO_BREAK_SPACE) : whole;
  const sign = value < 0 && Number(fixed) !== 0 ? '−' : '';
  return `${sign}${spaced}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** A number with its unit, kept together: "18.4 °C", "71 %"; a quantity without unit stays bare. */
export function quantityText(value: number, unit: string, digits = 0): string {
  return unit === '' ? numberText(value, digits) : `${numberText(value, digits)}${NO_BREAK_SPACE}${unit}`;
}

/** A lower and an upper value with one unit: "400–2100"; one value where both read the same. */
export function rangeText(range: { low: number; high: number }, unit: string, digits = 0): string {
  const [low, high] = [numberText(range.low, digits), numberText(range.high, digits)];
  const numbers = low === high ? low : `${low}–${high}`;
  return unit === '' ? numbers : `${numbers}${NO_BREAK_SPACE}${unit}`;
}

/** A range as above, or nothing where both ends read the same and so say no more than the value itself. */
export function spreadText(range: { low: number; high: number }, unit: string, digits = 0): string {
  const same = numberText(range.low, digits) === numberText(range.high, digits);
  return same ? '' : rangeText(range, unit, digits);
}

/** A count of animals as one would say it: whole below 200, then two figures with "~": "~900". */
export function countText(value: number): string {
  if (value < 200) return numberText(Math.round(value));
  return `~${numberText(twoFigures(value))}`;
}

/** The spread of a count; large ones to two figures. */
export function countSpreadText(low: number, high: number): string {
  const round = (value: number) => (value < 200 ? Math.round(value) : twoFigures(value));
  return spreadText({ low: round(low), high: round(high) }, '');
}

function twoFigures(value: number): number {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(1, value))) - 1);
  return Math.round(value / step) * step;
}
