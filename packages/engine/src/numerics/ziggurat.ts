import { exp, log } from './elementary.ts';
import { nextBits } from './xoshiro.ts';

// The half bell f(x) = e^(-x^2/2) cut into 256 layers of equal area; the lowest holds the tail beyond EDGE.
// EDGE solves "the topmost layer ends at f = 1"; solved to 40 digits.
const LAYERS = 256;
const EDGE = 3.654152885361009;
const AREA = 0.004928673233974655;

const reach = new Float64Array(LAYERS + 1);
const height = new Float64Array(LAYERS + 1);
reach[0] = AREA / exp(-0.5 * EDGE * EDGE);
reach[1] = EDGE;
height[1] = exp(-0.5 * EDGE * EDGE);
for (let i = 2; i < LAYERS; i += 1) {
  height[i] = height[i - 1]! + AREA / reach[i - 1]!;
  reach[i] = Math.sqrt(-2 * log(height[i]!));
}
height[LAYERS] = 1;

function openUniform(state: Int32Array): number {
  return ((nextBits(state) >>> 0) + 0.5) / 4294967296;
}

/** A draw beyond EDGE (marsaglia-1964). */
function tailDraw(state: Int32Array): number {
  for (;;) {
    const x = -log(openUniform(state)) / EDGE;
    const y = -log(openUniform(state));
    if (y + y >= x * x) return EDGE + x;
  }
}

/**
 * A draw from the standard normal distribution [1].
 * @param state of xoshiro128**, stepped
 * @source marsaglia-tsang-2000-ziggurat; layer and position from separate bits, doornik-2005
 */
export function standardNormal(state: Int32Array): number {
  for (;;) {
    const bits = nextBits(state);
    const layer = bits & 255;
    const position = (bits >>> 11) * 4294967296 + (nextBits(state) >>> 0);
    const x = position * (1 / 9007199254740992) * reach[layer]!;
    const sign = (bits & 256) === 0 ? 1 : -1;
    if (x < reach[layer + 1]!) return sign * x;
    if (layer === 0) return sign * tailDraw(state);
    const y = height[layer]! + openUniform(state) * (height[layer + 1]! - height[layer]!);
    if (y < exp(-0.5 * x * x)) return sign * x;
  }
}
