import type { Calculation, Check, Expected, Figures, Kind } from '../harness/check.ts';
import { Inputs, isRecord } from '../harness/inputs.ts';
import { record, text } from '../harness/read-case.ts';
import { type ReadSystem, readSystem } from '../integrators/equations/written-system.ts';
import { limitOfSmallSteps } from '../integrators/limit-of-small-steps.ts';
import { REFERENCE_SYSTEMS, type ReferenceSystem } from '../integrators/reference-systems.ts';
import { writtenCourse } from '../integrators/written-course.ts';

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

/** Numbers and words only; lists among the parameters are kept out. */
function parametersOf(raw: unknown): Record<string, unknown> {
  const entries = Object.entries(isRecord(raw) ? raw : {});
  return Object.fromEntries(entries.filter(([, value]) => ['number', 'string'].includes(typeof value)));
}

function linesOf(raw: unknown, what: string): string {
  if (!Array.isArray(raw)) throw new Error(`${what} is not a list`);
  return raw.map((line) => text(line, 'an equation')).join('\n');
}

/** One course per state and mode (known by its equations alone: the default); components below 1e-12 of the largest are not compared, as the file asks. */
function expectedOf(
  given: Readonly<Record<string, unknown>>,
  moments: readonly Moment[],
): Map<string, Expected> {
  const digits = numbers([given.reliable_digits], "'reliable_digits'")[0]!;
  const reach = systemOf(String(given.id))?.reach ?? 0;
  const names = namesOf(given.state_names, moments[0]!.y.length);
  const expected = new Map<string, Expected>();
  const largest = Math.max(...moments.flatMap(({ y }) => y.map(Math.abs)));
  for (const { suffix } of systemOf(String(given.id)) ? MODES : MODES.slice(0, 1)) {
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

type States = readonly (readonly number[])[];

/** A figure for every state in every mode, by the names wanted. */
function figuresOf(
  inMode: (explicitShare: number) => States,
  wanted: ReadonlyMap<string, Expected>,
): Figures {
  const names = [...wanted.keys()];
  const perMode = names.length / MODES.length;
  return Object.fromEntries(
    MODES.flatMap(({ explicitShare }, m) => {
      const states = inMode(explicitShare);
      return names
        .slice(m * perMode, (m + 1) * perMode)
        .map((name, i) => [name, { value: states.map((y) => y[i]!), unit: '-' }] as const);
    }),
  );
}

const ofKnown =
  (system: ReferenceSystem): Calculation =>
  (inputs, wanted) => {
    const given = inputs.group('parameters');
    const parameters = Object.fromEntries(system.parameters.map((name) => [name, given.number(name, '-')]));
    const start = inputs.numbers('y0', '-');
    const from = inputs.number('t0', '-');
    const { step, growth, kinkEvery, levels } = system;
    const course = {
      transfers: system.transfers(parameters),
      start: kinkEvery === undefined ? start : [...start, from],
      from,
      times: inputs.numbers('times', '-'),
      step,
      growth,
      kinkEvery,
    };
    return figuresOf((explicitShare) => limitOfSmallSteps(course, { levels, explicitShare }), wanted);
  };

/** The equations of a case as reactions; undefined where they are written in a way that is not understood. */
function readEquations(inputs: Inputs): ReadSystem | undefined {
  const given = inputs.group('parameters');
  const numeric = given.names().filter((name) => !given.isText(name));
  try {
    return readSystem({
      lines: inputs.text('equations').split('\n'),
      parameters: Object.fromEntries(numeric.map((name) => [name, given.number(name, '-')])),
      names: inputs.text('names').split('\n'),
    });
  } catch {
    return undefined;
  }
}

/**
 * A system known by its equations alone. Nothing is computed where states change sign, which contents of pools do not,
 * or where the limit of small steps cannot be told to the accuracy asked for.
 */
const ofWritten: Calculation = (inputs, wanted) => {
  const start = inputs.numbers('y0', '-');
  const isNegative = [...wanted.values()].some(({ value }) => [value].flat().some((x) => x < 0));
  const system = isNegative || start.some((x) => x < 0) ? undefined : readEquations(inputs);
  if (system?.stateCount !== start.length) return {};
  const states = writtenCourse(system, {
    start,
    from: inputs.number('t0', '-'),
    times: inputs.numbers('times', '-'),
    accuracy: Math.min(...[...wanted.values()].map(({ relative }) => relative)),
  });
  const names = [...wanted.keys()];
  if (!states) return {};
  return Object.fromEntries(names.map((name, i) => [name, { value: states.map((y) => y[i]!), unit: '-' }]));
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
        parameters: parametersOf(given.parameters),
        y0: { value: given.y0 },
        t0: given.t0,
        equations: linesOf(given.equations, "'equations'"),
        names: namesOf(given.state_names, moments[0]!.y.length).join('\n'),
        times: { value: moments.map(({ t }) => t) },
      }),
      expected: expectedOf(given, moments),
      source: typeof given.citation === 'string' ? given.citation : '',
    };
  },
  calculation: (id) => {
    const system = systemOf(id);
    return system ? ofKnown(system) : ofWritten;
  },
  abscissae: new Set(),
  title: (id) =>
    systemOf(id)?.title ??
    'read from its equations; not built where states change sign or too few digits are reached',
};
