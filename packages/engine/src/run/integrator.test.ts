import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createIntegrator, type IntegratorOptions } from './integrator.ts';

interface Transfer {
  readonly moves: Readonly<Record<number, number>>;
  readonly rate: (y: Float64Array) => number;
}

/** A reaction system without variables and derivations: states are the whole value array. */
function transferSystem(transfers: readonly Transfer[]) {
  const start = Int32Array.from({ length: transfers.length + 1 }, () => 0);
  const index: number[] = [];
  const coefficient: number[] = [];
  transfers.forEach(({ moves }, r) => {
    for (const [state, amount] of Object.entries(moves)) {
      index.push(Number(state));
      coefficient.push(amount);
    }
    start[r + 1] = index.length;
  });
  return {
    reactions: transfers.map((_, r) => ({ name: `transfer ${r}` })),
    start,
    index: Int32Array.from(index),
    coefficient: Float64Array.from(coefficient),
    derive() {},
    evaluate(values: Float64Array, rates: Float64Array) {
      transfers.forEach(({ rate }, r) => {
        rates[r] = rate(values);
      });
    },
  };
}

const flow = (from: number, to: number, rate: (y: Float64Array) => number): Transfer => ({
  moves: { [from]: -1, [to]: 1 },
  rate,
});

const sum = (values: Iterable<number>) => [...values].reduce((a, b) => a + b, 0);

/** All pools weighted, and the weights solved to the last digit: the published scheme. */
const PURE: IntegratorOptions = { explicitShare: 0, weightTolerance: 1e-14, mostGrowth: Infinity };

// Burchard, Deleersnijder & Meister 2003: y1' = y2 - 5 y1, y1 + y2 = 1; exact y1 = 1/6 + (y1(0) - 1/6) e^(-6t).
const EXCHANGE = [flow(0, 1, (y) => 5 * y[0]!), flow(1, 0, (y) => y[1]!)];

/** The scheme of order 2, weighted and as it runs. */
const SECOND: IntegratorOptions = { order: 2 };

function exchangeError(steps: number, options: IntegratorOptions): number {
  const y = Float64Array.of(0.9, 0.1);
  const integrator = createIntegrator(transferSystem(EXCHANGE), 2, options);
  for (let k = 0; k < steps; k += 1) integrator.step(y, 1.75 / steps, new Float64Array(2));
  return Math.abs(y[0]! - (1 / 6 + (0.9 - 1 / 6) * Math.exp(-6 * 1.75)));
}

describe('one step', () => {
  it('is implicit where all pools are weighted', () => {
    // One pool losing k y. Weights are w = y / sigma, so every stage reads y_i = y^n / (1 + taken / sigma):
    // with q = h k and y^n = 1: y2 = 1/(1 + q/2); sigma = y2^2; y3 = 1/(1 + 3/4 q y2/sigma);
    // yp = 1/(1 + q y2/sigma); y = 1/(1 + q (2/9 + y2/3 + 4/9 y3)/yp).
    for (const q of [0.1, 1, 10, 1e4]) {
      const y2 = 1 / (1 + q / 2);
      const y3 = 1 / (1 + (0.75 * q) / y2);
      const yp = 1 / (1 + q / y2);
      const expected = 1 / (1 + (q * (2 / 9 + y2 / 3 + (4 / 9) * y3)) / yp);
      const y = Float64Array.of(1);
      const transfers: Transfer[] = [{ moves: { 0: -1 }, rate: (v) => v[0]! }];
      createIntegrator(transferSystem(transfers), 1, PURE).step(y, q, new Float64Array(1));
      expect(y[0]! / expected).toBeCloseTo(1, 12);
    }
  });

  it.each([
    ['weighted throughout', PURE],
    ['as by default', {}],
  ])('is of third order, %s', (_name, options) => {
    const order = Math.log2(exchangeError(320, options) / exchangeError(640, options));
    expect(order).toBeGreaterThan(2.8);
    expect(order).toBeLessThan(3.2);
  });

  it('is implicit in the scheme of order 2 as well', () => {
    // yp = 1/(1 + q); y = 1/(1 + q (1/2 + yp/2)/yp).
    for (const q of [0.1, 1, 10, 1e4]) {
      const yp = 1 / (1 + q);
      const expected = 1 / (1 + (q * (0.5 + 0.5 * yp)) / yp);
      const y = Float64Array.of(1);
      const transfers: Transfer[] = [{ moves: { 0: -1 }, rate: (v) => v[0]! }];
      createIntegrator(transferSystem(transfers), 1, { ...PURE, ...SECOND }).step(y, q, new Float64Array(1));
      expect(y[0]! / expected).toBeCloseTo(1, 12);
    }
  });

  it.each([
    ['weighted throughout', { ...PURE, ...SECOND }],
    ['as by default', SECOND],
  ])('is of second order where asked, %s', (_name, options) => {
    const order = Math.log2(exchangeError(320, options) / exchangeError(640, options));
    expect(order).toBeGreaterThan(1.9);
    expect(order).toBeLessThan(2.1);
  });

  it('adds the extents that account for the change', () => {
    const y = Float64Array.of(0.9, 0.1);
    const extents = Float64Array.of(10, 20);
    createIntegrator(transferSystem(EXCHANGE), 2).step(y, 0.3, extents);
    expect(y[0]! - 0.9).toBeCloseTo(extents[1]! - 20 - (extents[0]! - 10), 14);
  });
});

