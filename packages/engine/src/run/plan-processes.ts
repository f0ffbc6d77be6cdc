import { CYCLE_PROCESSES } from '../cycle/processes.ts';
import type { Plan } from '../plan/plan.ts';
import type { AnyProcess } from '../process/contract.ts';
import { plantedBiomass } from './plant-cover.ts';
import { wetSubstrate } from './wet-substrate.ts';

/**
 * The processes of the cycle that can run in a plan. What nothing in the plan can ever start costs no time: plants that
 * were not planted, and denitrification without wet substrate.
 * @source derived: no reaction of a process left out could have a rate above 0
 */
export function processesOf(plan: Plan): readonly AnyProcess[] {
  const idle = new Set<string>();
  if (plantedBiomass(plan, 'floating') === 0) idle.add('floating-plants');
  if (plantedBiomass(plan, 'emersed') === 0) idle.add('emersed-plants');
  if (wetSubstrate(plan) === 0) idle.add('denitrification');
  return CYCLE_PROCESSES.filter(({ id }) => !idle.has(id));
}
