// Positions in the typed arrays of the equilibrium solver. Concentrations inside it are mol/kg of water.

/** Constants at one temperature. */
export const K = {
  davies: 0,
  carbonDioxide: 1,
  first: 2,
  second: 3,
  water: 4,
  calciumBicarbonate: 5,
  calciumCarbonate: 6,
  magnesiumBicarbonate: 7,
  magnesiumCarbonate: 8,
  calciumSulfate: 9,
  magnesiumSulfate: 10,
  sodiumSulfate: 11,
  potassiumSulfate: 12,
  hydrogenSulfate: 13,
  ammonium: 14,
  hydrogenPhosphate: 15,
  dihydrogenPhosphate: 16,
  trihydrogenPhosphate: 17,
  calciumHydrogenPhosphate: 18,
  calciumDihydrogenPhosphate: 19,
  calciumPhosphate: 20,
  magnesiumHydrogenPhosphate: 21,
  magnesiumDihydrogenPhosphate: 22,
  magnesiumPhosphate: 23,
  calcite: 24,
  vapourPressure: 25,
  oxygenPressureCoefficient: 26,
  oxygen: 27,
} as const;
export const CONSTANT_COUNT = 28;

/** Conservative totals. `organic` is the charge of all organic sites when dissociated. */
export const TOTAL = {
  calcium: 0,
  magnesium: 1,
  sodium: 2,
  potassium: 3,
  chloride: 4,
  sulfate: 5,
  ammonium: 6,
  nitrite: 7,
  nitrate: 8,
  phosphate: 9,
  organic: 10,
  /** Depends on the carbon rule: activity of CO2(aq), DIC, or alkalinity. */
  carbon: 11,
} as const;
export const TOTAL_COUNT = 12;

/** What the iteration carries from one solution to the next. */
export const STATE = {
  pH: 0,
  ionicStrength: 1,
  calcium: 2,
  magnesium: 3,
  sodium: 4,
  potassium: 5,
  /** Activity of CO2(aq); follows from the others. */
  carbon: 6,
} as const;
export const STATE_COUNT = 7;

/** Concentrations of species and the sums made of them, written by every sweep. */
export const SPECIES = {
  hydrogen: 0,
  hydroxide: 1,
  carbonDioxide: 2,
  bicarbonate: 3,
  carbonate: 4,
  calciumBicarbonate: 5,
  calciumCarbonate: 6,
  magnesiumBicarbonate: 7,
  magnesiumCarbonate: 8,
  calcium: 9,
  magnesium: 10,
  sodium: 11,
  potassium: 12,
  sulfate: 13,
  calciumSulfate: 14,
  magnesiumSulfate: 15,
  sodiumSulfate: 16,
  potassiumSulfate: 17,
  hydrogenSulfate: 18,
  ammonium: 19,
  ammonia: 20,
  phosphate: 21,
  hydrogenPhosphate: 22,
  dihydrogenPhosphate: 23,
  trihydrogenPhosphate: 24,
  calciumPhosphate: 25,
  calciumHydrogenPhosphate: 26,
  calciumDihydrogenPhosphate: 27,
  magnesiumPhosphate: 28,
  magnesiumHydrogenPhosphate: 29,
  magnesiumDihydrogenPhosphate: 30,
  organicAnion: 31,
} as const;
export const SPECIES_COUNT = 32;

/** What a sweep leaves beside species. */
export const PASS = {
  /** Activity coefficients of charge 2 and of neutral species. */
  double: 0,
  neutral: 1,
  /** Alkalinity other than carbon's [eq/kg]. */
  otherAlkalinity: 2,
  /** Growth of pairs with carbonate over ln 10 pH, per free ion [1]. */
  calciumGrowth: 3,
  magnesiumGrowth: 4,
} as const;
export const PASS_COUNT = 5;

/** Results of a sweep that steer the iteration. */
export const STEER = {
  /** Alkalinity asked for less alkalinity found [eq/kg]; falls with pH. */
  residual: 0,
  /** Slope of the alkalinity found over ln 10 pH, free calcium and magnesium following their carbonate pairs [eq/kg]. */
  slope: 1,
  /** Largest relative change of ionic strength and free ions in this sweep [1]. */
  change: 2,
} as const;
export const STEER_COUNT = 3;

/** Which carbon is fixed: CO2(aq) by the gas, DIC, or (with pH given) alkalinity. */
export const CARBON_OPEN = 0;
export const CARBON_CLOSED = 1;
export const CARBON_FROM_ALKALINITY = 2;
export type CarbonRule = typeof CARBON_OPEN | typeof CARBON_CLOSED | typeof CARBON_FROM_ALKALINITY;
