import { ELEMENTS, type ElementId } from '../variables/elements.ts';
import { VARIABLE_INDEX, type VariableId, variableSpec } from '../variables/variables.ts';
import type {
  AnyDerivation,
  AnyProcess,
  ParameterSpec,
  ParameterSpecs,
  Reaction,
  RunningDerivation,
  RunningProcess,
  Setting,
} from './contract.ts';
import { netElements } from './stoichiometry.ts';

export type ParameterTable = Readonly<Record<string, Readonly<Record<string, number>>>>;

export interface BookedReaction extends Reaction {
  readonly process: string;
}

/** Processes and derivations put together and checked, ready to be integrated. */
export interface ReactionSystem {
  readonly reactions: readonly BookedReaction[];
  /** Compressed rows by reaction: entries `start[r] … start[r + 1]` give state index and coefficient. */
  readonly start: Int32Array;
  readonly index: Int32Array;
  readonly coefficient: Float64Array;
  /** Refreshes derived variables, then writes all reaction rates [extent/s]. */
  evaluate(values: Float64Array, rates: Float64Array): void;
  /** Refreshes derived variables only. */
  derive(values: Float64Array): void;
}

function settingFor(owner: string, allowed: ReadonlySet<VariableId>): Setting {
  return {
    index(id) {
      if (!allowed.has(id)) throw new Error(`${owner} uses ${id} without declaring it`);
      return VARIABLE_INDEX[id];
    },
  };
}

/** Whatever has parameters in the table under its id. */
export interface ParameterOwner<P> {
  readonly id: string;
  readonly parameters: ParameterSpecs<P>;
}

/**
 * Returns the parameters of an owner from a table, each checked against its range [units in the specs].
 * @throws Error naming a missing one, RangeError naming one outside its range with both ends.
 */
export function checkedParameters<P>(
  owner: ParameterOwner<P>,
  table: ParameterTable,
): Readonly<Record<keyof P, number>> {
  const given = table[owner.id] ?? {};
  const result: Record<string, number> = {};
  for (const [key, spec] of Object.entries<ParameterSpec>(owner.parameters)) {
    const value = given[key];
    if (value === undefined) throw new Error(`parameter ${owner.id}.${key} [${spec.unit}] is missing`);
    if (!(value >= spec.min && value <= spec.max)) {
      throw new RangeError(
        `parameter ${owner.id}.${key} = ${value} ${spec.unit} is outside ${spec.min} to ${spec.max}`,
      );
    }
    result[key] = value;
  }
  return result as Record<keyof P, number>;
}

/** Orders derivations so that each runs after those it reads from. @throws Error on rings and doubled providers. */
function orderDerivations(derivations: readonly AnyDerivation[]): AnyDerivation[] {
  const provider = new Map<VariableId, AnyDerivation>();
  for (const derivation of derivations) {
    for (const id of derivation.provides) {
      const other = provider.get(id);
      if (other) throw new Error(`${id} is provided by both ${other.id} and ${derivation.id}`);
      provider.set(id, derivation);
    }
  }
  const ordered: AnyDerivation[] = [];
  const state = new Map<AnyDerivation, 'open' | 'done'>();
  const visit = (derivation: AnyDerivation, path: readonly string[]): void => {
    if (state.get(derivation) === 'done') return;
    if (state.get(derivation) === 'open')
      throw new Error(`ring of derivations: ${[...path, derivation.id].join(' -> ')}`);
    state.set(derivation, 'open');
    for (const id of derivation.reads) {
      if (variableSpec(id).kind !== 'derived') continue;
      const source = provider.get(id);
      if (!source) throw new Error(`${derivation.id} reads ${id}, which nothing provides`);
      visit(source, [...path, derivation.id]);
    }
    state.set(derivation, 'done');
    ordered.push(derivation);
  };
  for (const derivation of derivations) visit(derivation, []);
  return ordered;
}

function checkReaction(process: AnyProcess, reaction: Reaction): void {
  const mayCross = new Set<ElementId>(process.boundary ?? []);
  for (const id of Object.keys(reaction.stoichiometry) as VariableId[]) {
    if (!process.changes.includes(id))
      throw new Error(`${process.id}: ${reaction.name} changes ${id} without declaring it`);
    if (variableSpec(id).kind !== 'state')
      throw new Error(`${process.id}: ${id} is not a state and cannot be changed`);
  }
  for (const [at, net] of netElements(reaction.stoichiometry).entries()) {
    if (Math.abs(net) <= 1e-12) continue;
    const element = ELEMENTS[at]!;
    if (element !== 'charge' && !mayCross.has(element))
      throw new Error(`${process.id}: ${reaction.name} does not conserve ${element} (${net} per unit)`);
  }
}

/**
 * Puts processes and derivations together.
 * @throws Error when a process uses or changes what it did not declare, breaks an element's balance it may not
 *   cross the boundary with, a read variable is provided by nobody or by two, or derivations form a ring.
 * @throws RangeError when a parameter lies outside its range.
 */
export function compose(
  processes: readonly AnyProcess[],
  derivations: readonly AnyDerivation[],
  parameters: ParameterTable,
): ReactionSystem {
  const ordered = orderDerivations(derivations);
  const provided = new Set(ordered.flatMap((derivation) => derivation.provides));
  const running: RunningDerivation[] = ordered.map((derivation) =>
    derivation.prepare(
      checkedParameters(derivation, parameters),
      settingFor(derivation.id, new Set([...derivation.reads, ...derivation.provides])),
    ),
  );

  const reactions: BookedReaction[] = [];
  const runners: { process: RunningProcess; offset: number }[] = [];
  const seen = new Set<string>();
  for (const process of processes) {
    if (seen.has(process.id)) throw new Error(`process ${process.id} is listed twice`);
    seen.add(process.id);
    for (const id of process.reads) {
      if (variableSpec(id).kind === 'derived' && !provided.has(id)) {
        throw new Error(`${process.id} reads ${id}, which nothing provides`);
      }
    }
    const prepared = process.prepare(
      checkedParameters(process, parameters),
      settingFor(process.id, new Set([...process.reads, ...process.changes])),
    );
    runners.push({ process: prepared, offset: reactions.length });
    for (const reaction of prepared.reactions) {
      checkReaction(process, reaction);
      reactions.push({ ...reaction, process: process.id });
    }
  }

  const start = new Int32Array(reactions.length + 1);
  const index: number[] = [];
  const coefficient: number[] = [];
  for (const [r, reaction] of reactions.entries()) {
    for (const [id, value] of Object.entries(reaction.stoichiometry)) {
      if (!value) continue;
      index.push(VARIABLE_INDEX[id as VariableId]);
      coefficient.push(value);
    }
    start[r + 1] = index.length;
  }

  const derive = (values: Float64Array): void => {
    for (const derivation of running) derivation.derive(values);
  };
  return {
    reactions,
    start,
    index: Int32Array.from(index),
    coefficient: Float64Array.from(coefficient),
    derive,
    evaluate(values, rates) {
      derive(values);
      for (const { process, offset } of runners) process.evaluate(values, rates, offset);
    },
  };
}