const share = fc.double({ min: 0, max: 1, noNaN: true });
const decades = (low: number, high: number) => share.map((u) => 10 ** (low + (high - low) * u));
const content = fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 3, arbitrary: decades(-9, 1) });

interface Draft {
  readonly consumed: readonly number[];
  readonly produced: readonly number[];
  readonly amounts: readonly number[];
  readonly speed: number;
  readonly half: number;
}

/** A reaction that keeps sum of element times content, by the amount of its last product. */
function balancedTransfer(
  { consumed, produced, amounts, speed, half }: Draft,
  element: readonly number[],
): Transfer {
  const sources = [...new Set(consumed)];
  const targets = [...new Set(produced)].filter((state) => !sources.includes(state));
  const moves: Record<number, number> = {};
  let net = 0;
  sources.forEach((state, k) => {
    moves[state] = -amounts[k]!;
    net -= amounts[k]! * element[state]!;
  });
  targets.forEach((state, k) => {
    const amount = -net / element[state]! / (targets.length - k);
    moves[state] = amount;
    net += amount * element[state]!;
  });
  const rate = (y: Float64Array) =>
    targets.length === 0 ? 0 : sources.reduce((r, state) => (r * y[state]!) / (half + y[state]!), speed);
  return { moves, rate };
}

const POOLS = 6;
const pool = fc.integer({ min: 0, max: POOLS - 1 });
const draft: fc.Arbitrary<Draft> = fc.record({
  consumed: fc.array(pool, { minLength: 1, maxLength: 3 }),
  produced: fc.array(pool, { minLength: 1, maxLength: 3 }),
  amounts: fc.array(decades(-2, 1), { minLength: 3, maxLength: 3 }),
  speed: decades(-9, 1),
  half: decades(-6, 0),
});

