import type { ShapeCaution, ShapeSheet } from '@shoreglass/engine';
import type { Handle } from '../handles/handle.ts';

/** What is to be minded at these places of the plan, each sentence once. */
export function cautionsAt(
  { cautions }: Pick<ShapeSheet, 'cautions'>,
  ...places: readonly ShapeCaution['place'][]
): string[] {
  const found = cautions.filter(({ place }) => places.includes(place)).map(({ message }) => message);
  return [...new Set(found)];
}

/** Places of the plan by the first word of a handle's name. */
const PLACES: Readonly<Record<string, ShapeCaution['place']>> = {
  glass: 'glass',
  cover: 'cover',
  lamp: 'lamps',
  pump: 'pump',
  heater: 'heater',
  mister: 'mister',
  fogger: 'fogger',
  fan: 'fans',
  mat: 'mats',
  piece: 'hardscape',
  layer: 'ground',
};

/** What is to be minded about the part in the hand. */
export function cautionsAbout(sheet: Pick<ShapeSheet, 'cautions'>, handle: Handle | undefined): string[] {
  const place = PLACES[handle?.id.split(':')[0] ?? ''];
  return place ? cautionsAt(sheet, place) : [];
}
