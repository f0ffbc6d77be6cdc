/** An arithmetic expression. */
export type Expression =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'negative'; readonly of: Expression }
  | {
      readonly kind: 'sum' | 'product' | 'quotient' | 'power';
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: 'call'; readonly name: string; readonly of: readonly Expression[] };

export const FUNCTIONS: Readonly<Record<string, (...values: number[]) => number>> = {
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  exp: Math.exp,
  ln: Math.log,
  log: Math.log,
  sqrt: Math.sqrt,
  tanh: Math.tanh,
  abs: Math.abs,
  max: Math.max,
  min: Math.min,
};

type Token = { readonly kind: 'number' | 'name' | 'sign'; readonly text: string };

const PATTERN =
  /\s*(?:(\d+\.?\d*(?:[eE][+-]?\d+)?|\.\d+(?:[eE][+-]?\d+)?)|([A-Za-z_]\w*'?)|(\*\*|[-+*/^(),]))/y;

/** Splits a run of letters such as `y6y8` into names that are known; the whole where it cannot be split. */
function knownParts(run: string, known: ReadonlySet<string>): string[] {
  if (known.has(run) || run === '') return run === '' ? [] : [run];
  for (let length = run.length - 1; length > 0; length -= 1) {
    if (!known.has(run.slice(0, length))) continue;
    const rest = knownParts(run.slice(length), known);
    if (rest.every((name) => known.has(name))) return [run.slice(0, length), ...rest];
  }
  return [run];
}

function tokensOf(text: string, known: ReadonlySet<string>): Token[] {
  const tokens: Token[] = [];
  PATTERN.lastIndex = 0;
  while (PATTERN.lastIndex < text.trimEnd().length) {
    const at = PATTERN.lastIndex;
    const match = PATTERN.exec(text);
    if (!match) throw new Error(`'${text}' cannot be read from '${text.slice(at)}' on`);
    const [, number, name, sign] = match;
    if (number !== undefined) tokens.push({ kind: 'number', text: number });
    else if (name !== undefined) {
      for (const part of knownParts(name, known)) tokens.push({ kind: 'name', text: part });
    } else tokens.push({ kind: 'sign', text: sign ?? '' });
  }
  return tokens;
}

/** Reads sums of products of powers; factors side by side are multiplied, from left to right with `/`. */
class Reader {
  private readonly tokens: readonly Token[];
  private readonly known: ReadonlySet<string>;
  private at = 0;

  constructor(tokens: readonly Token[], known: ReadonlySet<string>) {
    this.tokens = tokens;
    this.known = known;
  }

  whole(): Expression {
    const result = this.sum();
    if (this.at < this.tokens.length) throw new Error(`'${this.tokens[this.at]!.text}' is one too many`);
    return result;
  }

  private takes(...signs: readonly string[]): string | undefined {
    const token = this.tokens[this.at];
    if (token?.kind !== 'sign' || !signs.includes(token.text)) return undefined;
    this.at += 1;
    return token.text;
  }

  private sum(): Expression {
    let left = this.product();
    for (let sign = this.takes('+', '-'); sign; sign = this.takes('+', '-')) {
      const right = this.product();
      left = { kind: 'sum', left, right: sign === '+' ? right : { kind: 'negative', of: right } };
    }
    return left;
  }

  private product(): Expression {
    if (this.takes('-')) return { kind: 'negative', of: this.product() };
    let left = this.power();
    for (;;) {
      const sign = this.takes('*', '/');
      const next = this.tokens[this.at];
      const isFactor = next !== undefined && (next.kind !== 'sign' || next.text === '(');
      if (!sign && !isFactor) return left;
      left = { kind: sign === '/' ? 'quotient' : 'product', left, right: this.power() };
    }
  }

  private power(): Expression {
    const left = this.atom();
    if (!this.takes('^', '**')) return left;
    const right: Expression = this.takes('-') ? { kind: 'negative', of: this.power() } : this.power();
    return { kind: 'power', left, right };
  }

  private atom(): Expression {
    const token = this.tokens[this.at];
    if (!token) throw new Error('something is missing at the end');
    this.at += 1;
    if (token.kind === 'number') return { kind: 'number', value: Number(token.text) };
    if (token.kind === 'sign') {
      if (token.text !== '(') throw new Error(`'${token.text}' stands where a value should`);
      const inner = this.sum();
      if (!this.takes(')')) throw new Error("a ')' is missing");
      return inner;
    }
    if (token.text in FUNCTIONS && !this.known.has(token.text)) return this.call(token.text);
    if (!this.known.has(token.text)) throw new Error(`'${token.text}' is not known`);
    return { kind: 'name', name: token.text };
  }

  private call(name: string): Expression {
    if (!this.takes('(')) throw new Error(`${name} stands without its '('`);
    const of = [this.sum()];
    while (this.takes(',')) of.push(this.sum());
    if (!this.takes(')')) throw new Error(`a ')' is missing after ${name}`);
    return { kind: 'call', name, of };
  }
}

/**
 * Reads an expression as it is written in print: `280y6y8`, `mu N/(k+N) P`, `2 pi (t-0.25)`.
 * @throws Error when it cannot be read or a name is neither known nor a function.
 */
export function readExpression(text: string, known: ReadonlySet<string>): Expression {
  return new Reader(tokensOf(text, known), known).whole();
}
