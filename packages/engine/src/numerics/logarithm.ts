// The split of the argument: x = 2^k m with m in [sqrt 1/2, sqrt 2), c = j/64 the node nearest to m,
// r = (m - c)/c with |r| <= 0.0112, so ln x = k ln 2 + ln c + ln(1 + r). Constants were computed to 60 digits and
// rounded; HIGH parts are multiples of 2^-42, so that k LN2_HIGH + ln c (HIGH) is exact.
import { LEAST_EXPONENT, POWERS_OF_TWO } from './powers-of-two.ts';

const LN2_HIGH = 0.6931471805582987;
const LN2_LOW = 1.6465949582897082e-12;
const LOG10_2_HIGH = 0.30102999565860955;
const LOG10_2_LOW = 5.371644767466998e-12;
const PER_LN10 = Math.LOG10E;

const FIRST_NODE = 45;
/** ln(j/64) from j = 45 on, and what the rounding left out. */
const NODE_LOG_HIGH = Float64Array.of(
  ...[
    -0.35222059358943625, -0.33024168687052224, -0.30873548164959175, -0.28768207245184385,
    -0.2670627852489815,
  ],
  ...[
    -0.2468600779316148, -0.22705745063535687, -0.20763936477828793, -0.18859116980752333,
    -0.16989903679541385,
  ],
  ...[
    -0.151549898127314, -0.13353139262449076, -0.11583181552509814, -0.09844007281321865,
    -0.08134563945395712,
  ],
  ...[-0.0645385211375924, -0.04800921918626955, -0.03174869831468641, -0.01574835696806076, 0.0],
  ...[
    0.015504186535963527, 0.03077165866670839, 0.0458095360313564, 0.06062462181648698, 0.07522342123752424,
  ],
  ...[0.08961215868976069, 0.10379679368156758, 0.11778303565643, 0.13157635778861732, 0.14518200984457508],
  ...[0.15860503017665906, 0.17185025692674571, 0.18492233849406148, 0.19782574332998593, 0.21056476910735],
  ...[0.22314355131425145, 0.23556607131286, 0.2478361639045943, 0.25995752443691345, 0.2719337154835557],
  ...[0.28376817313073843, 0.2954642128938758, 0.30702503529482783, 0.31845373111855224, 0.32975328637257917],
  ...[0.34092658697068146, 0.35197642315711164],
);
const NODE_LOG_LOW = Float64Array.of(
  ...[8.414918193489195e-14, -5.4612144489920215e-14, -2.1522127491642888e-14, 6.292357389008195e-14],
  ...[-6.371947269815667e-14, 8.899851356560444e-14, 1.078736749871691e-14, 4.3425422595242564e-14],
  ...[-2.6693431578015818e-14, 1.6376276414097503e-14, 1.1307104809870373e-13, -3.1859736349078334e-14],
  ...[-2.3568822182038756e-14, -3.3871241029241416e-14, 4.713370778300984e-15, 2.1225608044809997e-14],
  ...[-9.106054379130929e-14, 1.0610652735224087e-13, -7.840703382506278e-14, 0.0],
  ...[1.7274567499706107e-15, 4.529814257790929e-14, -6.219834199475792e-14, -5.213620639136504e-14],
  ...[6.329065958724544e-14, -7.355770219435029e-14, 7.598636597194141e-14, -4.654729747598445e-14],
  ...[1.0195735223708473e-13, -7.718001336828099e-14, -2.0472357800461955e-14, -8.649239607212071e-14],
  ...[-4.9485167661250996e-14, -6.604544877082384e-14, -3.6507188831790577e-16, -4.169796584527195e-14],
  ...[-9.30945949519689e-14, -1.3029797173308663e-14, 1.2621729398885316e-14, 8.604306772808733e-14],
  ...[-9.3834172236637e-14, -3.993416384387844e-14, 8.403156304792425e-14, -1.7625431312172662e-14],
  ...[-1.1118671389559323e-13, -8.82452633212564e-14, 6.654491643324795e-14],
);

const NODE_INVERSE = new Float64Array(47);
const NODE_INVERSE_LOW = new Float64Array(47);
for (let i = 0; i < NODE_INVERSE.length; i += 1) {
  const node = (i + FIRST_NODE) / 64;
  const inverse = 1 / node;
  const product = inverse * node;
  NODE_INVERSE[i] = inverse;
  NODE_INVERSE_LOW[i] = (1 - product - productError(inverse, node, product)) / node;
}

const number = new Float64Array(1);
const words = new Int32Array(number.buffer);
const HIGH_WORD = new Uint8Array(Int32Array.of(1).buffer)[0] === 1 ? 1 : 0;
/** High word of sqrt 1/2, just below it. */
const ROOT_HALF_WORD = 0x3fe6a09e;

const LEAST_DIRECT = 2.2250738585072014e-308; // 2^-1022
const MOST_DIRECT = 4.4942328371557898e307; // 2^1022
const TWO_TO_60 = 2 ** 60;

