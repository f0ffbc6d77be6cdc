/**
 * A root of a rising function between two arguments [unit of x].
 * Regula falsi with the Illinois rule, a bisection every third step; ends when the bracket is narrower than
 * `tolerance` or the function is zero.
 * @param f rising, with f(low) <= 0 <= f(high); infinite values are allowed
 * @throws RangeError when the ends do not enclose a root.
 * @source dowell-jarratt-1971
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance: number,
): number {
  let fLow = f(low);
  let fHigh = f(high);
  if (!(fLow <= 0 && fHigh >= 0))
    throw new RangeError(`no root between ${low} (${fLow}) and ${high} (${fHigh})`);
  if (fLow === 0) return low;
  if (fHigh === 0) return high;
  let side = 0;
  for (let i = 0; i < 300 && high - low > tolerance; i++) {
    const chord = high - (fHigh * (high - low)) / (fHigh - fLow);
    const x = i % 3 !== 2 && chord > low && chord < high ? chord : 0.5 * (low + high);
    const y = f(x);
    if (y === 0) return x;
    if (y < 0) {
      low = x;
      fLow = y;
      if (side === -1) fHigh /= 2;
      side = -1;
    } else {
      high = x;
      fHigh = y;
      if (side === 1) fLow /= 2;
      side = 1;
    }
  }
  return 0.5 * (low + high);
}
