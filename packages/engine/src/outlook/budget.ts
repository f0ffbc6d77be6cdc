import { ELEMENTS, type ElementId } from '../variables/elements.ts';
import { STATE_IDS, type VariableSpec, variableSpec } from '../variables/variables.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';

/** Who adds and who removes something dissolved in the water, by stretch of the run. */
export interface Budget {
  readonly id: BudgetId;
  /** 'alkalinity', 'dissolved nitrogen'. */
  readonly name: string;
  /** Of the amounts in the whole of the water: 'meq', 'mg N'. */
  readonly unit: string;
  /** What is counted, in one sentence. */
  readonly about: string;
  /** Days of the run, `from` included, `to` excluded. */
  readonly periods: readonly { readonly from: number; readonly to: number }[];
  /** By who adds (positive) or removes (negative), the largest movers first; one amount per period. */
  readonly terms: readonly BudgetTerm[];
  /** Amount in the water at the start of the first period and at the end of each: one more than periods. */
  readonly stock: readonly number[];
}

export interface BudgetTerm {
  readonly term: string;
  readonly amounts: readonly number[];
}

export type BudgetId = 'alkalinity' | 'nitrogen' | 'ammonia' | 'phosphorus' | 'hardness' | 'oxygen';

/** What a budget counts: a linear measure of the states, in its own unit. */
export interface BudgetMeasure {
  readonly id: BudgetId;
  readonly name: string;
  readonly unit: string;
  readonly about: string;
  /** Amount per unit of each state, by its position. */
  readonly weights: Float64Array;
}

const MILLI = 1000;

function inWater(amountOf: (spec: VariableSpec, id: string) => number): Float64Array {
  return Float64Array.from(STATE_IDS, (id) => {
    const spec = variableSpec(id);
    return spec.compartment === 'water' ? amountOf(spec, id) : 0;
  });
}

function elements(ids: readonly ElementId[], perAmount: number): Float64Array {
  return inWater(
    ({ content }) =>
      ELEMENTS.reduce((sum, element) => sum + (ids.includes(element) ? (content?.[element] ?? 0) : 0), 0) *
      perAmount,
  );
}

/** Every budget the outlook carries, in the order in which they are shown. @source derived: contents of the pools */
export const BUDGET_MEASURES: readonly BudgetMeasure[] = [
  {
    id: 'alkalinity',
    name: 'alkalinity',
    unit: 'meq',
    about: 'The acid the water can take up; carbonate hardness measures it and it holds the pH.',
    weights: elements(['charge'], MILLI),
  },
  {
    id: 'nitrogen',
    name: 'dissolved nitrogen',
    unit: 'mg N',
    about: 'Nitrogen of ammonia, nitrite and nitrate together.',
    weights: elements(['nitrogen'], MILLI * MOLAR_MASS.nitrogen),
  },
  {
    id: 'ammonia',
    name: 'total ammonia',
    unit: 'mg N',
    about: 'Nitrogen of ammonia and ammonium, before anything has oxidised it.',
    weights: inWater((_, id) => (id === 'ammonium' ? MILLI * MOLAR_MASS.nitrogen : 0)),
  },
  {
    id: 'phosphorus',
    name: 'dissolved phosphorus',
    unit: 'mg P',
    about: 'Phosphorus of phosphate.',
    weights: elements(['phosphorus'], MILLI * MOLAR_MASS.phosphorus),
  },
  {
    id: 'hardness',
    name: 'calcium and magnesium',
    unit: 'mmol',
    about: 'The minerals that general hardness counts.',
    weights: elements(['calcium', 'magnesium'], MILLI),
  },
  {
    id: 'oxygen',
    name: 'dissolved oxygen',
    unit: 'mg',
    about: 'Oxygen in the water; the air makes good most of what is used up.',
    weights: inWater((_, id) => (id === 'oxygen' ? MILLI * MOLAR_MASS.oxygen : 0)),
  },
];
