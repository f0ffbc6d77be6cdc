import { AMOUNTS, type AmountId, type AmountKind, inUnit } from './amount-kind.ts';
import { type ReadAmount, readAmount } from './read-amount.ts';

/** What stands in a field: the text, and the unit that counts where the text has none. */
export interface Written {
  readonly text: string;
  readonly unit: string;
}

/** The amount a field holds; nothing where it is empty. */
export function readWritten(written: Written | undefined, id: AmountId): ReadAmount {
  if (!written) return undefined;
  return readAmount(written.text, AMOUNTS[id], written.unit);
}

/** A value of the kind's own unit as a field would hold it in another. */
export function writtenIn(id: AmountId, value: number, unit: string, digits = 3): Written {
  const kind: AmountKind = AMOUNTS[id];
  const known = unit in kind.from ? unit : kind.usual;
  return { text: String(Number(inUnit(kind, value, known).toPrecision(digits))), unit: known };
}

/** True of what was kept as a field's content. */
export function isWritten(value: unknown): value is Written {
  if (typeof value !== 'object' || value === null) return false;
  const { text, unit } = value as Partial<Written>;
  return typeof text === 'string' && typeof unit === 'string';
}
