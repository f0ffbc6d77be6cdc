/**
 * First member of those that only judge. Runs by which an answer was chosen flatter it: among several answers the one
 * is taken that did well in them, by luck too. What is told of its chance is counted in runs that had no part in the
 * choice; choosing begins at member 0, as an ensemble does, and so do the runs of neither reach this far.
 */
export const FIRST_TO_JUDGE = 3000;

/**
 * Members that had no part in a choice, by number, in ascending order.
 * @param count how many, a whole number > 0 [1]
 * @return numbers of members for `memberDraw` [1]
 * @source derived: a sample apart from the one that chose is judged without bias
 */
export function freshMembers(count: number): number[] {
  return Array.from({ length: count }, (_, at) => FIRST_TO_JUDGE + at);
}
