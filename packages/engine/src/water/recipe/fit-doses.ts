import { nonNegativeLeastSquares } from '../../numerics/non-negative-least-squares.ts';
import { limitingConductivity } from './contribution.ts';
import { misfitOf, scaleOf } from './miss.ts';
import { type Doses, finished, type MixModel, mixModel, row } from './mix-model.ts';
import type { RecipeWater } from './recipe.ts';
import { quantityIn, recipeWater } from './recipe-water.ts';
import type { RecipeRequest, RecipeTarget } from './request.ts';

/** What is liked among recipes that fit alike: a small price on each unknown. */
export interface Preference {
  /** Per mol/m3 of every salt, in scales of a target. */
  readonly salts: number;
  /** The same for salts that bring sodium or potassium, where no target speaks of it. */
  readonly sodium: number;
  readonly potassium: number;
}
/** Potassium dearer than sodium: small waters hold little of it, and invertebrates bear less of it. */
export const EVEN: Preference = { salts: 1e-3, sodium: 1.5e-3, potassium: 3e-3 };

export interface Fit {
  readonly doses: Doses;
  readonly water: RecipeWater;
  readonly misfit: number;
}

/** Weights of what must hold beside what is aimed at: sums of shares exactly, limits nearly. */
const MUST = 1e4;
const LIMIT = 100;
/** Below these an unknown is none [1; mol/m3]. */
const NO_SHARE = 1e-6;
const NO_SALT = 1e-5;

/** Rows of the problem, grown one by one; slack unknowns come after the real ones. */
class Rows {
  readonly rows: { readonly entries: Map<number, number>; readonly right: number }[] = [];
  columns: number;
  constructor(columns: number) {
    this.columns = columns;
  }
  add(values: readonly number[], right: number, weight: number, slack = 0): void {
    const entries = new Map(values.map((value, k) => [k, weight * value]));
    if (slack !== 0) {
      entries.set(this.columns, weight * slack);
      this.columns += 1;
    }
    this.rows.push({ entries, right: weight * right });
  }
  solve(): Float64Array {
    const matrix = new Float64Array(this.rows.length * this.columns);
    this.rows.forEach(({ entries }, i) => {
      for (const [j, value] of entries) matrix[i * this.columns + j] = value;
    });
    const right = Float64Array.from(this.rows, (each) => each.right);
    return nonNegativeLeastSquares({ matrix, right, columns: this.columns }).x;
  }
}

function addTarget(rows: Rows, target: RecipeTarget, values: readonly number[], fixed: number): void {
  const { aim, low, high, weight = 1 } = target;
  const unit = 1 / scaleOf(target);
  const scaled = values.map((value) => value * unit);
  if (aim !== undefined) rows.add(scaled, (aim - fixed) * unit, weight);
  if (low !== undefined) rows.add(scaled, (low - fixed) * unit, LIMIT, -1);
  if (high !== undefined) rows.add(scaled, (high - fixed) * unit, LIMIT, 1);
}

/** Shares that sum to one within their least and largest, of the unknowns above the least. */
function addShares(rows: Rows, { waters }: RecipeRequest, salts: number): void {
  const none = new Array<number>(salts).fill(0);
  const least = waters.reduce((sum, water) => sum + (water.least ?? 0), 0);
  rows.add([...waters.map(() => 1), ...none], 1 - least, MUST);
  waters.forEach((water, k) => {
    if (water.most === undefined || water.most >= 1) return;
    rows.add([...waters.map((_, j) => (j === k ? 1 : 0)), ...none], water.most - (water.least ?? 0), MUST, 1);
  });
}

/** One solution with conductivity taken as a fixed part of its limiting value. */
function solveOnce(request: RecipeRequest, model: MixModel, factor: number, like: Preference): Doses {
  const { waters, salts, targets } = request;
  const rows = new Rows(waters.length + salts.length);
  if (waters.length > 0) addShares(rows, request, salts.length);
  for (const target of targets) {
    const part = target.quantity === 'conductivity' ? factor : 1;
    const { fixed, waters: a, salts: b } = row(model, target.quantity);
    const base = a.reduce((sum, value, k) => sum + value * (waters[k]!.least ?? 0), fixed);
    addTarget(
      rows,
      target,
      [...a, ...b].map((value) => part * value),
      part * base,
    );
  }
  salts.forEach((_, k) => {
    const price = priceOf(model.salts[k]!, targets, like);
    rows.add([...waters.map(() => 0), ...salts.map((_, j) => (j === k ? price : 0))], 0, 1);
  });
  return tidy(rows.solve(), request);
}

/** Price of a salt by the dearest ion it brings that no target speaks of. */
function priceOf(
  ions: MixModel['salts'][number],
  targets: readonly RecipeTarget[],
  { salts, sodium, potassium }: Preference,
): number {
  const open = (ion: 'sodium' | 'potassium') =>
    (ions[ion] ?? 0) > 0 && targets.every(({ quantity }) => quantity !== ion);
  return Math.max(salts, open('sodium') ? sodium : 0, open('potassium') ? potassium : 0);
}

function tidy(x: Float64Array, { waters, salts }: RecipeRequest): Doses {
  const shares = Float64Array.from(waters, (water, k) => x[k]! + (water.least ?? 0));
  shares.forEach((share, k) => {
    if (share < NO_SHARE) shares[k] = 0;
  });
  const sum = shares.reduce((total, share) => total + share, 0);
  return {
    shares: sum > 0 ? shares.map((share) => share / sum) : shares,
    salts: Float64Array.from(salts, (_, k) => {
      const amount = x[waters.length + k]!;
      return amount < NO_SALT ? 0 : amount;
    }),
  };
}

/** Conductivity over its limiting value in ordinary fresh water, to begin with. */
const USUAL_FACTOR = 0.88;

/**
 * Shares and salts that come nearest to the targets, the water they make, and how far it misses. Least squares over
 * what cannot be negative, each miss over its scale; limits as unknowns that take up what is left below or above;
 * conductivity, which is not linear, through its factor to the limiting value, repeated until it holds.
 * @source lawson-hanson-1974; derived: formulation
 */
export function fitDoses(request: RecipeRequest, like: Preference = EVEN): Fit {
  const model = mixModel(request);
  let factor = USUAL_FACTOR;
  for (let turn = 0; ; turn += 1) {
    const doses = solveOnce(request, model, factor, like);
    const water = recipeWater(finished(model, doses), request);
    const limiting = limitingConductivity(water.composition);
    const found = limiting > 1 ? water.conductivity / limiting : factor;
    const counts = request.targets.some(({ quantity }) => quantity === 'conductivity');
    if (!counts || turn === 12 || Math.abs(found - factor) < 1e-6)
      return { doses, water, misfit: misfitOf(request.targets, (quantity) => quantityIn(water, quantity)) };
    factor = found;
  }
}
