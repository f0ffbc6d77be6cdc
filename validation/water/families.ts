import type { Calculation } from '../harness/check.ts';
import { acidAndBase } from './families/acid-and-base.ts';
import { carbonateWater } from './families/carbonate-water.ts';
import { dissolutionKinetics } from './families/dissolution-kinetics.ts';
import { gasSaturation } from './families/gas-saturation.ts';
import { mineralSaturation } from './families/mineral-saturation.ts';
import { mixedWaters } from './families/mixed-waters.ts';
import { organicAcids } from './families/organic-acids.ts';
import { saltRecipe } from './families/salt-recipe.ts';
import { unionisedAmmonia } from './families/unionised-ammonia.ts';

interface Family {
  readonly title: string;
  readonly calculate: Calculation;
}

/** What computes each family of water cases. */
export const WATER_FAMILIES: Readonly<Record<string, Family>> = {
  a: { title: 'open carbonate equilibrium', calculate: carbonateWater },
  b: { title: 'closed carbonate system', calculate: carbonateWater },
  c: { title: 'mineral equilibrium and saturation', calculate: mineralSaturation },
  d: { title: 'un-ionised ammonia', calculate: unionisedAmmonia },
  e: { title: 'conductivity and dissolved solids', calculate: carbonateWater },
  f: { title: 'recipes of salts', calculate: saltRecipe },
  g: { title: 'mixing and evaporation', calculate: mixedWaters },
  h: { title: 'acid, base and nitrification', calculate: acidAndBase },
  i: { title: 'calcite dissolution over time', calculate: dissolutionKinetics },
  j: { title: 'organic acids and phosphate', calculate: organicAcids },
  k: { title: 'oxygen, carbon dioxide and vapour', calculate: gasSaturation },
};
