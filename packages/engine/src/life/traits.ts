import type { Prior } from '../plan/prior.ts';

/** What the life module needs to know of a species; see its doc block for units. Filled by the library. */
export interface AnimalTraits {
  readonly [key: string]: Prior | string | number;
}
