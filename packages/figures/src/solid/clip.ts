/** A point in space [m]. */
export type Spot = readonly [x: number, y: number, z: number];

/** The part of a polygon above a height, or below it, with its edges cut where they pass it. */
export function clipped(polygon: readonly Spot[], height: number, keep: 'above' | 'below'): Spot[] {
  const sign = keep === 'above' ? 1 : -1;
  const over = (spot: Spot) => sign * (spot[2] - height);
  return polygon.flatMap((from, index): Spot[] => {
    const to = polygon[(index + 1) % polygon.length] as Spot;
    const [a, b] = [over(from), over(to)];
    const start: Spot[] = a >= 0 ? [from] : [];
    if ((a >= 0 && b >= 0) || (a < 0 && b < 0)) return start;
    const share = a / (a - b);
    const cut: Spot = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]), height];
    return [...start, cut];
  });
}
