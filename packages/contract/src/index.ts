export * from './api/enclosure-routes.ts';
export * from './enclosure/bundled.ts';
export * from './enclosure/edit-enclosure.ts';
export * from './enclosure/plan/plan-of.ts';
export type { DatedSeries } from './enclosure/plan/room-of.ts';
export * from './enclosure/read/problem.ts';
export * from './enclosure/read/read-enclosure.ts';
export { type EnclosureContent, enclosureSchema, FORMAT_VERSION } from './enclosure/schema/enclosure.ts';
