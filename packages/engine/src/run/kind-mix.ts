/** Kinds that share one pool, each with its own pace of breakdown over that of the reference kind. */
export interface KindMix {
  /** Puts an amount [mol] of a kind of some pace [1] in; `meaty` is the part of it that is of animals [0..1], a half when left out. */
  add(amount: number, pace: number, meaty?: number): void;
  /** Tells what is left of all kinds together [mol]: the loss falls on each by its amount times its pace. */
  settle(left: number): void;
  /** Mean pace of what is there [1]; 1 when nothing is. */
  pace(): number;
  /** Mean part of what is there that is of animals [0..1]; a half when nothing is. */
  meaty(): number;
}

interface Kind {
  amount: number;
  readonly pace: number;
  readonly meaty: number;
}

const MIXED = 0.5;

/**
 * Returns an empty mix. First-order loss of kind i over a day is amount_i pace_i k dt, so a pool of mean pace
 * sum(amount pace)/sum(amount) loses what its kinds would; `settle` shares the loss out once a day, so that quick
 * kinds run out first.
 * @source derived: first-order kinds in one pool, renewed daily
 */
export function createKindMix(): KindMix {
  const kinds: Kind[] = [];
  const sum = (of: (kind: Kind) => number): number => kinds.reduce((total, kind) => total + of(kind), 0);
  return {
    add(amount, pace, meaty = MIXED) {
      if (amount <= 0) return;
      const known = kinds.find((kind) => kind.pace === pace && kind.meaty === meaty);
      if (known) known.amount += amount;
      else kinds.push({ amount, pace, meaty });
    },
    settle(left) {
      const before = sum(({ amount }) => amount);
      if (before <= 0) return;
      const weighted = sum(({ amount, pace }) => amount * pace);
      const loss = Math.max(0, before - left);
      for (const kind of kinds) {
        kind.amount = Math.max(
          0,
          kind.amount - (weighted > 0 ? (loss * kind.amount * kind.pace) / weighted : 0),
        );
      }
      const after = sum(({ amount }) => amount);
      const factor = after > 0 ? left / after : 0;
      for (const kind of kinds) kind.amount *= factor;
    },
    pace() {
      const all = sum(({ amount }) => amount);
      return all > 0 ? sum(({ amount, pace }) => amount * pace) / all : 1;
    },
    meaty() {
      const all = sum(({ amount }) => amount);
      return all > 0 ? sum(({ amount, meaty }) => amount * meaty) / all : MIXED;
    },
  };
}
