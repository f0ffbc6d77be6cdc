import fc from 'fast-check';
import { exp10, log10 } from '../numerics/elementary.ts';
import {
  STATE_IDS,
  VARIABLE_IDS,
  VARIABLE_INDEX,
  type VariableId,
  variableSpec,
} from '../variables/variables.ts';
import { compose, type ReactionSystem } from './compose.ts';
import type { AnyDerivation, AnyProcess, ParameterSpec } from './contract.ts';

const CAMPAIGN = { numRuns: 300, seed: 20240229, includeErrorInReport: true } as const;
const AMOUNTS_AND_SIZES = new Set(['mol', 'm3', 'm2', 'm3/s']);

/** Everything of which twice the enclosure holds twice as much. */
function isExtensive(id: VariableId): boolean {
  return AMOUNTS_AND_SIZES.has(variableSpec(id).unit);
}

const logUniform = (low: number, high: number): fc.Arbitrary<number> =>
  fc
    .double({ min: log10(low), max: log10(high), noNaN: true })
    .map((exponent) => Math.min(high, Math.max(low, exp10(exponent))));

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** From nothing through the ordinary to the absurd, in the variable's own unit. */
function anyValue(id: VariableId): fc.Arbitrary<number> {
  const { unit } = variableSpec(id);
  if (id === 'pH') return between(2, 12);
  if (id === 'hydrogenActivity') return fc.oneof(fc.constant(0), logUniform(1e-12, 1e-2));
  if (id === 'alkalinity') return between(-10, 100);
  if (unit === 'degC') return between(-1, 45);
  if (unit === 'Pa') return between(6e4, 1.1e5);
  if (id === 'surfaceRenewal') return between(0, 1);
  if (unit === 'm3' || unit === 'm2' || unit === 'm') return fc.oneof(fc.constant(0), logUniform(1e-9, 1e3));
  return fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 4, arbitrary: logUniform(1e-7, 10) },
    { weight: 1, arbitrary: logUniform(1e-250, 1e-7) },
    { weight: 1, arbitrary: logUniform(10, 1e9) },
  );
}

function anyParameters(specs: Readonly<Record<string, ParameterSpec>>): fc.Arbitrary<Record<string, number>> {
  return fc.record(
    Object.fromEntries(Object.entries(specs).map(([key, { min, max }]) => [key, between(min, max)])),
  );
}

type Entries = Readonly<Partial<Record<VariableId, number>>>;

function anyEntries(ids: readonly VariableId[]): fc.Arbitrary<Entries> {
  return fc.record(Object.fromEntries(ids.map((id) => [id, anyValue(id)])));
}

/** A value array with the given entries and `elsewhere` in all other places. */
export function valuesWith(entries: Entries, elsewhere = 0): Float64Array {
  const values = new Float64Array(VARIABLE_IDS.length).fill(elsewhere);
  for (const [id, value] of Object.entries(entries)) values[VARIABLE_INDEX[id as VariableId]] = value;
  return values;
}

function ratesOf(system: ReactionSystem, values: Float64Array): Float64Array {
  const rates = new Float64Array(system.reactions.length).fill(Number.NaN);
  system.evaluate(values, rates);
  return rates;
}

function require(holds: boolean, complaint: string): void {
  if (!holds) throw new Error(complaint);
}

function doubled(values: Float64Array): Float64Array {
  const result = values.slice();
  for (const id of VARIABLE_IDS) if (isExtensive(id)) result[VARIABLE_INDEX[id]]! *= 2;
  return result;
}

function agree(a: number, b: number, relative: number): boolean {
  return a === b || Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-300;
}

/** Supplies what a process or derivation reads from derivations, as random as everything else. */
function supplierFor({ reads }: Pick<AnyProcess | AnyDerivation, 'reads'>): AnyDerivation {
  const provides = reads.filter((id) => variableSpec(id).kind === 'derived');
  return {
    id: 'supplied by the kit',
    parameters: {},
    reads: [],
    provides,
    prepare: () => ({ derive: () => undefined }),
  };
}

function checkRates(process: AnyProcess, system: ReactionSystem, values: Float64Array): void {
  const before = values.slice();
  const rates = ratesOf(system, values);
  require(values.every((value, i) =>
    Object.is(value, before[i]),
  ), `${process.id} changes the values it should only read`);
  const again = ratesOf(system, values);
  for (const [r, reaction] of system.reactions.entries()) {
    const rate = rates[r]!;
    require(Number.isFinite(rate) && rate >= 0, `${process.id}: rate of ${reaction.name} is ${rate}`);
    require(Object.is(rate, again[r]), `${process.id}: ${reaction.name} answers differently the second time`);
  }
}

function checkVanishing(process: AnyProcess, system: ReactionSystem, values: Float64Array): void {
  for (const [r, reaction] of system.reactions.entries()) {
    for (const [id, coefficient] of Object.entries(reaction.stoichiometry)) {
      if (coefficient >= 0) continue;
      const emptied = values.slice();
      emptied[VARIABLE_INDEX[id as VariableId]] = 0;
      const rate = ratesOf(system, emptied)[r]!;
      require(rate === 0, `${process.id}: ${reaction.name} goes on at ${rate} although ${id} is used up`);
    }
  }
}

