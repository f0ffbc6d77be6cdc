import { MOLAR_MASS } from '@shoreglass/engine';
import type { Organism } from '@shoreglass/library';

/**
 * Calcium carbonate per body carbon of a species that builds it from the water [mol/mol]; 0 for all others. The file
 * states the mineral of shell or cuticle over dry mass without it (`shell`).
 * @param carbonContent of dry mass [g/g]
 */
export function shellOf(
  { shell, habitat }: Pick<Organism, 'shell' | 'habitat'>,
  carbonContent: number,
): number {
  return habitat === 'water' && shell ? perCarbon(shell.value, carbonContent) : 0;
}

/**
 * The same of a species that takes it from what it eats on land [mol/mol]; 0 for all others.
 * @param carbonContent of dry mass [g/g]
 */
export function shellOnLandOf(
  { shell, habitat }: Pick<Organism, 'shell' | 'habitat'>,
  carbonContent: number,
): number {
  return habitat !== 'water' && shell ? perCarbon(shell.value, carbonContent) : 0;
}

const perCarbon = (perDryMass: number, carbonContent: number): number =>
  (perDryMass * MOLAR_MASS.carbon) / (MOLAR_MASS.calciumCarbonate * carbonContent);
