/**
 * What is believed of a parameter before the journal speaks.
 * fixed: `median`; normal: sd = `spread`; lognormal: geometric sd = `spread` (> 1); uniform: `min` to `max`.
 * Draws are kept inside `min` to `max` by redrawing.
 */
export interface Prior {
  readonly kind: 'fixed' | 'normal' | 'lognormal' | 'uniform';
  readonly median: number;
  readonly spread: number;
  readonly min: number;
  readonly max: number;
}

/** By process (or derivation) id, then by parameter key. */
export type PriorTable = Readonly<Record<string, Readonly<Record<string, Prior>>>>;
