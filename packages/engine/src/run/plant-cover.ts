import type { Plan } from '../plan/plan.ts';

/** Plan area of the pool zones [m2]. `derived`. */
export function poolArea(plan: Pick<Plan, 'box' | 'zones'>): number {
  return plan.zones
    .filter(({ kind }) => kind === 'pool')
    .reduce((area, { from, to }) => area + (to - from) * plan.box.width, 0);
}

/** Biomass of submerged plants at full cover of the pool [mol C]: mean of the plantings, 0 without any. `derived`. */
export function fullCover(plan: Plan): number {
  const submerged = plan.plants.filter(({ group }) => group === 'submerged');
  if (submerged.length === 0) return 0;
  const perArea =
    submerged.reduce((sum, { fullCoverBiomass }) => sum + fullCoverBiomass, 0) / submerged.length;
  return perArea * poolArea(plan);
}
