import { CYCLE_PROCESSES } from '../cycle/processes.ts';
import type { Plan } from '../plan/plan.ts';
import type { AnyProcess } from '../process/contract.ts';
import { exchangersOf } from './place-exchangers.ts';
import { phosphateBindersOf } from './place-phosphate.ts';
import { PLANT_POOLS, plantedBiomass, type RootedInWater } from './plant-cover.ts';
import { wetSubstrate } from './wet-substrate.ts';

const PLANTED = Object.keys(PLANT_POOLS) as RootedInWater[];

/**
 * The processes of the cycle that can run in a plan. What nothing in the plan can ever start costs no time: plants that
 * were not planted, denitrification without wet substrate, exchange without exchangers,
 * binding of phosphate without ground that binds it, the dead without animals.
 * @source derived: no reaction of a process left out could have a rate above 0
 */
export function processesOf(plan: Plan): readonly AnyProcess[] {
  const idle = new Set<string>();
  if (PLANTED.every((group) => plantedBiomass(plan, group) === 0)) idle.add('plant-remains');
  if (plantedBiomass(plan, 'submerged') === 0) idle.add('submerged-plants');
  if (plantedBiomass(plan, 'floating') === 0) idle.add('floating-plants');
  if (plantedBiomass(plan, 'emersed') === 0) idle.add('emersed-plants');
  if (wetSubstrate(plan) === 0) idle.add('denitrification');
  if (exchangersOf(plan).length === 0) idle.add('cation-exchange');
  if (phosphateBindersOf(plan).length === 0) idle.add('phosphate-sorption');
  if (plan.populations.every(({ shell = 0 }) => shell === 0)) idle.add('shell-building');
  if (plan.populations.length === 0) idle.add('carcass-breakdown');
  return CYCLE_PROCESSES.filter(({ id }) => !idle.has(id));
}
