/** Water that goes over a fall. */
export interface Fall {
  /** Flow over the edge [m3/s], >= 0. */
  readonly flow: number;
  /** Free fall from edge to pool [m], 0 to 2. */
  readonly height: number;
  /** Water temperature [degC], 0 to 35. */
  readonly temperature: number;
}

const CLEAN_WATER = 1.8;
const FREE_STEP = 1;

/**
 * Water brought to balance with the air by a fall [m3/s, >= 0]: flow times the share of the deficit that one
 * passage removes, Q (1 - 1/r), with the deficit ratio r = 1 + 0.38 a b H (1 - 0.11 H) (1 + 0.046 T),
 * a = 1.8 for clean water and b = 1 for a free step. Sets the driver `fallAeration`.
 * @param fall flow Q, height H, temperature T
 * @validity falls up to 2 m; fitted to weirs of rivers, used here for a few centimetres of a pump's return
 * @source butts-1983
 */
export function fallAeration({ flow, height, temperature }: Fall): number {
  const ratio =
    1 +
    0.38 * CLEAN_WATER * FREE_STEP * height * (1 - 0.11 * height) * (1 + 0.046 * Math.max(0, temperature));
  return flow * (1 - 1 / ratio);
}
