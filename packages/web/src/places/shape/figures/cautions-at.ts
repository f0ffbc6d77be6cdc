import type { ShapeCaution, ShapeSheet } from '@shoreglass/engine';

/** What is to be minded at these places of the plan, each sentence once. */
export function cautionsAt(
  { cautions }: Pick<ShapeSheet, 'cautions'>,
  ...places: readonly ShapeCaution['place'][]
): string[] {
  const found = cautions.filter(({ place }) => places.includes(place)).map(({ message }) => message);
  return [...new Set(found)];
}
