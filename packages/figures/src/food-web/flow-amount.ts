import { numberText } from '../type/number-text.ts';

/** In what food is counted: its carbon, or the whole of it dry. */
export type FlowUnit = 'carbon' | 'dry';

/** Dry food over its carbon [g/g]. @source common practice, no source: dry matter of plants and animals is about two fifths carbon */
export const DRY_PER_CARBON = 2.5;

const UNIT_TEXT = { carbon: 'C', dry: 'dry' } as const;

/** An amount of food [mg C] for people: "120 mg C", "1.3 g dry". */
export function flowAmountText(milligrams: number, unit: FlowUnit): string {
  const amount = unit === 'dry' ? milligrams * DRY_PER_CARBON : milligrams;
  const kind = UNIT_TEXT[unit];
  if (amount >= 1000) return `${numberText(amount / 1000, amount >= 10_000 ? 0 : 1)}\u00a0g\u00a0${kind}`;
  return `${flowNumber(amount)}\u00a0mg\u00a0${kind}`;
}

function flowNumber(amount: number): string {
  if (amount === 0) return '0';
  if (amount < 0.01) return 'under 0.01';
  return numberText(amount, amount >= 10 ? 0 : amount >= 1 ? 1 : 2);
}
