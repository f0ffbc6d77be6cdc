import { familyOf, rearingOf } from '../fauna/families.ts';
import type { Check, Expected, Kind } from '../harness/check.ts';
import { Inputs, isRecord } from '../harness/inputs.ts';
import { readExpected, record, text } from '../harness/read-case.ts';

/** Between taxon and family in a key. */
const OF = ' of ';

type Raw = Readonly<Record<string, unknown>>;

function limits(raw: unknown): { type: string; value: number } {
  const given = record(raw, "'tolerance'");
  const type = text(given.type, "'tolerance.type'");
  const value = given.value ?? 0;
  if (typeof value !== 'number') throw new Error("'tolerance.value' is not a number");
  return { type, value };
}

interface Point {
  readonly x: number;
  readonly y: number;
}
function points(raw: unknown): readonly Point[] {
  if (!Array.isArray(raw)) throw new Error("'expected.table' is not a list");
  return raw.map((point) => {
    const { x, y } = record(point, 'a point of the table');
    if (typeof x !== 'number' || typeof y !== 'number') throw new Error('a point of the table lacks x or y');
    return { x, y };
  });
}

/** Whether a pair of values is two figures, each named in the unit ('days to first brood; 12 months of life'). */
const namesTwo = (unit: unknown): boolean => typeof unit === 'string' && / to .+; .+ of /.test(unit);

/**
 * A single number, two figures, a range (its middle, half of it added to the tolerance), or a statement that holds (1).
 */
function single(
  given: Raw,
  { type, value: tolerance }: { type: string; value: number },
): Map<string, Expected> {
  const { value } = given;
  const unit = typeof given.unit === 'string' ? given.unit.split(/[,;(]/, 1)[0]!.trim() : '-';
  if (type === 'qualitative')
    return new Map([['statement holds', { value: 1, unit: '-', absolute: 0, relative: 0 }]]);
  if (Array.isArray(value) && value.length === 2 && !namesTwo(given.unit)) {
    const [low, high] = value as [number, number];
    const absolute = (high - low) / 2 + (type === 'relative' ? tolerance * high : tolerance);
    return new Map([
      ['value', readExpected('value', { value: (low + high) / 2, unit }, { absolute, relative: 0 })],
    ]);
  }
  if (type === 'atLeast') return new Map([['shortfall', { value: 0, unit, absolute: 1e-9, relative: 0 }]]);
  const relative = type === 'relative' ? tolerance : 0;
  const absolute = type === 'absolute' ? tolerance : 0;
  return new Map([['value', readExpected('value', { value, unit }, { absolute, relative })]]);
}

function expectedOf(given: Raw, tolerance: { type: string; value: number }): Map<string, Expected> {
  if (given.table === undefined) return single(given, tolerance);
  const name = typeof given.yName === 'string' ? given.yName : 'value';
  const value = points(given.table).map(({ y }) => y);
  const relative = tolerance.type === 'relative' ? tolerance.value : 0;
  const absolute = tolerance.type === 'absolute' ? tolerance.value : 0;
  return new Map([[name, readExpected(name, { value, unit: given.yUnit }, { absolute, relative })]]);
}

function inputsOf(given: Raw, expected: Raw, type: string): Inputs {
  const table = expected.table === undefined ? undefined : points(expected.table);
  return new Inputs({
    taxon: given.taxonId,
    quantity: given.quantity,
    ...(typeof given.conditions === 'string' ? { conditions: given.conditions } : {}),
    ...(table ? { x: table.map(({ x }) => x), xName: expected.xName, xUnit: expected.xUnit ?? '-' } : {}),
    ...(type === 'atLeast' ? { atLeast: expected.value } : {}),
  });
}

/** [{ id, taxonId, quantity, conditions, expected: { table | value }, tolerance: { type, value } }], bare or in { checks } */
export const faunaRearings: Kind = {
  name: 'fauna',
  cases(document) {
    for (const list of isRecord(document) ? [document.checks, document.cases] : [document]) {
      if (Array.isArray(list) && list.some((raw) => isRecord(raw) && 'taxonId' in raw)) return list;
    }
    return undefined;
  },
  read(raw): Check {
    const given = record(raw, 'the check');
    const expected = record(given.expected, "'expected'");
    const tolerance = limits(given.tolerance);
    const family = familyOf(text(given.quantity, "'quantity'"));
    return {
      id: text(given.id, "'id'"),
      key: `${family}${OF}${text(given.taxonId, "'taxonId'")}`,
      inputs: inputsOf(given, expected, tolerance.type),
      expected: expectedOf(expected, tolerance),
      source: typeof given.source === 'string' ? given.source : '',
    };
  },
  calculation(key) {
    const split = key.lastIndexOf(OF);
    return rearingOf(key.slice(split + OF.length), key.slice(0, split));
  },
  abscissae: new Set(),
  title: () => '',
};
