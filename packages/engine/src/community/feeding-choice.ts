import type { ShareOfRuns } from '../outlook/buffer-question.ts';
import { freshMembers } from '../outlook/fresh-members.ts';
import { shareOfRuns } from '../outlook/share-of-runs.ts';

/** Fresh runs in which the targets are met: how many of how many, as a share with its 90 % interval [0..1]. */
export interface HeldIn extends ShareOfRuns {
  readonly held: number;
}

/** What made the choice: half of the runs drawn met the targets, as aimed at, or fewer with any dose; or none was drawn. */
export type ChosenBy = 'half of the runs drawn' | 'fewer of the runs drawn' | 'expected run';

/** Runs drawn with each dose to see whether half of them hold, by how much and how often it is raised until they do. @source assumed */
const DRAWN = 20;
export const RAISE = 1.5;
const MOST_RAISES = 4;
/** Runs by which two doses that fall short are told apart. @source assumed: what differs by less is chance */
const APART = 2;

interface Raising<Dose> {
  /** The next dose; undefined where it may not be raised. */
  raised(dose: Dose): Dose | undefined;
  /** Whether the targets are met in the run of a member. */
  holds(dose: Dose, member: number): boolean;
}

interface Raised<Dose> {
  readonly dose: Dose;
  readonly chosenBy: ChosenBy;
  /** Runs drawn for it in all. */
  readonly drawn: number;
}

/** Runs with one dose that hold, drawn until it is settled whether half of all would. */
function heldWith<Dose>(dose: Dose, holds: Raising<Dose>['holds']): { held: number; drawn: number } {
  let held = 0;
  let drawn = 0;
  while (2 * held < DRAWN && 2 * (drawn - held) <= DRAWN) {
    if (holds(dose, drawn)) held += 1;
    drawn += 1;
  }
  return { held, drawn };
}

/**
 * Raises a dose until half of the runs drawn hold, the same members with each; where none comes to that, the least dose
 * with which hardly fewer hold than with any. How many hold in these runs is no measure of the dose: they chose it.
 * @param first the dose to begin with
 * @return the dose, what chose it and the runs drawn [1]
 * @source derived: common random numbers
 */
export function raisedUntilHalf<Dose>(first: Dose, { raised, holds }: Raising<Dose>): Raised<Dose> {
  const tried: { readonly dose: Dose; readonly held: number }[] = [];
  let all = 0;
  let dose: Dose | undefined = first;
  for (let step = 0; dose !== undefined && step <= MOST_RAISES; step += 1) {
    const { held, drawn } = heldWith(dose, holds);
    all += drawn;
    if (2 * held >= DRAWN) return { dose, chosenBy: 'half of the runs drawn', drawn: all };
    tried.push({ dose, held });
    if (step < MOST_RAISES) dose = raised(dose);
  }
  const most = Math.max(...tried.map(({ held }) => held));
  const least = tried.find(({ held }) => held >= most - APART)!;
  return { dose: least.dose, chosenBy: 'fewer of the runs drawn', drawn: all };
}

/**
 * Share of fresh runs in which the targets are met [0..1], 90 % interval after Wilson. It decides nothing: a dose given up for
 * what these runs show, and another judged by the same, would be flattered again.
 * @param holds whether they are met in the run of a member
 * @param runs how many are drawn, > 0 [1]
 * @source wilson-1927
 */
export function judgedAfresh(holds: (member: number) => boolean, runs: number): HeldIn {
  const held = freshMembers(runs).filter(holds).length;
  return { held, ...shareOfRuns(held, runs) };
}
