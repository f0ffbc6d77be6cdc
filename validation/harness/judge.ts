import type { Calculation, Check, Expected, Figure, JudgedFigure, Kind, Status, Verdict } from './check.ts';
import { isRecord } from './inputs.ts';
import { inUnit, sameDimension } from './units.ts';

const asList = (value: number | readonly number[]): readonly number[] =>
  typeof value === 'number' ? [value] : value;

function allowance(value: number, { absolute, relative }: Expected): number {
  return Math.max(absolute, relative * Math.abs(value));
}

function judgeFigure(name: string, figure: Figure | undefined, expected: Expected): JudgedFigure {
  const { value: wanted, unit } = expected;
  const tolerance =
    typeof wanted === 'number' ? allowance(wanted, expected) : wanted.map((x) => allowance(x, expected));
  const common = { name, expected: wanted, tolerance, unit };
  if (!figure) return { ...common, value: null, ok: false };
  const told = [figure, ...(figure.also ?? [])].find((form) => sameDimension(form.unit, unit)) ?? figure;
  const found = asList(told.value).map((x) => inUnit(x, told.unit, unit));
  const list = asList(wanted);
  const ok =
    found.length === list.length && list.every((x, i) => Math.abs(found[i]! - x) <= allowance(x, expected));
  return { ...common, value: typeof figure.value === 'number' ? found[0]! : found, ok };
}

const sentence = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function statusOf(figures: readonly JudgedFigure[]): Status {
  if (figures.some(({ ok, value }) => !ok && value !== null)) return 'miss';
  return figures.some(({ value }) => value === null) ? 'not built' : 'pass';
}

function judgeCheck(kind: Kind, check: Check, calculation: Calculation): Verdict {
  const { id, key: family, source, expected } = check;
  const computed = calculation(check.inputs, expected);
  const figures = [...expected]
    .filter(([name]) => !kind.abscissae.has(name))
    .map(([name, value]) =>
      judgeFigure(name, Object.hasOwn(computed, name) ? computed[name] : undefined, value),
    );
  if (figures.length === 0)
    return {
      id,
      family,
      source,
      figures,
      status: 'miss',
      message: 'the case expects nothing',
      unreadable: true,
    };
  const missing = figures.filter(({ value }) => value === null).map(({ name }) => name);
  const status = statusOf(figures);
  if (missing.length === 0) return { id, family, source, figures, status };
  return { id, family, source, figures, status, message: `not computed: ${missing.join(', ')}` };
}

/** Name of a case that may be unreadable, for its message. */
function nameOf(raw: unknown, position: number): string {
  return isRecord(raw) && typeof raw.id === 'string' ? raw.id : `case ${position + 1}`;
}

/** Computes and judges one case of a file; whatever goes wrong with it is told in the verdict, never thrown. */
export function judge(kind: Kind, raw: unknown, position: number): Verdict {
  const failed = (error: unknown, family: string): Verdict => ({
    id: nameOf(raw, position),
    family,
    status: 'miss',
    figures: [],
    source: '',
    message: sentence(error),
  });
  let check: Check;
  try {
    check = kind.read(raw);
  } catch (error) {
    return { ...failed(error, 'unreadable'), unreadable: true };
  }
  const calculation = kind.calculation(check.key);
  const { id, key: family, source } = check;
  if (!calculation)
    return { id, family, source, figures: [], status: 'not built', message: `nothing computes '${family}'` };
  try {
    return judgeCheck(kind, check, calculation);
  } catch (error) {
    return failed(error, family);
  }
}
