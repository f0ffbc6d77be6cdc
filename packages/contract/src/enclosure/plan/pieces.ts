import { type HardscapePiece, MOLAR_MASS } from '@shoreglass/engine';
import type { Library, Material, MaterialOf } from '@shoreglass/library';
import type { PieceContent } from '../schema/hardscape.ts';
import { plain } from './plain.ts';

/** kg/mol from g/mol. */
const perMole = (grams: number): number => grams / 1000;

/** What a dry mass of litter brings [mol]; the soluble part of the carbon stands apart. */
export function litterContents(material: MaterialOf<'litter'>, mass: number) {
  const carbon = (mass * plain(material.carbon, 'share')) / perMole(MOLAR_MASS.carbon);
  const soluble = plain(material.leachableCarbon, 'share');
  return {
    leachable: carbon * soluble,
    carbon: carbon * (1 - soluble),
    nitrogen: (mass * plain(material.nitrogen, 'share')) / perMole(MOLAR_MASS.nitrogen),
    phosphorus: (mass * plain(material.phosphorus, 'share')) / perMole(MOLAR_MASS.phosphorus),
  };
}

/** CaCO3 in a dry mass [mol]. */
export function carbonateAmount(material: MaterialOf<'carbonate'>, mass: number): number {
  return (mass * plain(material.carbonate, 'share')) / perMole(MOLAR_MASS.calciumCarbonate);
}

function contentsOf(material: Exclude<Material, { use: 'layer' }>, mass: number): HardscapePiece['contents'] {
  switch (material.use) {
    case 'wood':
      return {
        woodLeachable: (mass * plain(material.leachableCarbon, 'share')) / perMole(MOLAR_MASS.carbon),
      };
    case 'carbonate':
      return { carbonateSolid: carbonateAmount(material, mass) };
    case 'litter': {
      const { leachable, carbon, nitrogen, phosphorus } = litterContents(material, mass);
      return {
        litterCarbon: carbon,
        litterNitrogen: nitrogen,
        litterPhosphorus: phosphorus,
        litterLeachable: leachable,
      };
    }
    case 'stone':
      return {};
  }
}

/** @throws UnknownEntry, or Error for a material that is not a piece. */
export function pieceOf(content: PieceContent, library: Library): HardscapePiece {
  const material = library.material(content.material);
  if (material.use === 'layer') throw new Error(`${material.name} is a layer, not a piece`);
  const { id, name = material.name, mass, course = [] } = content;
  const grain = material.use === 'carbonate' ? (content.grain ?? plain(material.grain, 'length')) : undefined;
  return {
    id,
    name,
    kind: material.use,
    material: material.id,
    mass,
    volume: mass / plain(material.density, 'density'),
    course: course.map(({ x, z, thick, y }) =>
      y === undefined ? ([x, z, thick] as const) : ([x, z, thick, y] as const),
    ),
    contents: contentsOf(material, mass),
    ...(grain === undefined ? {} : { grain }),
  };
}
