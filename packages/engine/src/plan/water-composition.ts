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
}
export type DissolvedId = keyof WaterComposition;
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
