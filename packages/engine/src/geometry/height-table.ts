/**
 * A sum of areas that each open between two heights, as a table over heights that is straight between its nodes. Each
 * entry is averaged over one spacing to either side, which keeps area and first moment: volumes above are exact.
 */
export class HeightTable {
  readonly nodes: number;
  readonly spacing: number;
  private readonly values: Float64Array;
  private readonly jumps: Float64Array;
  private isSummed = false;

  /** @param top greatest height [m]; `nodes` spaces from 0 to it */
  constructor(top: number, nodes: number) {
    this.nodes = nodes;
    this.spacing = top / nodes;
    this.values = new Float64Array(nodes + 1);
    this.jumps = new Float64Array(nodes + 2);
  }

  /** Adds an amount that is 0 below `from` (at least 0), whole above `to`, straight in between. */
  add(amount: number, from: number, to: number): void {
    const { spacing: h, nodes } = this;
    const low = Math.max(0, from);
    const high = Math.max(low, to);
    const first = Math.max(0, Math.ceil(low / h - 1));
    const whole = Math.max(0, Math.ceil(high / h + 1));
    const span = high - low;
    for (let k = first; k < Math.min(whole, nodes + 1); k++) {
      const z = k * h;
      const part =
        span > 1e-3 * h ? (rampSum(z - low, h) - rampSum(z - high, h)) / span : smoothStep(z - low, h);
      // What the averaging would put below height 0 belongs above it: the first node has half the weight of others.
      this.values[k] = this.values[k]! + amount * (k === 0 ? 2 * part : part);
    }
    if (whole <= nodes) this.jumps[whole] = this.jumps[whole]! + amount;
    this.isSummed = false;
  }

  /** Value at a height; beyond the table its end values. */
  at(z: number): number {
    if (!this.isSummed) this.sum();
    const { values, spacing, nodes } = this;
    const position = z / spacing;
    if (position <= 0) return values[0]!;
    if (position >= nodes) return values[nodes]!;
    const k = Math.floor(position);
    return values[k]! + (values[k + 1]! - values[k]!) * (position - k);
  }

  private sum(): void {
    let below = 0;
    for (let k = 0; k <= this.nodes; k++) {
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
  const cubed = (x: number): number => (x * x * x) / (6 * h * h);
  return u < 0 ? cubed(u + h) : u + cubed(h - u);
}
