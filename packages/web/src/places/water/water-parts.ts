/** The sheets of the Water place, in the order of its row of names. */
export const WATER_PARTS = [
  { id: 'mix', name: 'Mixing' },
  { id: 'year', name: 'The year' },
  { id: 'budget', name: 'Who adds, who takes' },
  { id: 'wood', name: 'Wood and leaves' },
  { id: 'buffer', name: 'Buffer' },
  { id: 'today', name: 'Today’s water' },
] as const;

export type WaterPartId = (typeof WATER_PARTS)[number]['id'];

/** The sheet of an address; the first where it names none. */
export function waterPart(written: string | undefined): WaterPartId {
  return WATER_PARTS.find(({ id }) => id === written)?.id ?? WATER_PARTS[0].id;
}
