import type { Calculation, Check, Expected, Figures, Kind } from '../harness/check.ts';
import { Inputs, isRecord } from '../harness/inputs.ts';
import { record, text } from '../harness/read-case.ts';
import { limitOfSmallSteps } from '../integrators/limit-of-small-steps.ts';
import { REFERENCE_SYSTEMS, type ReferenceSystem } from '../integrators/reference-systems.ts';

const systemOf = (id: string): ReferenceSystem | undefined =>
  Object.hasOwn(REFERENCE_SYSTEMS, id) ? REFERENCE_SYSTEMS[id] : undefined;

/** The two ways of weighting that are checked: as the engine does by default, and every pool in every step. */
const MODES = [
  { suffix: '', explicitShare: 0.5 },
  { suffix: ', all weighted', explicitShare: 0 },
] as const;

function numbers(value: unknown, what: string): number[] {
  if (!Array.isArray(value) || !value.every((x) => typeof x === 'number' && Number.isFinite(x)))
    throw new Error(`${what} is not a list of numbers`);
  return value;
}

interface Moment {
  readonly t: number;
  readonly y: readonly number[];
}

function momentsOf(raw: unknown): Moment[] {
  if (!Array.isArray(raw) || raw.length === 0) throw new Error("'solution' is not a list of moments");
  return raw.map((one) => {
    const { t, y } = record(one, 'a moment of the solution');
    return { t: numbers([t], "'t'")[0]!, y: numbers(y, "'y'") };
  });
}

function namesOf(raw: unknown, count: number): string[] {
  if (!Array.isArray(raw)) return Array.from({ length: count }, (_, i) => `y${i + 1}`);
  return raw.map((name) => text(name, 'a state name'));
}

/** One course per state and mode; components below 1e-12 of the largest are not compared, as the file asks. */
function expectedOf(
  given: Readonly<Record<string, unknown>>,
  moments: readonly Moment[],
): Map<string, Expected> {
  const digits = numbers([given.reliable_digits], "'reliable_digits'")[0]!;
  const reach = systemOf(String(given.id))?.reach ?? 0;
  const names = namesOf(given.state_names, moments[0]!.y.length);
  const expected = new Map<string, Expected>();
  const largest = Math.max(...moments.flatMap(({ y }) => y.map(Math.abs)));
  for (const { suffix } of MODES) {
    names.forEach((name, i) => {
      expected.set(name + suffix, {
        value: moments.map(({ y }) => y[i]!),
        unit: '-',
        absolute: 1e-12 * largest,
        relative: Math.max(10 ** -(digits - 1), reach),
      });
    });
  }
  return expected;
}

const calculation =
  (system: ReferenceSystem): Calculation =>
  (inputs, wanted) => {
    const given = inputs.group('parameters');
    const parameters = Object.fromEntries(system.parameters.map((name) => [name, given.number(name, '-')]));
    const start = inputs.numbers('y0', '-');
    const from = inputs.number('t0', '-');
    const course = {
      transfers: system.transfers(parameters),
      start: system.kinkEvery === undefined ? start : [...start, from],
      from,
      times: inputs.numbers('times', '-'),
      step: system.step,
      growth: system.growth,
      kinkEvery: system.kinkEvery,
    };
    const names = [...wanted.keys()];
    const figures: Record<string, Figures[string]> = {};
    for (const [m, { explicitShare }] of MODES.entries()) {
      const states = limitOfSmallSteps(course, { levels: system.levels, explicitShare });
      for (let i = 0; i < start.length; i += 1) {
        figures[names[m * start.length + i]!] = { value: states.map((y) => y[i]!), unit: '-' };
      }
    }
    return figures;
  };

/** { items: [{ id, equations, parameters, y0, t0, solution: [{ t, y }], reliable_digits }] } */
export const integratorCases: Kind = {
  name: 'integrators',
  cases(document) {
    if (!isRecord(document) || !Array.isArray(document.items)) return undefined;
    return document.items.some((raw: unknown) => isRecord(raw) && 'solution' in raw)
      ? document.items
      : undefined;
  },
  read(raw): Check {
    const given = record(raw, 'the case');
    const moments = momentsOf(given.solution);
    const id = text(given.id, "'id'");
    return {
      id,
      key: id,
      inputs: new Inputs({
        parameters: given.parameters ?? {},
        y0: { value: given.y0 },
        t0: given.t0,
        times: { value: moments.map(({ t }) => t) },
      }),
      expected: expectedOf(given, moments),
      source: typeof given.citation === 'string' ? given.citation : '',
    };
  },
  calculation: (id) => {
    const system = systemOf(id);
    return system && calculation(system);
  },
  abscissae: new Set(),
  title: (id) => systemOf(id)?.title ?? 'states change sign: no transfers between pools, or not known here',
};
