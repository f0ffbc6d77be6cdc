import type { Random } from '../numerics/random.ts';

/**
 * True when something that may come along by accident is there in this run: in a member by its own draw, in the expected
 * run when it is likelier than not; always without a chance.
 * @param demography stream of the member, or 'expected'
 * @param id of the population or planting; each has a draw of its own, whatever else is drawn
 * @param chance probability [0..1]
 * @source derived: one Bernoulli draw, whose median the expected run takes
 */
export function comesAlong(demography: 'expected' | Random, id: string, chance: number | undefined): boolean {
  if (chance === undefined) return true;
  return demography === 'expected' ? chance > 0.5 : demography.split(`comes along: ${id}`).uniform() < chance;
}
