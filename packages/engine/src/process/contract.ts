import type { ElementId } from '../variables/elements.ts';
import type { VariableId } from '../variables/variables.ts';
import type { Stoichiometry } from './stoichiometry.ts';

/** What a parameter is: unit, the range outside which it is refused, and its meaning in a phrase. */
export interface ParameterSpec {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly meaning: string;
}
export type ParameterSpecs<P> = { readonly [K in keyof P]: ParameterSpec };

/** What a process may ask of the enclosure once, before the run. Geometry that changes is a driver instead. */
export interface Setting {
  /** Position of a variable in the value array; throws for a variable the process did not declare. */
  index(id: VariableId): number;
}

/**
 * One reaction: amounts move between pools in fixed ratio. `stoichiometry` gives mol (or mol C, m3) of each
 * state variable per unit of extent; negative is consumed. The rate is never negative.
 */
export interface Reaction {
  /** Read in budgets: a noun phrase, unique in the process, such as 'uptake of nitrate'. */
  readonly name: string;
  readonly stoichiometry: Stoichiometry;
}

export interface RunningProcess {
  readonly reactions: readonly Reaction[];
  /**
   * Writes the rate of each reaction [extent/s, finite, >= 0] to `rates[offset + i]`, reading `values` by the
   * indices fetched at `prepare`. Must vanish when a consumed pool is empty. Does not know the step size.
   */
  evaluate(values: Float64Array, rates: Float64Array, offset: number): void;
}

export interface Process<P> {
  readonly id: string;
  readonly parameters: ParameterSpecs<P>;
  readonly reads: readonly VariableId[];
  readonly changes: readonly VariableId[];
  /** Elements it may bring in or take out of the glass. Charge need not be declared: alkalinity is booked, not conserved. */
  readonly boundary?: readonly ElementId[];
  /** Checks and precomputes once. @throws RangeError when a parameter is unusable. */
  prepare(parameters: P, setting: Setting): RunningProcess;
}

/** Computes derived variables from state, drivers and other derived variables. */
export interface Derivation<P> {
  readonly id: string;
  readonly parameters: ParameterSpecs<P>;
  readonly reads: readonly VariableId[];
  readonly provides: readonly VariableId[];
  prepare(parameters: P, setting: Setting): RunningDerivation;
}
export interface RunningDerivation {
  /** Writes the provided variables into `values`. */
  derive(values: Float64Array): void;
}

// A list of processes holds parameters of many shapes; each process checks its own.
export type AnyProcess = Process<Readonly<Record<string, number>>>;
export type AnyDerivation = Derivation<Readonly<Record<string, number>>>;

/** Gives a process its place in a heterogeneous list; parameters are matched to the specs by the composition. */
export function listed<P extends Readonly<Record<keyof P, number>>>(process: Process<P>): AnyProcess {
  return process as unknown as AnyProcess;
}
/** The same for a derivation. */
export function listedDerivation<P extends Readonly<Record<keyof P, number>>>(
  derivation: Derivation<P>,
): AnyDerivation {
  return derivation as unknown as AnyDerivation;
}
