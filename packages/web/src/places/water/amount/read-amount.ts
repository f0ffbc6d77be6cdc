import { readUnit } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { type AmountKind, inUnit } from './amount-kind.ts';

export interface Amount {
  /** In the kind's own unit. */
  readonly value: number;
  /** Unit as written, or as remembered where none was. */
  readonly unit: string;
  /** No unit was written; the remembered one was taken. */
  readonly unitTaken: boolean;
  /** Said before the number: a limit instead of a value. */
  readonly limit?: 'low' | 'high';
}

export type ReadAmount = Amount | { readonly wrong: string } | undefined;

const NUMBER =
  /^((?:at most|up to|at least|about|below|above|[<>~≈=≤≥])*)\s*([+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*(.*)$/is;

/**
 * What a keeper wrote, read as far as it can be: '6', '6 dGH', '107 ppm', '2,1 meq/l'. Without a unit the remembered
 * one counts. Nothing written is undefined; what cannot be read says why and how to mend it.
 */
export function readAmount(text: string, kind: AmountKind, remembered: string = kind.usual): ReadAmount {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  const match = NUMBER.exec(trimmed);
  if (!match) return { wrong: `Begin with a number, such as ${exampleOf(kind)}.` };
  const [, before = '', digits = '', written = ''] = match;
  const unit = written === '' ? remembered : unitOf(written, kind);
  if (unit === undefined) return { wrong: whyNot(written, kind) };
  const value = kind.from[unit]?.(Number(digits.replace(',', '.')));
  if (value === undefined || !Number.isFinite(value)) return { wrong: whyNot(written, kind) };
  if (value < kind.least - 1e-9 || value > kind.most + 1e-9) return { wrong: outside(kind, unit) };
  const limit = limitOf(before);
  return { value, unit, unitTaken: written === '', ...(limit ? { limit } : {}) };
}

function limitOf(before: string): Amount['limit'] {
  if (/at most|up to|below|[<≤]/i.test(before)) return 'high';
  return /at least|above|[>≥]/i.test(before) ? 'low' : undefined;
}

/** True where something was read. */
export function isAmount(read: ReadAmount): read is Amount {
  return read !== undefined && 'value' in read;
}

function unitOf(written: string, kind: AmountKind): string | undefined {
  const word = written.trim().toLowerCase().replaceAll(/\s+/g, ' ');
  const own = kind.words[word] ?? kind.words[word.replaceAll(/[.,;]$/g, '')];
  if (own !== undefined) return own;
  const unit = readUnit(written);
  return unit !== undefined && unit in kind.from ? unit : undefined;
}

function whyNot(written: string, kind: AmountKind): string {
  const known = Object.entries(kind.unreadable ?? {}).find(([word]) =>
    written.trim().toLowerCase().startsWith(word),
  );
  if (known) return known[1];
  const units = Object.keys(kind.from).slice(0, 5).join(', ');
  return `“${written.trim()}” is no unit of ${kind.name} here; write ${units}.`;
}

function outside(kind: AmountKind, unit: string): string {
  const [least, most] = [kind.least, kind.most].map((limit) => inUnit(kind, limit, unit));
  const shown = (value: number | undefined) => Number((value ?? 0).toPrecision(3));
  return `That is outside ${shown(least)} to ${shown(most)} ${unit === 'pH' ? '' : unit}`.trim().concat('.');
}

function exampleOf(kind: AmountKind): string {
  const number = Math.max(kind.least, Math.min(6, kind.most));
  return quantityText(number, kind.usual === 'pH' ? '' : kind.usual);
}

/** The same amount in the kind's other units: "6 °dGH = 107 ppm CaCO3 = 1.07 mmol/L". */
export function amountRepeated({ value, unit, unitTaken }: Amount, kind: AmountKind): string {
  const others = kind.repeated.filter((each) => each !== unit);
  const all = unitTaken && kind.repeated.includes(unit) ? [unit, ...others] : others;
  return all.map((each) => inWords(inUnit(kind, value, each), each)).join(' = ');
}

/** Three figures, no needless zeros: what a keeper reads at a glance. */
export function inWords(value: number, unit: string): string {
  const digits = value === 0 ? 0 : Math.max(0, Math.min(3, 2 - Math.floor(Math.log10(Math.abs(value)))));
  return quantityText(Number(value.toFixed(digits)), unit, fewest(value, digits));
}

function fewest(value: number, most: number): number {
  for (let digits = 0; digits < most; digits++)
    if (Number(value.toFixed(digits)) === Number(value.toFixed(most))) return digits;
  return most;
}
