import { LIBRARY_DATA } from './generated/library.ts';
import { libraryOf } from './library.ts';

export * from './library.ts';
export * from './nearest.ts';
export * from './page/entry-page.ts';
export { capital } from './page/labels.ts';
export { priorOf } from './priors.ts';
export type { EntryKind, LibraryData } from './schema/entries.ts';
export { ENTRY_SCHEMAS } from './schema/entries.ts';
export type { Feed } from './schema/feed.ts';
export type { Material, MaterialOf, MaterialUse } from './schema/material.ts';
export type { Organism } from './schema/organism.ts';
export type { ProcessParameters } from './schema/parameters.ts';
export type { Plant } from './schema/plant.ts';
export type { Known, Quantity, Risk } from './schema/quantity.ts';
export type { Salt } from './schema/salt.ts';
export type { Tolerances } from './schema/tolerance.ts';
export type { Water } from './schema/water.ts';

/** The library that ships with the program. */
export const library = libraryOf(LIBRARY_DATA);
export const { organism, plant, feed, material, water, salt, parameterPriors } = library;
