import type { WaterComposition } from '../../plan/water-composition.ts';
import type { RecipeQuantity } from './request.ts';

/** One water of the mix. */
export interface WaterPart {
  readonly id: string;
  readonly name: string;
  /** Of the mix [0..1]. */
  readonly share: number;
  /** [m3] */
  readonly volume: number;
  /** In small whole parts that come within a fiftieth, such as 3 of 3 + 1; 0 where it would round to none. */
  readonly parts: number;
}

/** A whole number of level spoons. */
export interface SpoonMeasure {
  readonly quarterTeaspoons: number;
  /** Said as people do, such as '1 1/2 level teaspoons'. */
  readonly said: string;
  /** What that many hold [kg]. */
  readonly mass: number;
}

/** One salt of the recipe. */
export interface SaltDose {
  readonly id: string;
  readonly name: string;
  readonly formula: string;
  /** For the whole volume [kg]. */
  readonly mass: number;
  /** In the finished water [kg/m3 = g/L]. */
  readonly concentration: number;
  /** Least water in which it dissolves at 20 degC [m3]. */
  readonly leastWater: number;
  /** In level spoons; absent where less than a quarter of a teaspoon is needed: it has to be weighed. */
  readonly spoons?: SpoonMeasure;
}

/** A water in full, in balance with the air. */
export interface RecipeWater {
  /** [mol/m3] */
  readonly composition: WaterComposition;
  readonly pH: number;
  /** [mol/m3] */
  readonly GH: number;
  /** [eq/m3] */
  readonly KH: number;
  /** At 25 degC [uS/cm]. */
  readonly conductivity: number;
  /** [g/m3 = mg/L] */
  readonly dissolvedSolids: DissolvedSolidsReading;
  /** log10; above zero lime falls out in time. */
  readonly calciteSaturationIndex: number;
  readonly gypsumSaturationIndex: number;
  /** [mol/m3] */
  readonly dissolvedInorganicCarbon: number;
  readonly bicarbonate: number;
}

/** Dissolved solids by mass and as the meters of the trade show them [g/m3 = mg/L]. */
export interface DissolvedSolidsReading {
  readonly sumOfIons: number;
  readonly residueAt180: number;
  /** Conductivity times 0.5, 0.64 and 0.7. */
  readonly meter500: number;
  readonly meter640: number;
  readonly meter700: number;
}

/** What became of one target; values in the plan's unit of its quantity. */
export interface TargetResult {
  readonly quantity: RecipeQuantity;
  readonly aim?: number;
  readonly low?: number;
  readonly high?: number;
  readonly value: number;
  /** Value with the salts measured in spoons. */
  readonly valueBySpoon: number;
  /** Within its limits, and within a fiftieth (or what a drop test cannot tell) of its aim, by salts that dissolve. */
  readonly met: boolean;
  /** Why not, one sentence each; empty when met. */
  readonly why: readonly string[];
}

/** A step of making the water. */
export interface MixingStep {
  /** What to do. */
  readonly text: string;
  readonly why: string;
  /** Salts it concerns, by id. */
  readonly salts: readonly string[];
}

export interface RecipeRemark {
  readonly severity: 'caution' | 'warning' | 'note';
  readonly text: string;
  readonly source?: string;
}

/** How a water is made and what it becomes. */
export interface Recipe {
  /** Finished, and the part of it that is mixed new [m3]. */
  readonly volume: number;
  readonly mixed: number;
  readonly waters: readonly WaterPart[];
  readonly salts: readonly SaltDose[];
  readonly water: RecipeWater;
  /** What is mixed new by itself, before it meets what stays; absent where nothing is mixed. */
  readonly mixWater?: RecipeWater;
  /** The water when the salts are measured in level spoons instead of weighed. */
  readonly waterBySpoon: RecipeWater;
  readonly targets: readonly TargetResult[];
  readonly steps: readonly MixingStep[];
  readonly remarks: readonly RecipeRemark[];
  /** Root of the mean square of all misses, each over what a drop test can tell [1]; 0 is a perfect fit. */
  readonly misfit: number;
}

/** One of several ways, and what it stands for. */
export interface RecipeChoice {
  readonly id: 'closest' | 'fewest-salts' | 'no-sodium' | 'least-weighing' | 'purest-water';
  readonly name: string;
  /** What speaks for it, one sentence. */
  readonly about: string;
  readonly recipe: Recipe;
}
