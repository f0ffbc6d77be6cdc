// Factors between the units parameters are published in and the SI of the value array.

export const SECONDS_PER_DAY = 86400;
/** [K] at 0 degC. */
export const ICE_POINT = 273.15;
/** [J/mol/K] CODATA 2018. */
export const GAS_CONSTANT = 8.314462618;
