import type { WaterComposition } from '../../plan/water-composition.ts';
import type { Air } from '../gases.ts';

/** What a recipe can aim at or limit, in the plan's units. */
export const RECIPE_QUANTITIES = [
  /** Calcium and magnesium [mol/m3]. */
  'GH',
  /** Alkalinity [eq/m3]. */
  'KH',
  /** [mol/m3], as all that follow but the last. */
  'calcium',
  'magnesium',
  'sodium',
  'potassium',
  'chloride',
  'sulfate',
  'nitrate',
  /** At 25 degC, in balance with the air [uS/cm]. */
  'conductivity',
] as const;
export type RecipeQuantity = (typeof RECIPE_QUANTITIES)[number];

/** What is wanted of one quantity: a value, a band, or a limit on one side. At least one of the three is given. */
export interface RecipeTarget {
  readonly quantity: RecipeQuantity;
  /** What to come as near to as possible; without it anything between the limits is as good. */
  readonly aim?: number;
  readonly low?: number;
  readonly high?: number;
  /** How much a miss of the aim counts beside others, 1 when left out; > 0. Limits count far more than aims. */
  readonly weight?: number;
}

/** A water that may go into the blend. */
export interface SourceWater {
  readonly id: string;
  readonly name: string;
  /** [mol/m3] */
  readonly composition: Partial<WaterComposition>;
  /** Where it comes from; tap water gets the cautions on chlorine and copper. */
  readonly kind: 'pure' | 'rain' | 'tap' | 'other';
  /** Least and largest share of the mix [0..1], 0 and 1 when left out. */
  readonly least?: number;
  readonly most?: number;
  /** What had to be assumed of its analysis, one sentence each. */
  readonly assumed?: readonly string[];
}

/** How a salt goes into solution: at once, only with long stirring, or only as CO2 turns it into bicarbonate. */
export type Dissolving = 'quick' | 'slow' | 'with carbon dioxide';

/** A salt on the shelf. */
export interface RecipeSalt {
  readonly id: string;
  readonly name: string;
  /** With its water of crystallisation, such as 'MgSO4.7H2O'. */
  readonly formula: string;
  /** Mass of the formula in the mass weighed [0..1]; 1 when left out. */
  readonly purity?: number;
  /** Mass that dissolves in pure water at 20 degC [kg/m3]. */
  readonly solubility: number;
  /** Of the loose powder [kg/m3]. */
  readonly bulkDensity: number;
  readonly dissolving: Dissolving;
  /** Sentences shown whenever the salt is used. */
  readonly cautions?: readonly string[];
}

/** Water that is there already and stays: a change of water, a top-off, or salts alone. */
export interface KeptWater {
  readonly name: string;
  /** As it is today [mol/m3]. */
  readonly composition: Partial<WaterComposition>;
  /** What stays [m3], >= 0 and at most the recipe's volume; the difference is mixed new. */
  readonly volume: number;
}

/** What a recipe is to be made of and for. */
export interface RecipeRequest {
  /** Of the finished water, what is kept included [m3], > 0. */
  readonly volume: number;
  readonly waters: readonly SourceWater[];
  readonly salts: readonly RecipeSalt[];
  readonly targets: readonly RecipeTarget[];
  readonly kept?: KeptWater;
  /** Of the water when used [degC], 0 to 40. */
  readonly temperature: number;
  readonly air: Air;
}
