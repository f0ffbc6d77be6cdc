/** Dissolved amounts per volume [mol/m3]; alkalinity follows from the charges (see elements.ts). */
export interface WaterComposition {
  readonly calcium: number;
  readonly magnesium: number;
  readonly sodium: number;
  readonly potassium: number;
  readonly chloride: number;
  readonly sulfate: number;
  readonly ammonium: number;
  readonly nitrite: number;
  readonly nitrate: number;
  readonly phosphate: number;
  readonly dissolvedOrganicCarbon: number;
  /** A trace no process moves, its charge left out; none when left out. */
  readonly copper?: number;
}
/** What every water is told by; copper comes beside it where a water names it. */
export type DissolvedId = Exclude<keyof WaterComposition, 'copper'>;
export const DISSOLVED_IDS = [
  'calcium',
  'magnesium',
  'sodium',
  'potassium',
  'chloride',
  'sulfate',
  'ammonium',
  'nitrite',
  'nitrate',
  'phosphate',
  'dissolvedOrganicCarbon',
] as const satisfies readonly DissolvedId[];