function checkScaling(process: AnyProcess, system: ReactionSystem, values: Float64Array): void {
  const once = ratesOf(system, values);
  const twice = ratesOf(system, doubled(values));
  for (const [r, reaction] of system.reactions.entries()) {
    require(agree(
      twice[r]!,
      2 * once[r]!,
      1e-12,
    ), `${process.id}: ${reaction.name} gives ${once[r]}, but ${twice[r]} in twice the enclosure`);
  }
}

function checkDeclarations(process: AnyProcess, system: ReactionSystem): void {
  const names = new Set(system.reactions.map((reaction) => reaction.name));
  require(names.size === system.reactions.length, `${process.id} has two reactions of one name`);
  const changed = new Set(system.reactions.flatMap((reaction) => Object.keys(reaction.stoichiometry)));
  for (const id of process.changes) {
    require(changed.has(id), `${process.id} declares that it changes ${id}, but no reaction does`);
  }
  for (const [key, spec] of Object.entries(process.parameters)) {
    require(spec.min <= spec.max && Number.isFinite(spec.max), `${process.id}.${key} has no usable range`);
    require(spec.unit !== '' && spec.meaning !== '', `${process.id}.${key} lacks a unit or a meaning`);
  }
}

/**
 * Passes when a process keeps the contract over random parameters within their ranges and random states, empty
 * pools and dry glass included: it reads and changes only what it declares and balances every element it may not
 * bring across the boundary (both by the composition, which throws), its rates are finite and not negative,
 * vanish with a consumed pool, double in twice the enclosure, repeat bit by bit and leave the values alone.
 * @throws Error that names process, reaction and counterexample
 */
export function checkProcess(process: AnyProcess): void {
  const ids = VARIABLE_IDS.filter((id) => process.reads.includes(id) || process.changes.includes(id));
  fc.assert(
    fc.property(anyParameters(process.parameters), anyEntries(ids), (parameters, entries) => {
      const values = valuesWith(entries, Number.NaN);
      const system = compose([process], [supplierFor(process)], { [process.id]: parameters });
      checkDeclarations(process, system);
      checkRates(process, system, values);
      checkVanishing(process, system, values);
      checkScaling(process, system, values);
    }),
    CAMPAIGN,
  );
}

/**
 * Passes when a derivation, over random parameters and states, provides finite values from what it declares,
 * writes nothing else, and gives the same answers in twice the enclosure.
 * @throws Error that names derivation and variable
 */
export function checkDerivation(derivation: AnyDerivation): void {
  const provided = new Set<VariableId>(derivation.provides);
  fc.assert(
    fc.property(anyParameters(derivation.parameters), anyEntries(derivation.reads), (parameters, entries) => {
      const values = valuesWith(entries, Number.NaN);
      const system = compose([], [supplierFor(derivation), derivation], { [derivation.id]: parameters });
      const once = values.slice();
      system.derive(once);
      const twice = doubled(values);
      system.derive(twice);
      for (const id of VARIABLE_IDS) {
        const index = VARIABLE_INDEX[id];
        if (provided.has(id)) {
          require(Number.isFinite(once[index]!), `${derivation.id} gives ${once[index]} for ${id}`);
          const expected = isExtensive(id) ? 2 * once[index]! : once[index]!;
          require(agree(
            twice[index]!,
            expected,
            1e-9,
          ), `${derivation.id}: ${id} is not the same in twice the enclosure`);
        } else {
          require(Object.is(
            once[index],
            values[index],
          ), `${derivation.id} writes ${id} without declaring it`);
        }
      }
    }),
    CAMPAIGN,
  );
}

/** Rate of each reaction by name [extent/s], derived variables taken from `entries`. */
export function ratesByName(
  process: AnyProcess,
  parameters: Readonly<Record<string, number>>,
  entries: Entries,
): Readonly<Record<string, number>> {
  const system = compose([process], [supplierFor(process)], { [process.id]: parameters });
  const rates = ratesOf(system, valuesWith(entries));
  return Object.fromEntries(system.reactions.map((reaction, r) => [reaction.name, rates[r]!]));
}

/** Change of each state [per s], derived variables taken from `entries`. */
export function changesByState(
  process: AnyProcess,
  parameters: Readonly<Record<string, number>>,
  entries: Entries,
): Readonly<Record<string, number>> {
  const system = compose([process], [supplierFor(process)], { [process.id]: parameters });
  const rates = ratesOf(system, valuesWith(entries));
  const changes: Record<string, number> = {};
  for (const id of STATE_IDS) {
    let change = 0;
    for (const [r, reaction] of system.reactions.entries()) {
      change += (reaction.stoichiometry[id] ?? 0) * rates[r]!;
    }
    if (change !== 0) changes[id] = change;
  }
  return changes;
}