describe('any system at any step', () => {
  const worlds = fc.record({
    drafts: fc.array(draft, { minLength: 1, maxLength: 10 }),
    element: fc.array(decades(-1, 1), { minLength: POOLS, maxLength: POOLS }),
    start: fc.array(content, { minLength: POOLS, maxLength: POOLS }),
    h: decades(0, 6),
    explicitShare: fc.constantFrom(0, 0.2, 0.5),
    order: fc.constantFrom<(2 | 3)[]>(2, 3),
  });

  it('keeps every pool >= 0 and every balance to rounding', () => {
    fc.assert(
      fc.property(worlds, ({ drafts, element, start, h, explicitShare, order }) => {
        const transfers = drafts.map((one) => balancedTransfer(one, element));
        const integrator = createIntegrator(transferSystem(transfers), POOLS, { explicitShare, order });
        const y = Float64Array.from(start);
        const before = sum(y.map((v, i) => v * element[i]!));
        const extents = new Float64Array(transfers.length);
        for (let k = 0; k < 4; k += 1) {
          integrator.step(y, h, extents);
          expect(Math.min(...y)).toBeGreaterThanOrEqual(0);
        }
        const moved = sum(
          transfers.flatMap(({ moves }, r) =>
            Object.entries(moves).map(([i, amount]) => Math.abs(amount * extents[r]! * element[Number(i)]!)),
          ),
        );
        const after = sum(y.map((v, i) => v * element[i]!));
        expect(Math.abs(after - before)).toBeLessThanOrEqual(1e-14 * 10 * (before + moved));
      }),
      { numRuns: 2000 },
    );
  });

  it('hardly ever has to scale reactions beyond their weights', () => {
    let steps = 0;
    let repairs = 0;
    fc.assert(
      fc.property(worlds, ({ drafts, element, start, h }) => {
        const transfers = drafts.map((one) => balancedTransfer(one, element));
        const integrator = createIntegrator(transferSystem(transfers), POOLS);
        const y = Float64Array.from(start);
        for (let k = 0; k < 4; k += 1) integrator.step(y, h, new Float64Array(transfers.length));
        steps += integrator.counters.steps;
        repairs += integrator.counters.repairs;
      }),
      { numRuns: 1000, seed: 1 },
    );
    expect(repairs / steps).toBeLessThan(1e-3);
  });
});

describe('a pool that runs out', () => {
  // Pool 0 is used up by a saturated reaction; pools 2 and 3 exchange on their own.
  const USE_UP = flow(0, 1, (y) => (1e-3 * y[0]!) / (1e-9 + y[0]!));
  const EXCHANGE_APART = [flow(2, 3, (y) => 1e-4 * y[2]!), flow(3, 2, (y) => 3e-4 * y[3]!)];

  it('leaves the others undisturbed', () => {
    const together = createIntegrator(transferSystem([USE_UP, ...EXCHANGE_APART]), 4);
    const apart = createIntegrator(transferSystem(EXCHANGE_APART), 4);
    const y = Float64Array.of(1, 0, 1, 0);
    const alone = Float64Array.of(1, 0, 1, 0);
    for (let k = 0; k < 10; k += 1) {
      together.step(y, 600, new Float64Array(3));
      apart.step(alone, 600, new Float64Array(2));
    }
    expect(y[0]! >= 0 && y[0]! < 1e-6).toBe(true);
    expect(y[0]! + y[1]!).toBeCloseTo(1, 14);
    expect([y[2], y[3]]).toEqual([alone[2], alone[3]]);
  });

  it('limits the reactions that need it and no other of their reactants', () => {
    // 2 A + B -> C at a rate that would use A up several times over; D -> B goes on.
    const transfers: Transfer[] = [
      {
        moves: { 0: -2, 1: -1, 2: 1 },
        rate: (y) => (1e-2 * y[0]! * y[1]!) / ((1e-6 + y[0]!) * (1e-6 + y[1]!)),
      },
      flow(3, 1, (y) => 1e-5 * y[3]!),
    ];
    const y = Float64Array.of(1, 1, 0, 1);
    const extents = new Float64Array(2);
    createIntegrator(transferSystem(transfers), 4).step(y, 1000, extents);
    expect(y[0]! >= 0 && y[0]! < 0.01).toBe(true);
    expect(y[2]).toBeCloseTo(0.5, 2);
    expect(y[1]! + y[2]! - extents[1]!).toBeCloseTo(1, 14);
  });

  it('fills from exactly zero', () => {
    // y' = 1 - y from 0: y = 1 - e^-t.
    const transfers: Transfer[] = [
      { moves: { 0: 1 }, rate: () => 1 },
      { moves: { 0: -1 }, rate: (y) => y[0]! },
    ];
    const y = Float64Array.of(0);
    const integrator = createIntegrator(transferSystem(transfers), 1);
    for (let k = 0; k < 200; k += 1) integrator.step(y, 0.01, new Float64Array(2));
    expect(y[0]).toBeCloseTo(1 - Math.exp(-2), 4);
  });
});

