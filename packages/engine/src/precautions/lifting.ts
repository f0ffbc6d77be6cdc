/** Mass most people lift without harm in the best posture [kg]. @source niosh-94-110 */
const LOAD_CONSTANT = 23;

/** How a load is lifted: distances [m], turn of the body [rad]. */
export interface Lift {
  /** From the ankles to the hands. */
  readonly reach: number;
  /** Of the hands above the floor at the start. */
  readonly startHeight: number;
  /** How far up or down. */
  readonly travel: number;
  readonly twist: number;
  /** For how often and how long, and for the grip: 0 to 1, from the tables. */
  readonly frequency: number;
  readonly grip: number;
}

/** The multipliers of the lifting equation, each 0 to 1. */
export interface LiftingMultipliers {
  readonly reach: number;
  readonly height: number;
  readonly travel: number;
  readonly twist: number;
}

const share = (value: number): number => Math.min(1, Math.max(0, value));

/**
 * Returns the multipliers of a lift [0..1]: 25/H, 1 - 0.003 |V - 75|, 0.82 + 4.5/D, 1 - 0.0032 A, in cm and degrees; at
 * most 1.
 * @param lift reach H, start height V, travel D, twist A
 * @source niosh-94-110
 */
export function liftingMultipliers({ reach, startHeight, travel, twist }: Lift): LiftingMultipliers {
  return {
    reach: share(0.25 / reach),
    height: share(1 - 0.3 * Math.abs(startHeight - 0.75)),
    travel: share(0.82 + 0.045 / travel),
    twist: share(1 - 0.0032 * ((twist * 180) / Math.PI)),
  };
}

/**
 * Returns the mass recommended as the most for a lift [kg, >= 0]; a load above it calls for a second person or less
 * at a time. Never lift a filled box.
 * @param lift how it is lifted
 * @validity one person; only indicative for two
 * @source niosh-94-110
 */
export function recommendedLift(lift: Lift): number {
  const { reach, height, travel, twist } = liftingMultipliers(lift);
  return LOAD_CONSTANT * reach * height * travel * twist * lift.frequency * lift.grip;
}
