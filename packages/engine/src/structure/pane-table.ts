/**
 * Coefficients of a pane under water pressure, by depth of water over height of pane (rows) and length over height
 * (columns): sides and base simply supported, Poisson's ratio 0.22.
 *
 *     sigma = beta p0 H^2/t^2     deflection = alpha p0 H^4/(E t^3)
 *
 * Levy series, confirmed to four digits by a Rayleigh-Ritz solution; the stress is the largest principal bending stress
 * anywhere, twisting at the corners included.
 * @source derived: linear theory of thin plates
 */
export const DEPTH_RATIOS = [0.25, 1 / 3, 0.5, 0.75, 1] as const;
export const LENGTH_RATIOS = [0.5, 2 / 3, 1, 1.5, 2, 2.5, 3, 4] as const;

/** beta, top edge free */
export const FREE_STRESS: readonly (readonly number[])[] = [
  [0.0211, 0.0269, 0.0348, 0.0425, 0.0501, 0.0578, 0.0655, 0.0809],
  [0.0282, 0.0375, 0.0518, 0.0665, 0.0804, 0.0941, 0.1079, 0.1354],
  [0.041, 0.0564, 0.0844, 0.1198, 0.1522, 0.1837, 0.215, 0.2772],
  [0.0648, 0.086, 0.1318, 0.2072, 0.2803, 0.3518, 0.4225, 0.5632],
  [0.0838, 0.1201, 0.1972, 0.3506, 0.4579, 0.5542, 0.6799, 0.9302],
];

/** alpha, top edge free */
export const FREE_DEFLECTION: readonly (readonly number[])[] = [
  [0.00062, 0.00116, 0.0029, 0.00944, 0.02334, 0.04321, 0.06855, 0.13454],
  [0.00101, 0.00197, 0.00506, 0.01687, 0.04159, 0.0769, 0.12195, 0.23926],
  [0.00185, 0.00389, 0.01088, 0.03847, 0.09416, 0.17361, 0.27494, 0.53885],
  [0.00302, 0.00701, 0.02257, 0.08911, 0.21473, 0.3935, 0.6214, 1.21497],
  [0.00399, 0.01009, 0.03991, 0.16456, 0.38859, 0.70645, 1.11141, 2.16625],
];

/** beta, top edge held by a rim or braces */
export const BRACED_STRESS: readonly (readonly number[])[] = [
  [0.0211, 0.0269, 0.035, 0.0421, 0.0459, 0.0478, 0.0488, 0.0496],
  [0.0282, 0.0376, 0.0524, 0.0663, 0.0739, 0.078, 0.0801, 0.0817],
  [0.0409, 0.0561, 0.0854, 0.1182, 0.1374, 0.1478, 0.1533, 0.1576],
  [0.0644, 0.0827, 0.1253, 0.1921, 0.2334, 0.2564, 0.2685, 0.278],
  [0.0821, 0.1103, 0.1538, 0.2514, 0.3131, 0.3475, 0.3658, 0.38],
];

/** alpha, top edge held by a rim or braces */
export const BRACED_DEFLECTION: readonly (readonly number[])[] = [
  [0.00062, 0.00115, 0.00252, 0.0045, 0.00582, 0.00657, 0.00698, 0.0073],
  [0.00101, 0.00194, 0.00434, 0.00781, 0.01011, 0.01142, 0.01213, 0.0127],
  [0.00184, 0.0038, 0.00896, 0.01637, 0.02125, 0.02404, 0.02554, 0.02674],
  [0.003, 0.00666, 0.01673, 0.03124, 0.04078, 0.04621, 0.04913, 0.05146],
  [0.00388, 0.00902, 0.02346, 0.0443, 0.058, 0.06578, 0.06999, 0.07333],
];