describe('advance', () => {
  const day = 86_400;
  const decay = (perDay: number) => flow(0, 1, (y) => (perDay / day) * y[0]!);

  it('covers the duration and keeps within the tolerance', () => {
    for (const relativeTolerance of [1e-2, 1e-3, 1e-4]) {
      const y = Float64Array.of(1, 0);
      const integrator = createIntegrator(transferSystem([decay(0.8)]), 2, { relativeTolerance });
      const extents = new Float64Array(1);
      for (let k = 0; k < 10; k += 1) integrator.advance(y, day / 2, extents);
      expect(Math.abs(y[0]! / Math.exp(-4) - 1)).toBeLessThan(10 * relativeTolerance);
      expect(extents[0]).toBeCloseTo(y[1]!, 14);
      expect(integrator.counters.steps).toBeLessThan(5 / relativeTolerance);
    }
  });

  it('ends on pools of wildly different speed, and counts what it gave up', () => {
    // Seconds against months, with a switch that no step resolves.
    const transfers = [
      flow(0, 1, (y) => (y[0]! > 0.5 ? 10 * y[0]! : 0)),
      flow(1, 0, (y) => (y[0]! < 0.5 ? 10 * y[1]! : 0)),
      flow(1, 2, (y) => 1e-7 * y[1]!),
    ];
    const y = Float64Array.of(1, 1, 0);
    const integrator = createIntegrator(transferSystem(transfers), 3, { leastStep: 60 });
    const extents = new Float64Array(3);
    integrator.advance(y, day, extents);
    expect(integrator.counters.floorHits).toBeGreaterThan(0);
    expect(integrator.counters.steps).toBeLessThanOrEqual(day / 60 + 1);
    expect(Math.abs(sum(y) - 2)).toBeLessThan(1e-15 * sum(extents));
    expect(Math.min(...y)).toBeGreaterThanOrEqual(0);
  });

  it('gives the same bits again', () => {
    const once = () => {
      const y = Float64Array.of(0.7, 0.3, 0.1);
      const transfers = [...EXCHANGE, flow(1, 2, (v) => v[1]! * v[2]!)];
      createIntegrator(transferSystem(transfers), 3, { leastStep: 1e-3, firstStep: 0.1 }).advance(
        y,
        3,
        new Float64Array(3),
      );
      return [...y];
    };
    expect(once()).toEqual(once());
  });

  it('remembers its step across calls and shortens it where needed', () => {
    const y = Float64Array.of(1, 0);
    const integrator = createIntegrator(transferSystem([decay(0.01)]), 2, { firstStep: 60 });
    integrator.advance(y, day, new Float64Array(1));
    const first = integrator.counters.steps;
    integrator.advance(y, day, new Float64Array(1));
    expect(integrator.counters.steps - first).toBeLessThan(first);
  });

  it('does nothing in no time', () => {
    const y = Float64Array.of(1, 0);
    createIntegrator(transferSystem([decay(1)]), 2).advance(y, 0, new Float64Array(1));
    expect([...y]).toEqual([1, 0]);
  });
});

describe('what it refuses', () => {
  const one = (rate: number) => transferSystem([flow(0, 1, () => rate)]);
  const stepOf = (rate: number, y = Float64Array.of(1, 0), h = 1) =>
    createIntegrator(one(rate), 2).step(y, h, new Float64Array(1));

  it('names the reaction whose rate is negative or not a number', () => {
    expect(() => stepOf(-1)).toThrow('transfer 0 is -1');
    expect(() => stepOf(Number.NaN)).toThrow('transfer 0 is NaN');
    expect(() => stepOf(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });

  it('negative states, bad steps, bad options, reactions on what is no state', () => {
    expect(() => stepOf(1, Float64Array.of(-1, 0))).toThrow('state 0 is -1');
    expect(() => stepOf(1, Float64Array.of(1, 0), 0)).toThrow(RangeError);
    expect(() => createIntegrator(one(1), 2).advance(Float64Array.of(1, 0), -1, new Float64Array(1))).toThrow(
      RangeError,
    );
    expect(() => createIntegrator(one(1), 2, { relativeTolerance: 0 })).toThrow(RangeError);
    expect(() => createIntegrator(one(1), 2, { explicitShare: 0.9 })).toThrow(RangeError);
    expect(() => createIntegrator(one(1), 2, { order: 4 as 3 })).toThrow('order = 4');
    expect(() => createIntegrator(one(1), 1)).toThrow(RangeError);
  });
});
