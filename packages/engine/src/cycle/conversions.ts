// Factors between the units parameters are published in and the SI of the value array.

export const SECONDS_PER_DAY = 86400;
/** Molar masses [g/mol]. IUPAC 2021 abridged. */
export const CARBON_MASS = 12.011;
export const NITROGEN_MASS = 14.007;
export const PHOSPHORUS_MASS = 30.974;
export const OXYGEN_GAS_MASS = 31.998;
export const CALCIUM_CARBONATE_MASS = 100.086;
/** [K] at 0 degC. */
export const ICE_POINT = 273.15;
/** [J/mol/K] CODATA 2018. */
export const GAS_CONSTANT = 8.314462618;
