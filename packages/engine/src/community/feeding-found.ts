/** One population wanted, and what becomes of it. */
export interface HeldPopulation {
  readonly id: string;
  readonly target: number;
  /** Mean of the last two fifths of the trial that began with the target. */
  readonly adults: number;
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
  /** Whether every target was held and the water stayed clean in the trial. */
  readonly holds: boolean;
  readonly clean: boolean;
  readonly populations: readonly HeldPopulation[];
  /** Highest un-ionised ammonia and nitrite [mg N/L] and lowest oxygen [mg/L] of the trial. */
  readonly ammonia: number;
  readonly nitrite: number;
  readonly oxygen: number;
  readonly trials: number;
  /** Part of the runs drawn from what is not known in which the plan's own animals meet the targets [0..1]. */
  readonly heldIn: number;
  /** What was found, in whole sentences. */
  readonly sentences: readonly string[];
}
