// Constants of nature and of the calendar that every science uses.

export const SECONDS_PER_DAY = 86400;
/** [K] at 0 degC. */
export const ICE_POINT = 273.15;
/** Gas constant [J/mol/K], exact since 2019. @source bipm-si */
export const GAS_CONSTANT = 8.314462618;
