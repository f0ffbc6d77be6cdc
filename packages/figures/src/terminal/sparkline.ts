const BLOCKS = ['▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];
const ASCII = ['_', '.', ':', '-', '=', '+', '*', '#'];

export interface SparklineOptions {
  /** For terminals without Unicode. */
  readonly ascii?: boolean;
  /** Lowest and highest value of the scale; the values' own extent when absent. */
  readonly low?: number;
  readonly high?: number;
}

/** A course in one line of text, `width` characters at most; values that are not finite leave a gap. */
export function sparkline(values: readonly number[], width: number, options: SparklineOptions = {}): string {
  const marks = options.ascii ? ASCII : BLOCKS;
  const columns = condensed(values, width);
  const finite = columns.filter((value) => Number.isFinite(value));
  if (finite.length === 0) return '';
  const low = options.low ?? finite.reduce((least, value) => Math.min(least, value));
  const high = options.high ?? finite.reduce((most, value) => Math.max(most, value));
  return columns
    .map((value) => {
      if (!Number.isFinite(value)) return ' ';
      const share = high > low ? (value - low) / (high - low) : 0.5;
      return marks[Math.min(marks.length - 1, Math.max(0, Math.floor(share * marks.length)))] ?? ' ';
    })
    .join('');
}

/** Means of equal stretches, so that no value is passed over. */
export function condensed(values: readonly number[], width: number): number[] {
  const count = Math.min(values.length, Math.max(0, Math.floor(width)));
  return Array.from({ length: count }, (_, column) => {
    const from = Math.floor((column * values.length) / count);
    const to = Math.max(from + 1, Math.floor(((column + 1) * values.length) / count));
    const stretch = values.slice(from, to).filter((value) => Number.isFinite(value));
    return stretch.length === 0
      ? Number.NaN
      : stretch.reduce((sum, value) => sum + value, 0) / stretch.length;
  });
}
