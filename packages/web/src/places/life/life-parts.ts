/** The sheets of the Life place, in the order of its row of names. */
export const LIFE_PARTS = [
  { id: 'who', name: 'Who lives here' },
  { id: 'web', name: 'Who eats what' },
  { id: 'numbers', name: 'How many' },
  { id: 'food', name: 'What the food carries' },
  { id: 'more', name: 'What if I add' },
  { id: 'pest', name: 'Too many of one' },
  { id: 'counts', name: 'What you counted' },
] as const;

export type LifePartId = (typeof LIFE_PARTS)[number]['id'];

/** The sheet of an address; the first where it names none. */
export function lifePart(written: string | undefined): LifePartId {
  return LIFE_PARTS.find(({ id }) => id === written)?.id ?? LIFE_PARTS[0].id;
}
