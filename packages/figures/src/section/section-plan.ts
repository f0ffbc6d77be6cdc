import type { Plan, Population } from '@shoreglass/engine';
import type { DayState } from '../day/day-state.ts';
import type { Palette } from '../palette/palette.ts';
import type { LengthUnit } from '../scale/length-unit.ts';
import type { Size } from '../scene/scene.ts';

/** What the section drawing needs of a plan; a whole Plan fits. */
export interface SectionPlan
  extends Pick<Plan, 'id' | 'name' | 'box' | 'zones' | 'devices' | 'hardscape' | 'plants'> {
  readonly water: Pick<Plan['water'], 'level'>;
  readonly populations: readonly Pick<Population, 'id' | 'species' | 'name' | 'zone'>[];
}

export interface SectionOptions {
  readonly plan: SectionPlan;
  readonly day: DayState;
  readonly size: Size;
  readonly palette: Palette;
  /** True: leader lines to labels in the right margin. False: plate letters, to be explained by `sectionLegend`. */
  readonly labels: boolean;
  /** Names written into the layers; as `labels` when left out. */
  readonly layerNames?: boolean;
  /** Unit of rulers and level; cm when left out. */
  readonly unit?: LengthUnit;
  /** Lines across the drawing at the marks of the rulers. */
  readonly grid?: boolean;
}