/** The exponent k of x = 2^k m, for x from 2^-1022 to 2^1022. */
function exponentOf(x: number): number {
  number[0] = x;
  return (words[HIGH_WORD]! - ROOT_HALF_WORD) >> 20;
}

/** m = x 2^-k, exact, for k from -1022 to 1022. */
function mantissaOf(x: number, k: number): number {
  return x * POWERS_OF_TWO[-k - LEAST_EXPONENT]!;
}

/** ln(1 + r) - r for |r| <= 0.0112, power series to r^8. */
function curvature(r: number): number {
  const r2 = r * r;
  const far = 1 / 5 - r * (1 / 6) + r2 * (1 / 7 - r * 0.125);
  return r2 * (-0.5 + r * (1 / 3) - r2 * (0.25 - r * far));
}

/** Logarithm of what `of` does not take directly: zero, negative, infinite, not a number, tiny and huge. */
function limit(x: number, of: (x: number) => number): number {
  if (x > 0 && x < LEAST_DIRECT) return of(x * TWO_TO_60) - of(TWO_TO_60);
  if (x >= MOST_DIRECT && x < Number.POSITIVE_INFINITY) return of(x / TWO_TO_60) + of(TWO_TO_60);
  return x === 0 ? Number.NEGATIVE_INFINITY : x > 0 ? x : Number.NaN;
}

/**
 * Natural logarithm [1].
 * @param x >= 0 [1]; -Infinity at 0, NaN below
 * @source derived: table of ln(j/64) and power series on the remainder
 */
export function log(x: number): number {
  if (!(x >= LEAST_DIRECT && x < MOST_DIRECT)) return limit(x, log);
  const k = exponentOf(x);
  const m = mantissaOf(x, k);
  const j = (m * 64 + 0.5) | 0;
  const i = j - FIRST_NODE;
  const r = (m - j / 64) * NODE_INVERSE[i]!;
  return k * LN2_HIGH + NODE_LOG_HIGH[i]! + (r + (curvature(r) + (k * LN2_LOW + NODE_LOG_LOW[i]!)));
}

/**
 * Decimal logarithm [1].
 * @param x >= 0 [1]; -Infinity at 0, NaN below
 * @source derived: table of ln(j/64) and power series on the remainder
 */
export function log10(x: number): number {
  if (!(x >= LEAST_DIRECT && x < MOST_DIRECT)) return limit(x, log10);
  const k = exponentOf(x);
  const m = mantissaOf(x, k);
  const j = (m * 64 + 0.5) | 0;
  const i = j - FIRST_NODE;
  const r = (m - j / 64) * NODE_INVERSE[i]!;
  const mantissaLog = NODE_LOG_HIGH[i]! + (r + (curvature(r) + NODE_LOG_LOW[i]!));
  return k * LOG10_2_HIGH + (mantissaLog * PER_LN10 + k * LOG10_2_LOW);
}

/**
 * ln(1 + x) [1], without cancellation near zero.
 * @param x >= -1 [1]; -Infinity at -1, NaN below
 * @source derived: ln u + (x - (u - 1))/u with u = 1 + x rounded
 */
export function log1p(x: number): number {
  const u = 1 + x;
  if (!(u > 0 && u < Number.POSITIVE_INFINITY)) return limit(u, log);
  if (u === 1) return x;
  const left = u > 2 ? 1 - (u - x) : x - (u - 1);
  return log(u) + left / u;
}

/** What the rounding of the product a b left out, exactly (dekker-1971), for factors below 1e290. */
export function productError(a: number, b: number, product: number): number {
  const wideA = a * 134217729;
  const highA = wideA - (wideA - a);
  const lowA = a - highA;
  const wideB = b * 134217729;
  const highB = wideB - (wideB - b);
  const lowB = b - highB;
  return lowA * lowB - (product - highA * highB - lowA * highB - highA * lowB);
}

/**
 * Natural logarithm [1] in two parts whose sum holds about 62 bits; returns the leading part and leaves the
 * rest in `into[0]`.
 * @param x > 0 and finite [1]
 * @source derived: as log, with the remainder and the sum carried in two parts
 */
export function logInTwoParts(x: number, into: Float64Array): number {
  const shift = x < LEAST_DIRECT ? -60 : x < MOST_DIRECT ? 0 : 60;
  const direct = shift === 0 ? x : shift < 0 ? x * TWO_TO_60 : x / TWO_TO_60;
  const directExponent = exponentOf(direct);
  const m = mantissaOf(direct, directExponent);
  const k = directExponent + shift;
  const j = (m * 64 + 0.5) | 0;
  const i = j - FIRST_NODE;
  const gap = m - j / 64;
  const r = gap * NODE_INVERSE[i]!;
  const rest = productError(gap, NODE_INVERSE[i]!, r) + gap * NODE_INVERSE_LOW[i]!;
  const whole = k * LN2_HIGH + NODE_LOG_HIGH[i]!;
  const sum = whole + r;
  const low = whole - sum + r + (curvature(r) + (rest + (k * LN2_LOW + NODE_LOG_LOW[i]!)));
  const leading = sum + low;
  into[0] = low - (leading - sum);
  return leading;
}
