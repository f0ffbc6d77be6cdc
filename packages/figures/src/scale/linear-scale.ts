/** A straight map between a domain and pixels, with its way back. */
export interface Scale {
  readonly domain: readonly [low: number, high: number];
  readonly range: readonly [from: number, to: number];
  toPixel(value: number): number;
  toValue(pixel: number): number;
}

/** A linear scale; a domain without extent is treated as one unit wide. */
export function linearScale(domain: readonly [number, number], range: readonly [number, number]): Scale {
  const [low, high] = domain[1] > domain[0] ? domain : [domain[0], domain[0] + 1];
  const slope = (range[1] - range[0]) / (high - low);
  return {
    domain: [low, high],
    range,
    toPixel: (value) => range[0] + (value - low) * slope,
    toValue: (pixel) => low + (pixel - range[0]) / slope,
  };
}

/** log10(1 + n) scale for numbers of animals: zero has a place, and a doubling looks alike at 10 and at 1000. */
export function countScale(domain: readonly [number, number], range: readonly [number, number]): Scale {
  const inner = linearScale([logOf(domain[0]), logOf(domain[1])], range);
  return {
    domain,
    range,
    toPixel: (value) => inner.toPixel(logOf(value)),
    toValue: (pixel) => 10 ** inner.toValue(pixel) - 1,
  };
}

function logOf(count: number): number {
  return Math.log10(1 + Math.max(0, count));
}
