import { expm1, log1p } from '../numerics/elementary.ts';
import type { LivingPopulation } from './living-population.ts';
import { aboveGround } from './pupation.ts';
import type { Cover } from './surroundings.ts';
import type { PreyKind } from './traits.ts';

/** Land and the leaves that lie on it, both sides [m2], and what cover there is. */
export interface OpenLand {
  landArea: number;
  /** None when left out. */
  leafArea?: number;
  cover: Cover;
}

/** Kinds that live between the leaves on land. @source assumed: small enough to pass under one */
const BETWEEN_LEAVES: ReadonlySet<PreyKind> = new Set(['small arthropods', 'worms']);

/** Kinds whose hunters snap at what moves before them and leave the ground alone. @source assumed: frogs, newts and lizards */
const SNAP: ReadonlySet<PreyKind> = new Set(['amphibians', 'reptiles']);

/** Whether a hunter digs or turns leaves. @source assumed */
const digs = ({ preyKind }: LivingPopulation): boolean => preyKind === undefined || !SNAP.has(preyKind);

/**
 * Part of cohort j that lies open to a hunter on land in the course of a day [1], 0 to 1: what is not in the ground, of small
 * animals what is not between leaves, by the part of all surface that lies on top, and what does not hide.
 *   above ground x land/(land + leaves, both sides) x (1 - hiding x cover)
 * Leaves are no cover beside that for small animals.
 * @source derived; kalinkat-2013: leaves dilute springtails among centipedes, capture stays as it was; refuge in proportion to
 *   cover is assumed
 */
export function openOnLand(
  hunter: LivingPopulation,
  prey: LivingPopulation,
  j: number,
  { landArea, leafArea = 0, cover }: OpenLand,
): number {
  const { hiding } = prey.traits;
  const isSmall = prey.preyKind !== undefined && BETWEEN_LEAVES.has(prey.preyKind);
  const onTop = isSmall ? landArea / (landArea + leafArea) : 1;
  return (
    aboveGround(prey, j, digs(hunter)) * onTop * (1 - hiding * (isSmall ? cover.besideLeaves : cover.onLand))
  );
}

/**
 * Hazard of a day in which only a part lies open [1/d], at most -ln(1 - open):
 *   -ln(1 - open (1 - exp(-h/open)))
 * so that the rest of that day is safe, however long the hunters search; who lies open is drawn anew each day.
 * @param hazard if those that lie open were replaced at once, h [1/d], >= 0
 * @param open part that lies open [1], above 0, at most 1
 * @source derived; that animals change places once a day is assumed
 */
export function sparedHazard(hazard: number, open: number): number {
  return open < 1 ? -log1p(open * expm1(-hazard / open)) : hazard;
}
