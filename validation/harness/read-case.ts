import type { Expected } from './check.ts';
import { Inputs, isRecord } from './inputs.ts';

/** A record, or an error that says what should have been one. */
export function record(value: unknown, what: string): Readonly<Record<string, unknown>> {
  if (!isRecord(value))
    throw new Error(`${what} is ${value === undefined ? 'missing' : 'not a group of values'}`);
  return value;
}

export function text(value: unknown, what: string): string {
  if (typeof value !== 'string' || value === '')
    throw new Error(`${what} is ${value === undefined ? 'missing' : 'not a text'}`);
  return value;
}

function tolerance(value: unknown, what: string): number {
  if (value === undefined || value === null) return 0;
  if (typeof value !== 'number' || !(value >= 0 && value < Number.POSITIVE_INFINITY))
    throw new Error(`${what} is not a number of zero or more`);
  return value;
}

function figureValue(value: unknown, what: string): number | readonly number[] {
  const isNumber = (element: unknown): element is number =>
    typeof element === 'number' && Number.isFinite(element);
  if (isNumber(value)) return value;
  if (Array.isArray(value) && value.length > 0 && value.every(isNumber)) return value;
  throw new Error(`${what} is not a finite number or a list of them`);
}

/** An expected figure: { value, unit } and its tolerances. @throws Error with what is wrong. */
export function readExpected(
  name: string,
  raw: unknown,
  limits: { readonly absolute: unknown; readonly relative: unknown },
): Expected {
  const given = isRecord(raw) ? raw : { value: raw };
  const unit = given.unit ?? '-';
  if (typeof unit !== 'string') throw new Error(`expected '${name}' has a unit that is not a text`);
  return {
    value: figureValue(given.value, `expected '${name}'`),
    unit,
    absolute: tolerance(limits.absolute, `absolute tolerance of '${name}'`),
    relative: tolerance(limits.relative, `relative tolerance of '${name}'`),
  };
}

/** Inputs of a case; none when left out. @throws Error when they are not a group. */
export function readInputs(raw: unknown): Inputs {
  return new Inputs(raw === undefined || raw === null ? {} : record(raw, "'inputs'"));
}
