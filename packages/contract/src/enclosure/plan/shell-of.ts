import { MOLAR_MASS } from '@shoreglass/engine';
import type { Organism } from '@shoreglass/library';

/**
 * Calcium carbonate in shell or cuticle over dry mass without it [g/g], by words of the group; the first that fits.
 * @source memory: shells of small pulmonates weigh two to three times the dry body; mineral of cuticles 10 to 40 %
 */
const BY_GROUP: readonly (readonly [RegExp, number])[] = [
  [/snail|clam|mussel/, 2.5],
  [/ostracod/, 0.6],
  [/crab/, 0.5],
  [/crayfish/, 0.35],
  [/amphipod|isopod/, 0.2],
  [/shrimp/, 0.12],
];

/**
 * Calcium carbonate per body carbon of a species that builds it from the water [mol/mol]; 0 for all others.
 * @param carbonContent of dry mass [g/g]
 */
export function shellOf(
  { group, habitat }: Pick<Organism, 'group' | 'habitat'>,
  carbonContent: number,
): number {
  if (habitat !== 'water') return 0;
  const share = BY_GROUP.find(([words]) => words.test(group))?.[1] ?? 0;
  return (share * MOLAR_MASS.carbon) / (MOLAR_MASS.calciumCarbonate * carbonContent);
}
