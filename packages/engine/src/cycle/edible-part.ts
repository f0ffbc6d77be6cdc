/** Dry part of fresh matter at which half as much is eaten as of watery leaves [g/g]. @source assumed */
const HALF_DRY = 0.12;
/** Part that animals still take of plants with needles, sap or alkaloids against them [1]. @source assumed */
const DEFENDED = 0.3;
/** Dry part where an entry states none [g/g]. @source assumed: means of the library's own entries of the group */
const USUAL_DRY = { submerged: 0.09, floating: 0.065, moss: 0.09, emersed: 0.13, land: 0.13 } as const;

/** What is known of a plant's leaves. */
export interface LeafFacts {
  readonly group: keyof typeof USUAL_DRY;
  /** Dry matter over fresh matter [g/g]; the usual one of its group when left out. */
  readonly dryPart?: number;
  /** Whether it defends itself: needles of oxalate, irritant sap, alkaloids. */
  readonly isDefended: boolean;
}

/**
 * Part of a plant that animals without special taste take as food [0..1]: 1/(1 + (d/0.12)^2), d the dry part of its
 * fresh matter, and of defended plants three tenths of it.
 * @param leaf dry part [g/g] and defence
 * @returns [1], the rest being too tough or bitter
 * @validity generalists such as snails, woodlice and crayfish; specialists eat what others leave
 * @source elger-willby-2003, elger-lemoine-2005 (a snail ate less of 20 and 11 water plants the drier they were, deterrents
 *   apart); form and constants assumed
 */
export function ediblePart({ group, dryPart = USUAL_DRY[group], isDefended }: LeafFacts): number {
  const ratio = dryPart / HALF_DRY;
  return (isDefended ? DEFENDED : 1) / (1 + ratio * ratio);
}
