import { sink, source, type Transfer } from '../transfer-system.ts';
import { type Expression, readExpression } from './expression.ts';
import { compiled, substituted, termsOf } from './terms.ts';

/** A system as written: definitions `rA=…` and derivatives `NH4'=…`, one to a line. */
export interface WrittenSystem {
  readonly lines: readonly string[];
  readonly parameters: Readonly<Record<string, number>>;
  /** In the order of the states; where they are not the derivatives' names, the order of the derivatives holds. */
  readonly names?: readonly string[];
}

export interface ReadSystem {
  readonly transfers: readonly Transfer[];
  readonly stateCount: number;
  /** True when the rates read the time, as the state after the last. */
  readonly hasClock: boolean;
}

interface Line {
  readonly left: string;
  readonly right: string;
}

/** Left and right of a line, without a remark in brackets that holds another `=`. */
function splitLine(line: string): Line {
  const at = line.indexOf('=');
  if (at < 0) throw new Error(`'${line}' is no equation`);
  const right = line.slice(at + 1).replace(/\s\([^()]*=[^()]*\)\s*$/, '');
  return { left: line.slice(0, at).trim(), right };
}

/** Both signs of a term: in the wrong one it is zero, unless a parameter or a wave turns it round. */
function transfersOf(state: number, sign: number, rate: (y: Float64Array) => number): Transfer[] {
  return [
    source(state, (y) => Math.max(0, sign * rate(y))),
    sink(state, (y) => Math.max(0, -sign * rate(y))),
  ];
}

/**
 * Reads equations as reactions: every term of a derivative brings in or takes out. Balances between the states are
 * not seen, only the equations.
 * @throws Error when an equation cannot be read.
 */
export function readSystem({ lines, parameters, names }: WrittenSystem): ReadSystem {
  const split = lines.map(splitLine);
  const derivatives = split.filter(({ left }) => left.endsWith("'"));
  const derived = derivatives.map(({ left }) => left.slice(0, -1));
  const states = names && derived.every((name) => names.includes(name)) ? names : derived;
  const known = new Set([...states, ...split.map(({ left }) => left), ...Object.keys(parameters), 't', 'pi']);
  const meaning = new Map<string, Expression>([['pi', { kind: 'number', value: Math.PI }]]);
  for (const [name, value] of Object.entries(parameters)) meaning.set(name, { kind: 'number', value });
  for (const { left, right } of split) meaning.set(left, readExpression(right, known));

  const place = new Map([...states, 't'].map((name, i) => [name, i]));
  const transfers = states.flatMap((name, state) => {
    const derivative = meaning.get(`${name}'`);
    if (!derivative) throw new Error(`${name} has no equation`);
    return termsOf(substituted(derivative, meaning)).flatMap(({ sign, of }) =>
      transfersOf(state, sign, compiled(of, place)),
    );
  });
  const hasClock = split.some(({ right }) => /(^|[^A-Za-z_])t($|[^\w(])/.test(right));
  if (hasClock) transfers.push(source(states.length, () => 1));
  return { transfers, stateCount: states.length, hasClock };
}
