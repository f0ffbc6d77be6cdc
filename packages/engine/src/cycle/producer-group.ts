import type { ParameterSpecs } from '../process/contract.ts';
import type { Composition } from '../variables/compositions.ts';
import type { VariableId } from '../variables/variables.ts';

/** Parameters of growth, respiration and loss that algae and plants have in common. */
export interface ProducerParameters {
  readonly maximumGrowth: number;
  readonly growthTheta: number;
  readonly heatLimit: number;
  readonly lightHalf: number;
  readonly nitrogenHalf: number;
  readonly phosphorusHalf: number;
  readonly preferenceHalf: number;
  readonly respirationRate: number;
  readonly lossRate: number;
  readonly lossTheta: number;
  /** Of those that take carbon and oxygen from the water. */
  readonly carbonHalf?: number;
  readonly oxygenHalf?: number;
  /** Of those with a ground of their own. */
  readonly fullStock?: number;
}

/** Parameters of groups some of which use bicarbonate. */
export interface BicarbonateParameters {
  readonly bicarbonateAffinity: number;
  readonly bicarbonateLight: number;
}
export type AnyProducerParameters = ProducerParameters & Partial<BicarbonateParameters>;

/** One group of producers: its pool, where its light comes from, what bounds it, and which carbon it takes. */
export interface ProducerGroup<P extends ProducerParameters> {
  readonly id: string;
  /** Read in budgets: 'attached algae'. */
  readonly name: string;
  readonly pool: VariableId;
  readonly composition: Composition;
  /** Nitrogen and phosphorus of carbon it has respired and keeps, in its composition. */
  readonly kept: VariableId;
  readonly light: VariableId;
  /** Ground [m2] that `fullStock` fills; share [1] of its room already filled; neither where only light bounds it. */
  readonly ground?: VariableId;
  readonly filled?: VariableId;
  /**
   * Concentration of the carbon it can use [mol/m3], bounded from above by dissolved inorganic carbon, which counts
   * whole when this is left out. 'air': carbon dioxide and oxygen are exchanged with the air and never short.
   */
  readonly carbon?: VariableId | 'air';
  /** Share [1] of the group that uses bicarbonate beside that carbon; none where left out. */
  readonly bicarbonateUsers?: VariableId;
  /** Whole plants leave remains that break down slowly; algae are detritus at once. */
  readonly leavesRemains?: true;
  readonly parameters: ParameterSpecs<P>;
}
