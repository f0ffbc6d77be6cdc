import type { Check, Expected, Kind } from '../harness/check.ts';
import { isRecord } from '../harness/inputs.ts';
import { readExpected, readInputs, record, text } from '../harness/read-case.ts';
import { calculationOf } from '../physics/equations.ts';

function expectedOf(raw: unknown, tolerances: unknown): Map<string, Expected> {
  const limits = tolerances === undefined || tolerances === null ? {} : record(tolerances, "'tolerance'");
  const expected = new Map<string, Expected>();
  for (const [name, value] of Object.entries(record(raw, "'expected'"))) {
    const own = limits[name];
    const given = isRecord(own) ? own : {};
    expected.set(name, readExpected(name, value, { absolute: given.abs, relative: given.rel }));
  }
  return expected;
}

const isCheck = (raw: unknown): boolean => isRecord(raw) && 'equation' in raw;

/** [{ id, equation, inputs, expected: { name: { value, unit } }, tolerance: { name: { rel, abs } } }], bare or in { checks } */
export const physicsChecks: Kind = {
  name: 'physics',
  cases(document) {
    for (const list of isRecord(document) ? [document.checks, document.cases] : [document]) {
      if (Array.isArray(list) && (list.some(isCheck) || list.length === 0)) return list;
    }
    return undefined;
  },
  read(raw): Check {
    const given = record(raw, 'the check');
    return {
      id: text(given.id, "'id'"),
      key: text(given.equation, "'equation'"),
      inputs: readInputs(given.inputs),
      expected: expectedOf(given.expected, given.tolerance),
      source: typeof given.source === 'string' ? given.source : '',
    };
  },
  calculation: calculationOf,
  abscissae: new Set(),
  title: () => '',
};
