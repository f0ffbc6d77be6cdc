import type { Box } from '../plan/plan.ts';

/** An edge over which water would leave. */
export interface Opening {
  /** With its article, as in 'the rim'. */
  readonly name: string;
  /** Above the inner base [m]. */
  readonly height: number;
}

/**
 * Returns the lowest edge over which water would leave [m]: the rim, the lower edge of a vent, or the overflow.
 * @param box the glass
 * @source derived
 */
export function lowestOpening({ height, vents = [], overflow }: Box): Opening {
  const openings: Opening[] = [
    { name: 'the rim', height },
    ...vents.map((vent) => ({ name: `the lower edge of ${vent.name}`, height: vent.height })),
    ...(overflow ? [{ name: 'the overflow', height: overflow.height }] : []),
  ];
  return openings.reduce((lowest, one) => (one.height < lowest.height ? one : lowest));
}
