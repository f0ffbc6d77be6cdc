import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atan, cbrt, cos, exp, exp10, expm1, log, log1p, log10, pow, sin, tanh } from './elementary.ts';

// The reference is the engine's own Math, whose error is itself below 1 ulp (2.2e-16) for these functions.
function worstDifference(
  ours: (x: number) => number,
  theirs: (x: number) => number,
  argument: (u: number) => number,
): number {
  let worst = 0;
  for (let i = 0; i < 20_000; i += 1) {
    const x = argument((i * 0.6180339887498949) % 1);
    const expected = theirs(x);
    const difference = Math.abs(ours(x) - expected);
    if (difference > 0) worst = Math.max(worst, difference / Math.abs(expected));
  }
  return worst;
}

const wide = (u: number) => Math.exp((u - 0.5) * 1400);
const near = (u: number) => 0.5 + u;
const tiny = (u: number) => Math.exp(-40 * u) * (u < 0.5 ? -1 : 1);
const span = (width: number) => (u: number) => (u - 0.5) * width;

describe('elementary functions', () => {
  it.each([
    ['exp', exp, Math.exp, span(1400), 4e-16],
    ['exp near zero', exp, Math.exp, span(2), 4e-16],
    ['log', log, Math.log, wide, 4e-16],
    ['log near one', log, Math.log, near, 4e-16],
    ['log10', log10, Math.log10, wide, 4e-16],
    ['log10 near one', log10, Math.log10, near, 4e-16],
    ['log1p', log1p, Math.log1p, (u: number) => u * 2 - 0.99, 5e-16],
    ['log1p near zero', log1p, Math.log1p, (u: number) => Math.abs(tiny(u)) / 2, 5e-16],
    ['expm1', expm1, Math.expm1, span(20), 6e-16],
    ['expm1 near zero', expm1, Math.expm1, tiny, 6e-16],
    ['exp10', exp10, (x: number) => 10 ** x, span(600), 4e-16],
    ['cbrt', cbrt, Math.cbrt, wide, 4e-16],
    ['sin', sin, Math.sin, span(2e6), 4e-16],
    ['cos', cos, Math.cos, span(2e6), 4e-16],
    ['atan', atan, Math.atan, (u: number) => Math.exp((u - 0.5) * 40), 4e-16],
    ['tanh', tanh, Math.tanh, span(40), 8e-16],
    ['tanh near zero', tanh, Math.tanh, tiny, 8e-16],
  ] as const)('%s agrees with Math', (_name, ours, theirs, argument, bound) => {
    expect(worstDifference(ours, theirs, argument)).toBeLessThan(bound);
  });

  it('pow agrees with Math over wide bases and exponents', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-300, max: 1e300, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        (base, exponent) => {
          const expected = base ** exponent;
          const difference = Math.abs(pow(base, exponent) - expected);
          expect(difference === 0 || difference <= 5e-16 * expected + 1e-323 || !(difference >= 0)).toBe(
            true,
          );
        },
      ),
    );
  });

  const EDGES = [0, -0, 1, -1, 0.5, -0.5, 2, 3, -3, 1e-320, 1e308, -1e308, Infinity, -Infinity, Number.NaN];

  it('pow has the limits of Math.pow', () => {
    for (const base of EDGES) {
      for (const exponent of EDGES) {
        const expected = base ** exponent;
        const ours = pow(base, exponent);
        const isOrdinary = Number.isFinite(expected) && Math.abs(expected) > 1e-307;
        if (isOrdinary) expect(ours / expected, `${base} ^ ${exponent}`).toBeCloseTo(1, 14);
        else expect(ours, `${base} ^ ${exponent}`).toBe(expected);
      }
    }
  });

  it.each([
    ['exp', exp, Math.exp],
    ['expm1', expm1, Math.expm1],
    ['log', log, Math.log],
    ['log10', log10, Math.log10],
    ['log1p', log1p, Math.log1p],
    ['cbrt', cbrt, Math.cbrt],
    ['sin', sin, Math.sin],
    ['cos', cos, Math.cos],
    ['atan', atan, Math.atan],
    ['tanh', tanh, Math.tanh],
  ] as const)('%s has the limits of Math', (_name, ours, theirs) => {
    for (const x of [...EDGES.filter((x) => Math.abs(x) !== 1e308), 800, -800]) {
      const expected = theirs(x);
      if (Number.isFinite(expected) && expected !== 0)
        expect(ours(x) / expected, `at ${x}`).toBeCloseTo(1, 14);
      else expect(ours(x), `at ${x}`).toBe(expected);
    }
  });

  it('is exact where the result is', () => {
    for (let n = -300; n <= 300; n += 1) expect(log10(Number(`1e${n}`))).toBe(n);
    for (let n = -1074; n <= 1023; n += 1) expect(pow(2, n)).toBe(2 ** n);
    for (let n = -100; n <= 100; n += 1) expect(cbrt(n * n * n)).toBe(n);
    expect([exp(0), exp10(2), exp10(-2), exp(-800), exp(800)]).toEqual([1, 100, 0.01, 0, Infinity]);
  });

  it('passes smoothly into subnormal results', () => {
    expect(exp(-740) / Math.exp(-740)).toBeCloseTo(1, 1);
    expect(exp(-709.5)).toBeCloseTo(Math.exp(-709.5), 320);
  });

  it('gives bits that never change', () => {
    // Decimal expansions to 17 digits from 60-digit arithmetic: e, ln 10, sqrt 2 to the 3, sin 1, cos 1, atan 1/2, tanh 1/2.
    expect(exp(1)).toBe(Math.E);
    expect(log(10)).toBe(Math.LN10);
    expect(pow(2, 1.5)).toBe(2.8284271247461903);
    expect(sin(1)).toBe(0.8414709848078965);
    expect(cos(1)).toBe(0.5403023058681398);
    expect(atan(0.5)).toBe(0.4636476090008061);
    expect(tanh(0.5)).toBe(0.46211715726000974);
  });
});
