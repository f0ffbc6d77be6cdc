import type { Calculation, Check, Expected, Figure, Figures, Kind } from '../harness/check.ts';
import { Inputs, isRecord } from '../harness/inputs.ts';
import { readExpected, record, text } from '../harness/read-case.ts';
import { doublingSteps, fixedSteps } from '../integrators/positivity-courses.ts';

type Raw = Readonly<Record<string, unknown>>;

/** The schemes the engine's integrator is, where every pool is weighted, by order. */
const ORDERS: Readonly<Record<string, 2 | 3>> = { 'MPRK22(1)': 2, 'MPRK43I(0.5,0.75)': 3 };

/** Tolerances follow from the digits printed; SOURCE.md has the reasons. */
const PRINTED = {
  error: { absolute: 2e-12, relative: 5e-4 },
  order: { absolute: 0.01, relative: 0 },
  final: { absolute: 0, relative: 1e-11 },
  step: { absolute: 0, relative: 1e-13 },
  doubling: { absolute: 0, relative: 1e-9 },
  huge: { absolute: 0, relative: 1e-7 },
} as const;

const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** Every course, single step and doubling course of those schemes as one case each. */
function flattened(document: Raw): Raw[] {
  const isOurs = (scheme: unknown): scheme is Raw =>
    isRecord(scheme) && typeof scheme.scheme === 'string' && Object.hasOwn(ORDERS, scheme.scheme);
  const problems = [...asList(document.problems), document.open_system].filter(isRecord);
  const courses = problems.flatMap((problem) =>
    asList(problem.schemes)
      .filter(isOurs)
      .map((scheme) => ({ ...problem, ...scheme, form: 'course', id: `${problem.id}, ${scheme.scheme}` })),
  );
  const steps = asList(document.steps)
    .filter(isOurs)
    .map((step) => ({ ...step, form: 'step', id: `${step.problem}, one step, ${step.scheme}` }));
  const doublings = asList(document.robertson_doubling_steps)
    .filter(isOurs)
    .map((course) => ({ ...course, form: 'doubling', id: `robertson, doubling steps, ${course.scheme}` }));
  return [...courses, ...steps, ...doublings];
}

function expectedOf(raw: Raw): Map<string, Expected> {
  const expected = new Map<string, Expected>();
  const add = (name: string, value: unknown, limits: { absolute: number; relative: number }) =>
    expected.set(name, readExpected(name, value, limits));
  if (raw.form === 'course') {
    add('relative error', raw.rel_error_at_T, PRINTED.error);
    add('observed order', raw.observed_order, PRINTED.order);
    for (const [steps, state] of Object.entries(record(raw.final_state, "'final_state'")))
      add(`state after ${steps} steps`, state, PRINTED.final);
  } else if (raw.form === 'step') add('state', raw.y1, PRINTED.step);
  else {
    add('time and state after 30 steps', raw.at_step_30, PRINTED.doubling);
    add('time and state at the end', raw.last, PRINTED.huge);
    add('least content', raw.min_value, PRINTED.huge);
  }
  return expected;
}

const bare = (value: Figure['value']): Figure => ({ value, unit: '-' });

const orderOf = (inputs: Inputs): 2 | 3 => ORDERS[inputs.text('scheme')]!;

function courseFigures(inputs: Inputs, wanted: ReadonlyMap<string, Expected>): Figures {
  const steps = inputs.numbers('steps', '-');
  const reference = inputs.numbers('reference', '-');
  const start = inputs.numbers('y0', '-');
  const end = inputs.number('T', '-');
  const order = orderOf(inputs);
  const after = new Map(
    steps.map((n) => [n, fixedSteps(inputs.text('problem'), start, { h: end / n, count: n, order })]),
  );
  const largest = Math.max(...reference);
  const errors = steps.map(
    (n) => Math.max(...after.get(n)!.map((value, i) => Math.abs(value - reference[i]!))) / largest,
  );
  const orders = errors.slice(1).map((error, k) => Math.log2(errors[k]! / error));
  const states = [...wanted.keys()].flatMap((name) => {
    const n = Number(/^state after (\d+) steps$/.exec(name)?.[1]);
    const state = after.get(n);
    return state ? [[name, bare(state)] as const] : [];
  });
  return {
    'relative error': bare(errors),
    'observed order': bare(orders),
    ...Object.fromEntries(states),
  };
}

const calculate: Calculation = (inputs, wanted) => {
  const form = inputs.text('form');
  if (form === 'course') return courseFigures(inputs, wanted);
  const start = inputs.numbers('y0', '-');
  if (form === 'step') {
    const state = fixedSteps(inputs.text('problem'), start, {
      h: inputs.number('h', '-'),
      count: 1,
      order: orderOf(inputs),
    });
    return { state: bare(state) };
  }
  const { moments, least } = doublingSteps(start, {
    h: inputs.number('first_h', '-'),
    count: inputs.number('n_steps', '-'),
    order: orderOf(inputs),
  });
  return {
    'time and state after 30 steps': bare(moments[29]!),
    'time and state at the end': bare(moments.at(-1)!),
    'least content': bare(least),
  };
};

/** { problems: [{ id, y0, T, reference, schemes }], steps, robertson_doubling_steps, open_system }; other schemes are passed over. */
export const positivityChecks: Kind = {
  name: 'positivity',
  cases: (document) =>
    isRecord(document) && Array.isArray(document.problems) && Array.isArray(document.steps)
      ? flattened(document)
      : undefined,
  read(raw): Check {
    const given = record(raw, 'the case');
    const problem = given.form === 'course' ? text(given.id, "'id'").split(', ')[0] : given.problem;
    const values = Object.entries(given).map(([name, value]) => [name, { value }] as const);
    return {
      id: text(given.id, "'id'"),
      key: text(given.scheme, "'scheme'"),
      inputs: new Inputs({ ...Object.fromEntries(values), problem }),
      expected: expectedOf(given),
      source: 'own implementation of published schemes, NumPy',
    };
  },
  calculation: () => calculate,
  abscissae: new Set(),
  title: () => "the engine's integrator with every pool weighted",
};
