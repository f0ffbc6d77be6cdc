import { type HardscapePiece, MOLAR_MASS } from '@shoreglass/engine';
import type { Library, Material, MaterialOf } from '@shoreglass/library';
import type { PieceContent } from '../schema/hardscape.ts';
import { exchangerOf, leachableOf } from './exchanger-of.ts';
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
    pace: material.pace.value,
  };
}

/** CaCO3 in a dry mass [mol]. */
export function carbonateAmount(material: MaterialOf<'carbonate'>, mass: number): number {
  return (mass * plain(material.carbonate, 'share')) / perMole(MOLAR_MASS.calciumCarbonate);
}

/** CaCO3 in a dry mass, in the pool of its mineral [mol]. */
export function carbonateContents(
  material: MaterialOf<'carbonate'>,
  mass: number,
): HardscapePiece['contents'] {
  const amount = carbonateAmount(material, mass);
  return material.mineral === 'aragonite' ? { aragoniteSolid: amount } : { carbonateSolid: amount };
}

/** Thickness of a branch whose course is not drawn [m]. @source assumed */
const USUAL_THICKNESS = 0.04;

/**
 * Organic carbon a piece of wood gives up, quick and slow part [mol]: of what its sawdust would, the share that lies
 * within the leaching depth, 4 depth / thickness of a cylinder, at most all.
 * @param thickness [m]
 */
export function woodLeachable(
  material: MaterialOf<'wood'>,
  mass: number,
  thickness: number,
): { readonly quick: number; readonly slow: number } {
  const reached = Math.min(1, (4 * plain(material.leachingDepth, 'length')) / thickness);
  const carbon = (mass * plain(material.extractableCarbon, 'share') * reached) / perMole(MOLAR_MASS.carbon);
  const quick = plain(material.quickShare, 'share');
  return { quick: carbon * quick, slow: carbon * (1 - quick) };
}

function thicknessOf({ thick, course = [] }: PieceContent): number {
  if (thick !== undefined) return thick;
  if (course.length === 0) return USUAL_THICKNESS;
  return course.reduce((sum, point) => sum + point.thick, 0) / course.length;
}

function leached({
  quick,
  slow,
}: {
  readonly quick: number;
  readonly slow: number;
}): HardscapePiece['contents'] {
  return { woodLeachable: quick, woodLeachableSlow: slow };
}

/** What may lie in an enclosure; what the box is built of does not. */
type PieceMaterial = Exclude<Material, { use: 'build' }>;

function contentsOf(material: PieceMaterial, content: PieceContent): HardscapePiece['contents'] {
  const { mass } = content;
  switch (material.use) {
    case 'wood':
      return leached(woodLeachable(material, mass, thicknessOf(content)));
    case 'carbonate':
      return carbonateContents(material, mass);
    case 'litter': {
      const { leachable, carbon, nitrogen, phosphorus } = litterContents(material, mass);
      return {
        litterCarbon: carbon,
        litterNitrogen: nitrogen,
        litterPhosphorus: phosphorus,
        litterLeachable: leachable,
      };
    }
    case 'layer': {
      const leachable = leachableOf(material, mass);
      return leachable ? leached(leachable) : {};
    }
    case 'stone':
      return {};
  }
}

/** Dry mass per displaced volume [kg/m3]; of what is sold by the bulk, that of its grains or fibres. */
function densityOf(material: PieceMaterial): number {
  if (material.use !== 'layer') return plain(material.density, 'density');
  return plain(material.bulkDensity, 'density') / Math.max(0.01, 1 - plain(material.porosity, 'share'));
}

/** @throws UnknownEntry, or Error for a material that is not a piece. */
export function pieceOf(content: PieceContent, library: Library): HardscapePiece {
  const material = library.material(content.material);
  if (material.use === 'build') throw new Error(`${material.name} builds the box and is no piece in it`);
  const isLayer = material.use === 'layer';
  if (isLayer && !material.exchange) throw new Error(`${material.name} is a layer, not a piece`);
  const { id, name = material.name, mass, course = [] } = content;
  const grain = material.use === 'carbonate' ? (content.grain ?? plain(material.grain, 'length')) : undefined;
  const exchanger = isLayer ? exchangerOf(material, mass) : undefined;
  return {
    id,
    name,
    kind: isLayer ? 'exchanger' : material.use,
    material: material.id,
    mass,
    volume: mass / densityOf(material),
    course: course.map(({ x, z, thick, y }) =>
      y === undefined ? ([x, z, thick] as const) : ([x, z, thick, y] as const),
    ),
    contents: contentsOf(material, content),
    ...(grain === undefined ? {} : { grain }),
    ...(material.use === 'litter' ? { pace: material.pace.value } : {}),
    ...(exchanger ? { exchanger } : {}),
  };
}
