export interface StackItem {
  /** Where the top would like to be. */
  readonly wish: number;
  readonly height: number;
}

/**
 * Tops of items that keep their order, do not overlap, stay within `top` to `bottom` where they can, and move as
 * little as possible in sum of squares: the pool-adjacent-violators algorithm for isotonic regression.
 * @source Barlow, Bartholomew, Bremner & Brunk 1972, Statistical Inference under Order Restrictions, ch. 1 (memory)
 */
export function stackTops(
  items: readonly StackItem[],
  bounds: { readonly top: number; readonly bottom: number; readonly gap: number },
): number[] {
  const offsets: number[] = [];
  let filled = 0;
  for (const { height } of items) {
    offsets.push(filled);
    filled += height + bounds.gap;
  }
  const total = filled - (items.length > 0 ? bounds.gap : 0);
  const highest = Math.max(bounds.top, bounds.bottom - total);
  const fitted = isotonic(items.map(({ wish }, index) => wish - (offsets[index] ?? 0)));
  return fitted.map((value, index) => Math.min(highest, Math.max(bounds.top, value)) + (offsets[index] ?? 0));
}

/** Least-squares fit that never decreases. */
function isotonic(values: readonly number[]): number[] {
  const blocks: { sum: number; count: number }[] = [];
  for (const value of values) {
    let block = { sum: value, count: 1 };
    for (
      let last = blocks.at(-1);
      last && last.sum / last.count > block.sum / block.count;
      last = blocks.at(-1)
    ) {
      block = { sum: last.sum + block.sum, count: last.count + block.count };
      blocks.pop();
    }
    blocks.push(block);
  }
  return blocks.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count));
}
