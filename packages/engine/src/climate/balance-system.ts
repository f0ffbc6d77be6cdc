/** Unknowns of the coupled balance. */
export const AIR = 0;
export const RATIO = 1;
export const WATER = 2;
export const GROUND = 3;
export const GLASS = 4;
export const UNKNOWNS = 5;

/** Terms of the five equations, by position; all conductances in W/K (per kg/kg where they act on the ratio). */
export const TERM = {
  /** Diagonals: what an equation's own unknown is multiplied by. */
  air: 0,
  ratio: 1,
  water: 2,
  ground: 3,
  glass: 4,
  /** Heat exchanged between stores, alike both ways. */
  airWater: 5,
  airGround: 6,
  airGlass: 7,
  waterGround: 8,
  waterGlass: 9,
  groundGlass: 10,
  /** Vapour: latent heat carried off per kg/kg from water and ground, and supplied to the air per kelvin of each. */
  waterToRatio: 11,
  groundToRatio: 12,
  ratioByWater: 13,
  ratioByGround: 14,
  /** Known sides. */
  knownAir: 15,
  knownRatio: 16,
  knownWater: 17,
  knownGround: 18,
  knownGlass: 19,
} as const;
export const TERMS = 20;

/** Answers: what is known, and what 1 kg/s condensing, 1 kg/s of fog and 1 W of heater add; five unknowns each. */
export const KNOWN = 0;
export const BY_CONDENSING = 1 * UNKNOWNS;
export const BY_FOG = 2 * UNKNOWNS;
export const BY_HEATER = 3 * UNKNOWNS;
export const ANSWERS = 4 * UNKNOWNS;

/**
 * Solves the five equations of the balance for its four right-hand sides:
 *
 *     air    a: A a - aw w - ag g - as s               = ra + L J
 *     ratio  v: V v - vw w - vg g                      = rv - L K - L J
 *     water  w: W w - aw a - lw v - wg g - ws s        = rw + P
 *     ground g: G g - ag a - lg v - wg w - gs s        = rg
 *     glass  s: S s - as a - ws w - gs g               = rs + L K
 *
 * v, a and s are eliminated in turn, the rest is two by two. Heat and vapour that leave one store enter another, so
 * every column is diagonally dominant and pivots stay positive without exchanging rows.
 * @param terms numbers at the positions of `TERM`
 * @param L latent heat [J/kg]
 * @param answers receives unknowns for 1 (known), K = 1 kg/s condensing, J = 1 kg/s of fog, P = 1 W of heater
 * @source derived: Gaussian elimination written out
 */
export function solveBalance(terms: Float64Array, L: number, answers: Float64Array): void {
  const aw = terms[TERM.airWater]!;
  const ag = terms[TERM.airGround]!;
  const as = terms[TERM.airGlass]!;
  const ra = terms[TERM.knownAir]!;
  const rv = terms[TERM.knownRatio]!;
  const vw = terms[TERM.ratioByWater]!;
  const vg = terms[TERM.ratioByGround]!;
  const iv = 1 / terms[TERM.ratio]!;
  const ia = 1 / terms[TERM.air]!;
  const alpha = terms[TERM.waterToRatio]! * iv;
  const beta = terms[TERM.groundToRatio]! * iv;

  // without the ratio and the air
  const asA = as * ia;
  const sw = terms[TERM.waterGlass]! + asA * aw;
  const sg = terms[TERM.groundGlass]! + asA * ag;
  const is = 1 / (terms[TERM.glass]! - asA * as);
  const rs = terms[TERM.knownGlass]! + asA * ra;
  const fogOnGlass = L * asA;
  const awA = aw * ia;
  const agA = ag * ia;

  // without the glass
  const swS = sw * is;
  const sgS = sg * is;
  const W = terms[TERM.water]! - alpha * vw - awA * aw - swS * sw;
  const G = terms[TERM.ground]! - beta * vg - agA * ag - sgS * sg;
  const exchange = terms[TERM.waterGround]! + awA * ag + swS * sg;
  const wg = exchange + alpha * vg;
  const gw = exchange + beta * vw;
  const determinant = 1 / (W * G - wg * gw);
  const rw = terms[TERM.knownWater]! + alpha * rv + awA * ra + swS * rs;
  const rg = terms[TERM.knownGround]! + beta * rv + agA * ra + sgS * rs;
  const condensingW = L * (swS - alpha);
  const condensingG = L * (sgS - beta);
  const fogW = L * (awA - alpha) + swS * fogOnGlass;
  const fogG = L * (agA - beta) + sgS * fogOnGlass;

  for (let side = 0; side < ANSWERS; side += UNKNOWNS) {
    const isKnown = side === KNOWN ? 1 : 0;
    const K = side === BY_CONDENSING ? 1 : 0;
    const J = side === BY_FOG ? 1 : 0;
    const P = side === BY_HEATER ? 1 : 0;
    const bw = isKnown * rw + K * condensingW + J * fogW + P;
    const bg = isKnown * rg + K * condensingG + J * fogG;
    const w = (bw * G + bg * wg) * determinant;
    const g = (bg * W + bw * gw) * determinant;
    const s = (isKnown * rs + L * K + fogOnGlass * J + sw * w + sg * g) * is;
    answers[side + AIR] = (isKnown * ra + L * J + aw * w + ag * g + as * s) * ia;
    answers[side + RATIO] = (isKnown * rv - L * (K + J) + vw * w + vg * g) * iv;
    answers[side + WATER] = w;
    answers[side + GROUND] = g;
    answers[side + GLASS] = s;
  }
}
