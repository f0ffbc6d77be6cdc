import { type Expression, FUNCTIONS } from './expression.ts';

export type Evaluate = (y: Float64Array) => number;

/** A product that enters a sum with a sign. */
export interface Term {
  readonly sign: 1 | -1;
  readonly of: Expression;
}

/** Multiplies out: what is left are products whose factors hold no sums but inside powers, denominators and functions. */
export function termsOf(expression: Expression): readonly Term[] {
  switch (expression.kind) {
    case 'negative':
      return termsOf(expression.of).map(({ sign, of }) => ({ sign: sign === 1 ? -1 : 1, of }));
    case 'sum':
      return [...termsOf(expression.left), ...termsOf(expression.right)];
    case 'product':
      return termsOf(expression.left).flatMap((left) =>
        termsOf(expression.right).map((right) => ({
          sign: left.sign === right.sign ? (1 as const) : (-1 as const),
          of: { kind: 'product' as const, left: left.of, right: right.of },
        })),
      );
    case 'quotient':
      return termsOf(expression.left).map(({ sign, of }) => ({
        sign,
        of: { kind: 'quotient' as const, left: of, right: expression.right },
      }));
    default:
      return [{ sign: 1, of: expression }];
  }
}

/** Puts expressions in the place of names, and of the names in those. */
export function substituted(expression: Expression, meaning: ReadonlyMap<string, Expression>): Expression {
  const inside = (one: Expression): Expression => substituted(one, meaning);
  switch (expression.kind) {
    case 'number':
      return expression;
    case 'name': {
      const found = meaning.get(expression.name);
      return found ? inside(found) : expression;
    }
    case 'negative':
      return { kind: 'negative', of: inside(expression.of) };
    case 'call':
      return { ...expression, of: expression.of.map(inside) };
    default:
      return { ...expression, left: inside(expression.left), right: inside(expression.right) };
  }
}

/** A function of the states; `place` gives the position of each name that is one. @throws Error for other names. */
export function compiled(expression: Expression, place: ReadonlyMap<string, number>): Evaluate {
  switch (expression.kind) {
    case 'number': {
      const { value } = expression;
      return () => value;
    }
    case 'name': {
      const at = place.get(expression.name);
      if (at === undefined) throw new Error(`'${expression.name}' has no value`);
      return (y) => y[at]!;
    }
    case 'negative': {
      const of = compiled(expression.of, place);
      return (y) => -of(y);
    }
    case 'call': {
      const of = expression.of.map((one) => compiled(one, place));
      const call = FUNCTIONS[expression.name]!;
      return (y) => call(...of.map((one) => one(y)));
    }
    default:
      return binary(expression.kind, compiled(expression.left, place), compiled(expression.right, place));
  }
}

function binary(kind: 'sum' | 'product' | 'quotient' | 'power', left: Evaluate, right: Evaluate): Evaluate {
  if (kind === 'sum') return (y) => left(y) + right(y);
  if (kind === 'product') return (y) => left(y) * right(y);
  if (kind === 'quotient') return (y) => left(y) / right(y);
  return (y) => left(y) ** right(y);
}
