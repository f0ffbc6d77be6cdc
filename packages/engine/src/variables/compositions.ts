import type { Content } from './elements.ts';

/** Molar ratios N:C and P:C of living pools of fixed composition [mol/mol]. */
export interface Composition {
  readonly nitrogenPerCarbon: number;
  readonly phosphorusPerCarbon: number;
}

/** Content per mol C of organic matter at the oxidation state of carbohydrate, nitrogen as ammonia. */
export function organicContent({ nitrogenPerCarbon: n, phosphorusPerCarbon: p }: Composition): Content {
  return { carbon: 1, nitrogen: n, phosphorus: p, oxygen: -1 - 2 * n };
}

/** Content of the nitrogen and phosphorus that stay when a mol C of living matter is respired. */
export function keptContent({ nitrogenPerCarbon: n, phosphorusPerCarbon: p }: Composition): Content {
  return { nitrogen: n, phosphorus: p, oxygen: -2 * n };
}

/**
 * Fixed compositions of the living pools.
 * @source bacteria: C5H7O2N, the convention of wastewater engineering (Metcalf & Eddy), P one fifth of N by mass (memory).
 * @source algae: Redfield 1958, C:N:P 106:16:1.
 * @source submergedPlants: Duarte 1992 median of freshwater angiosperms, C:N:P about 436:20:1 (memory).
 * @source floatingPlants: duckweed of 5 % N and 0.9 % P in dry matter of 40 % C, between starved (2 %) and rich (6 %)
 *   (memory; Petersen et al. 2021 read 6.05 % in rich medium).
 * @source emersedPlants: marsh and house plants of 2.8 % N and 0.4 % P in dry matter of 42 % C (memory).
 * @source moss: forest mosses of 1.4 % N and 0.15 % P in dry matter of 42 % C (memory).
 * @source landPlants: foliage plants of 3 % N and 0.4 % P in dry matter of 42 % C (memory).
 * @source fungi: mycelium of aquatic hyphomycetes of 5 % N and 0.6 % P in dry matter of 45 % C (memory).
 */
export const COMPOSITIONS = {
  bacteria: { nitrogenPerCarbon: 0.2, phosphorusPerCarbon: 0.018 },
  algae: { nitrogenPerCarbon: 16 / 106, phosphorusPerCarbon: 1 / 106 },
  submergedPlants: { nitrogenPerCarbon: 20 / 436, phosphorusPerCarbon: 1 / 436 },
  floatingPlants: { nitrogenPerCarbon: 0.107, phosphorusPerCarbon: 0.0087 },
  emersedPlants: { nitrogenPerCarbon: 0.057, phosphorusPerCarbon: 0.0037 },
  moss: { nitrogenPerCarbon: 0.0286, phosphorusPerCarbon: 0.00139 },
  landPlants: { nitrogenPerCarbon: 0.0613, phosphorusPerCarbon: 0.00369 },
  fungi: { nitrogenPerCarbon: 0.095, phosphorusPerCarbon: 0.0052 },
} as const satisfies Record<string, Composition>;
