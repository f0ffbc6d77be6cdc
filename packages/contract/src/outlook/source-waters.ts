import {
  convert,
  DISSOLVED_IDS,
  DISSOLVED_MASS,
  type Plan,
  recipeWater,
  type WaterComposition,
} from '@shoreglass/engine';
import { library as bundled, type Library } from '@shoreglass/library';
import { type ShelfWater, shelfWaters } from '../enclosure/plan/shelf.ts';
import type { EnclosureContent } from '../enclosure/schema/enclosure.ts';
import type { Blend } from '../enclosure/schema/water.ts';
import type { WaterDocument } from './water-document.ts';

type SourceWater = WaterDocument['waters'][number];

/** Waters are compared at one temperature [degC]. */
const COMPARED_AT = 20;

const percent = (share: number): string => `${Math.round(share * 100)} %`;

function blendUses(use: string, blend: Blend): [id: string, use: string][] {
  if (typeof blend === 'string') return [[blend, use]];
  const total = blend.reduce((sum, { share }) => sum + share, 0);
  return blend.map(({ water, share }) => [water, `${use}, ${percent(share / total)}`]);
}

/** What each water of the file is used for, by its id, in the order of first mention. */
function usesOf({ water, routines = [], actions = [] }: EnclosureContent): Map<string, string[]> {
  const changes = [...routines, ...actions].flatMap((care): [string, string][] =>
    care.do === 'water-change' ? [[care.water, 'water change']] : [],
  );
  const uses = new Map<string, string[]>();
  for (const [id, use] of [
    ...blendUses('fill', water.fill),
    ...blendUses('top-off', water['top-off']),
    ...changes,
  ]) {
    const known = uses.get(id) ?? [];
    if (!known.includes(use)) uses.set(id, [...known, use]);
  }
  return uses;
}

function sourceWater(
  { id, name, composition, assumed = [] }: ShelfWater,
  use: readonly string[],
  plan: Plan,
): SourceWater {
  const { carbonDioxide, pressure } = plan.room;
  const whole = Object.fromEntries(
    DISSOLVED_IDS.map((ion) => [ion, composition[ion] ?? 0]),
  ) as unknown as WaterComposition;
  const water = recipeWater(whole, { temperature: COMPARED_AT, air: { carbonDioxide, pressure } });
  return {
    use: [...use],
    id,
    name,
    ions: Object.fromEntries(
      DISSOLVED_IDS.map((ion) => [ion, whole[ion] * DISSOLVED_MASS[ion]]),
    ) as SourceWater['ions'],
    dissolvedSolids: water.dissolvedSolids.sumOfIons,
    felt: {
      pH: water.pH,
      KH: convert(water.KH, 'meq/L', '°dKH'),
      GH: convert(water.GH, 'mmol/L', '°dGH'),
      conductivity: water.conductivity,
      temperature: COMPARED_AT,
    },
    assumed: [...assumed],
  };
}

/** The waters a file uses, as read: ions, hardness, conductivity and pH in balance with the room's air. */
export function sourceWaters(
  content: EnclosureContent,
  plan: Plan,
  library: Library = bundled,
): SourceWater[] {
  const shelf = shelfWaters(content, library);
  return [...usesOf(content)].flatMap(([id, use]) => {
    const water = shelf.find((each) => each.id === id);
    return water ? [sourceWater(water, use, plan)] : [];
  });
}
