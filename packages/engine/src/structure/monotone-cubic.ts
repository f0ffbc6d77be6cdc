/** Slope at an inner point: weighted harmonic mean of the neighbouring secants, 0 at a turn (Fritsch and Butland). */
function innerSlope(before: number, after: number, widthBefore: number, widthAfter: number): number {
  if (before * after <= 0) return 0;
  const w1 = 2 * widthAfter + widthBefore;
  const w2 = widthAfter + 2 * widthBefore;
  return (w1 + w2) / (w1 / before + w2 / after);
}

/** Slope of the parabola through the three points at an end, kept from overshooting. */
function endSlope(first: number, second: number, firstWidth: number, secondWidth: number): number {
  const slope = ((2 * firstWidth + secondWidth) * first - firstWidth * second) / (firstWidth + secondWidth);
  if (slope * first <= 0) return 0;
  return first * second <= 0 && Math.abs(slope) > 3 * Math.abs(first) ? 3 * first : slope;
}

/**
 * Returns the value at `x` of the piecewise cubic through given points that rises and falls only where they do [unit
 * of `ys`]; beyond the ends it goes on straight with the slope there.
 * @param xs ascending, at least three
 * @param ys of the same length
 * @param x where
 * @source fritsch-butland-1984
 */
export function monotoneCubic(xs: readonly number[], ys: readonly number[], x: number): number {
  const last = xs.length - 1;
  const width = (i: number): number => xs[i + 1]! - xs[i]!;
  const secant = (i: number): number => (ys[i + 1]! - ys[i]!) / width(i);
  const slope = (i: number): number => {
    if (i === 0) return endSlope(secant(0), secant(1), width(0), width(1));
    if (i === last) return endSlope(secant(last - 1), secant(last - 2), width(last - 1), width(last - 2));
    return innerSlope(secant(i - 1), secant(i), width(i - 1), width(i));
  };
  if (x <= xs[0]!) return ys[0]! + slope(0) * (x - xs[0]!);
  if (x >= xs[last]!) return ys[last]! + slope(last) * (x - xs[last]!);
  let i = 0;
  while (x > xs[i + 1]!) i++;
  const h = width(i);
  const u = (x - xs[i]!) / h;
  const rise = ys[i + 1]! - ys[i]!;
  const a = slope(i) * h - rise;
  const b = rise - slope(i + 1) * h;
  return ys[i]! + u * rise + u * (1 - u) * (a * (1 - u) + b * u);
}
