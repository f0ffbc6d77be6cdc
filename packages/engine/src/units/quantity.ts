import { readUnit } from './read-unit.ts';
import type { Unit } from './units.ts';

/** A number with its unit, as written. */
export interface WrittenQuantity {
  readonly value: number;
  readonly unit: Unit;
}

const NUMBER = /^([+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:[eE][+-]?\d{1,3})?)\s*/;

/**
 * Reads '13 cm', '18.5°C', '1,5 L' or '-2 °C'; a decimal comma is read as a decimal point. Nothing else may follow.
 * Returns what is wrong as a phrase instead of throwing, since the text comes from people.
 */
export function readQuantity(text: string): WrittenQuantity | { readonly wrong: string } {
  const trimmed = text.trim();
  if (trimmed.length > 60) return { wrong: 'is too long for a number with a unit' };
  const match = NUMBER.exec(trimmed);
  if (!match?.[1]) return { wrong: 'does not start with a number' };
  const value = Number(match[1].replace(',', '.'));
  if (!Number.isFinite(value)) return { wrong: 'is too large a number' };
  const written = trimmed.slice(match[0].length);
  if (written === '') return { wrong: 'has no unit' };
  const unit = readUnit(written);
  if (unit === undefined) return { wrong: `has a unit that is not known, '${written}'` };
  return { value, unit };
}
