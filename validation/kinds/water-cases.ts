import type { Check, Expected, Kind } from '../harness/check.ts';
import { isRecord } from '../harness/inputs.ts';
import { readExpected, readInputs, record, text } from '../harness/read-case.ts';
import { WATER_FAMILIES } from '../water/families.ts';

function outputs(raw: unknown): Map<string, Expected> {
  const expected = new Map<string, Expected>();
  for (const [name, value] of Object.entries(record(raw, "'outputs'"))) {
    const given = isRecord(value) ? value : {};
    expected.set(name, readExpected(name, value, { absolute: given.tol_abs, relative: given.tol_rel }));
  }
  return expected;
}

/** { meta, cases: [{ id, family, inputs, outputs: { name: { value, unit, tol_abs, tol_rel } } }] } */
export const waterCases: Kind = {
  name: 'water',
  cases(document) {
    if (!isRecord(document) || !Array.isArray(document.cases)) return undefined;
    const checks = document.cases.some(
      (raw: unknown) => isRecord(raw) && 'equation' in raw && !('family' in raw),
    );
    return checks ? undefined : document.cases;
  },
  read(raw): Check {
    const given = record(raw, 'the case');
    return {
      id: text(given.id, "'id'"),
      key: text(given.family, "'family'"),
      inputs: readInputs(given.inputs),
      expected: outputs(given.outputs),
      source: typeof given.source === 'string' ? given.source : '',
    };
  },
  calculation: (family) =>
    Object.hasOwn(WATER_FAMILIES, family) ? WATER_FAMILIES[family]?.calculate : undefined,
  abscissae: new Set(['time']),
  title: (family) => (Object.hasOwn(WATER_FAMILIES, family) ? (WATER_FAMILIES[family]?.title ?? '') : ''),
};
