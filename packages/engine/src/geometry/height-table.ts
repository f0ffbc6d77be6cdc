/**
 * How something that opens between two heights is shared out over evenly spaced heights: averaged over one spacing to
 * either side, which keeps area and first moment, so that volumes above are exact.
 */
export class HeightSpread {
  readonly nodes: number;
  readonly spacing: number;
  /** The nodes from `first` on take `parts[0]`, `parts[1]`, … of it; those from `whole` on all of it. */
  first = 0;
  whole = 0;
  readonly parts: Float64Array;

  /** @param top greatest height [m]; `nodes` spaces from 0 to it */
  constructor(top: number, nodes: number) {
    this.nodes = nodes;
    this.spacing = top / nodes;
    this.parts = new Float64Array(nodes + 2);
  }

  /** Sets the spread to 0 below `from` (at least 0), all of it above `to`, straight in between [m]. */
  set(from: number, to: number): void {
    const { spacing: h, nodes, parts } = this;
    const low = Math.max(0, from);
    const high = Math.max(low, to);
    const span = high - low;
    this.first = Math.min(nodes + 1, Math.max(0, Math.ceil(low / h - 1)));
    this.whole = Math.min(nodes + 1, Math.max(0, Math.ceil(high / h + 1)));
    for (let k = this.first; k < this.whole; k++) {
      const z = k * h;
      const part =
        span > 1e-3 * h ? (rampSum(z - low, h) - rampSum(z - high, h)) / span : smoothStep(z - low, h);
      // What the averaging would put below height 0 belongs above it: the first node has half the weight of others.
      parts[k - this.first] = k === 0 ? 2 * part : part;
    }
  }
}

/** A sum of areas that each open between two heights, as a table over heights that is straight between its nodes. */
export class HeightTable {
  private readonly spread: HeightSpread;
  private readonly values: Float64Array;
  private readonly jumps: Float64Array;
  private isSummed = false;

  constructor(spread: HeightSpread) {
    this.spread = spread;
    this.values = new Float64Array(spread.nodes + 1);
    this.jumps = new Float64Array(spread.nodes + 2);
  }

  /** Adds an amount as the spread is set now. */
  add(amount: number): void {
    const { spread, values, jumps } = this;
    const { first, whole, parts } = spread;
    for (let k = first; k < whole; k++) values[k] = values[k]! + amount * parts[k - first]!;
    jumps[whole] = jumps[whole]! + amount;
    this.isSummed = false;
  }

  /** Value at a height; beyond the table its end values. */
  at(z: number): number {
    if (!this.isSummed) this.sum();
    const { values } = this;
    const { nodes, spacing } = this.spread;
    const position = z / spacing;
    if (position <= 0) return values[0]!;
    if (position >= nodes) return values[nodes]!;
    const k = Math.floor(position);
    return values[k]! + (values[k + 1]! - values[k]!) * (position - k);
  }

  private sum(): void {
    let below = 0;
    for (let k = 0; k <= this.spread.nodes; k++) {
      below += this.jumps[k]!;
      this.values[k] = this.values[k]! + below;
      this.jumps[k] = 0;
    }
    this.isSummed = true;
  }
}

/** A step at 0 averaged with a triangle of half-width h. */
function smoothStep(u: number, h: number): number {
  if (u <= -h) return 0;
  if (u >= h) return 1;
  return u < 0 ? ((u + h) * (u + h)) / (2 * h * h) : 1 - ((h - u) * (h - u)) / (2 * h * h);
}

/** Integral of `smoothStep`. */
function rampSum(u: number, h: number): number {
  if (u <= -h) return 0;
  if (u >= h) return u;
  const rest = u < 0 ? u + h : h - u;
  const bent = (rest * rest * rest) / (6 * h * h);
  return u < 0 ? bent : u + bent;
}
