/** Resistance of still air between two panes [m2 K/W], radiation included: grows with the gap to about 15 mm. @source en-673 (memory) */
const MOST_GAP = 0.17;
const GAP_SLOPE = 0.0125 / 0.001;

/**
 * Returns the heat resistance of the air between two panes [m2 K/W, > 0]: the gap by 0.08 W/(m K), at most 0.17.
 * @param gap [m]
 * @validity upright panes with low difference of temperature, no coating
 * @source en-673 (memory)
 */
export function gapResistance(gap: number): number {
  return Math.min(MOST_GAP, gap * GAP_SLOPE);
}
