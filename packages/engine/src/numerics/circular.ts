import { expm1 } from './exponential.ts';

// pi/2 in three parts of at most 33 bits each but the last, so that k times a part is exact for k < 2^20.
const QUARTER_TURN_HIGH = 1.5707963267341256;
const QUARTER_TURN_MIDDLE = 6.077100506303966e-11;
const QUARTER_TURN_LOW = 2.0222662487959506e-21;
const QUARTERS_PER_RADIAN = 0.6366197723675814;
const RIGHT_ANGLE = 1.5707963267948966;
const RIGHT_ANGLE_REST = 6.123233995736766e-17;
const ROUNDER = 6755399441055744; // 1.5 * 2^52
const FAR = 1e6;

/** atan(j/8) rounded to double, and what the rounding left out. */
const NODE_ANGLE = Float64Array.of(
  ...[0, 0.12435499454676144, 0.24497866312686414, 0.35877067027057225, 0.4636476090008061],
  ...[0.5585993153435624, 0.6435011087932844, 0.7188299996216245, 0.7853981633974483],
);
const NODE_ANGLE_REST = Float64Array.of(
  ...[0, -3.1253241424539383e-18, 1.0698755618734451e-17, -2.4623815582638635e-17, 2.2698777452961687e-17],
  ...[-5.4556305485916264e-18, 1.5834785051444286e-17, -2.1478388444456983e-17, 3.061616997868383e-17],
);

/** sin r for |r| <= pi/4, power series to r^17. */
function smallSine(r: number): number {
  const z = r * r;
  const z2 = z * z;
  const near = -1 / 6 + z * (1 / 120) + z2 * (-1 / 5040 + z * (1 / 362880));
  const far = -1 / 39916800 + z * (1 / 6227020800) + z2 * (-1 / 1307674368000 + z * (1 / 355687428096000));
  return r + r * z * (near + z2 * z2 * far);
}

/** cos r for |r| <= pi/4, power series to r^16; 1 - z/2 is carried with what its rounding leaves out. */
function smallCosine(r: number): number {
  const z = r * r;
  const z2 = z * z;
  const near = 1 / 24 + z * (-1 / 720) + z2 * (1 / 40320 + z * (-1 / 3628800));
  const far = 1 / 479001600 + z * (-1 / 87178291200) + z2 * (1 / 20922789888000);
  const start = 1 - z / 2;
  return start + (1 - start - z / 2 + z2 * (near + z2 * z2 * far));
}

/** sin(x + quarters pi/2). */
function turned(x: number, quarters: number): number {
  const angle = Math.abs(x) > FAR ? x % (4 * RIGHT_ANGLE) : x;
  const k = angle * QUARTERS_PER_RADIAN + ROUNDER - ROUNDER;
  const r = angle - k * QUARTER_TURN_HIGH - k * QUARTER_TURN_MIDDLE - k * QUARTER_TURN_LOW;
  const quadrant = (k + quarters) & 3;
  const size = (quadrant & 1) === 1 ? smallCosine(r) : smallSine(r);
  return quadrant > 1 ? -size : size;
}

/**
 * Sine [1], -1 to 1.
 * @param x angle [rad], any; NaN for NaN and the infinite
 * @validity beyond 1e6 rad the angle itself is reduced to about 1e-16 of its size
 * @source derived: power series after taking away whole quarter turns
 */
export function sin(x: number): number {
  return x === 0 ? x : turned(x, 0);
}

/**
 * Cosine [1], -1 to 1.
 * @param x angle [rad], any; NaN for NaN and the infinite
 * @validity beyond 1e6 rad the angle itself is reduced to about 1e-16 of its size
 * @source derived: power series after taking away whole quarter turns
 */
export function cos(x: number): number {
  return turned(x, 1);
}

/**
 * Angle whose tangent is x [rad], -pi/2 to pi/2.
 * @param x any [1]
 * @source derived: atan x = atan c + atan((x - c)/(1 + x c)) with c the nearest eighth, power series on the rest
 */
export function atan(x: number): number {
  const size = Math.abs(x);
  const slope = size > 1 ? 1 / size : size;
  if (!(slope > 0)) return size > 1 ? (x < 0 ? -RIGHT_ANGLE : RIGHT_ANGLE) : x;
  const j = Math.floor(slope * 8 + 0.5);
  const node = j / 8;
  const t = (slope - node) / (1 + slope * node);
  const z = t * t;
  const odd =
    -1 / 3 + z * (1 / 5 + z * (-1 / 7 + z * (1 / 9 + z * (-1 / 11 + z * (1 / 13 + z * (-1 / 15))))));
  const small = NODE_ANGLE_REST[j]! + t * z * odd;
  const angle =
    size > 1 ? RIGHT_ANGLE - NODE_ANGLE[j]! - t + (RIGHT_ANGLE_REST - small) : NODE_ANGLE[j]! + (t + small);
  return x < 0 ? -angle : angle;
}

/**
 * Hyperbolic tangent [1], -1 to 1.
 * @param x any [1]
 * @source derived: tanh x = g/(g + 2) with g = e^(2x) - 1
 */
export function tanh(x: number): number {
  const size = Math.abs(x);
  if (size > 22) return x < 0 ? -1 : 1;
  if (!(size > 0)) return x;
  const growth = expm1(size < 1 ? -2 * size : 2 * size);
  const result = size < 1 ? -growth / (growth + 2) : 1 - 2 / (growth + 2);
  return x < 0 ? -result : result;
}
