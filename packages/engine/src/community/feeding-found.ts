import type { ChosenBy, HeldIn } from './feeding-choice.ts';
import type { WaterLeaving } from './feeding-water.ts';

/** One population wanted, and what becomes of it. */
export interface HeldPopulation {
  readonly id: string;
  readonly target: number;
  /** Mean of the last two fifths of the trial that began with the target. */
  readonly adults: number;
  /** On the last day of that trial. */
  readonly atEnd: number;
  /** The same from the animals the plan itself begins with, and the day on which they reach four fifths of the target. */
  readonly fromPlan: number;
  readonly reachedOn?: number;
}

/** Which feed, how much, how often, and what trial runs with it show. */
export interface FeedingPlan {
  readonly feed: string;
  readonly feedName: string;
  /** Each time [kg], and days between times. */
  readonly mass: number;
  readonly everyDays: number;
  readonly onLand: boolean;
  readonly hour?: number;
  /** Whether every target was held; whether ammonia, nitrite and oxygen stayed in band, and pH and carbonate hardness too, as far as they do without the feed. */
  readonly holds: boolean;
  readonly clean: boolean;
  /** Whether those wanted live on with this dose; where they do with none, none is to be given. */
  readonly advised: boolean;
  /** Where no dose holds, or none reaches it from the plan's own animals: the limit left first with the least dose tried that takes the water out of band, and that dose [kg]. */
  readonly leaves?: WaterLeaving & { readonly mass: number };
  /** Limit of pH or carbonate hardness that the water leaves without the feed too. */
  readonly leftUnfed?: WaterLeaving;
  readonly populations: readonly HeldPopulation[];
  /** Highest un-ionised ammonia and nitrite [mg N/L] and lowest oxygen [mg/L] of the trial. */
  readonly ammonia: number;
  readonly nitrite: number;
  readonly oxygen: number;
  /** Runs made in looking for the dose, and by what it was chosen. */
  readonly trials: number;
  readonly chosenBy: ChosenBy;
  /** Fresh runs, drawn from what is not known and without part in the choice, in which the plan's own animals meet the targets. */
  readonly heldIn: HeldIn;
  /** What was found, in whole sentences. */
  readonly sentences: readonly string[];
}
