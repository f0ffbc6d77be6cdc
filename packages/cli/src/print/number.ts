const LEAST = 0.001;

/** A figure as people read it: three digits at most, and what is hardly there as less than a thousandth. */
export function figure(value: number): string {
  const size = Math.abs(value);
  if (value === 0) return '0';
  if (size < LEAST) return value > 0 ? `<${LEAST}` : `-<${LEAST}`;
  if (size >= 100) return value.toFixed(0);
  if (size >= 10) return value.toFixed(1);
  return size >= 0.1 ? value.toFixed(2) : value.toPrecision(1);
}
