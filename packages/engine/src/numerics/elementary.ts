// Elementary functions from IEEE 754 arithmetic alone (+ - * /, square root, bit views), so that every JavaScript
// engine gives the same bits; the built-in ones may differ between engines and versions.
export { atan, cos, sin, tanh } from './circular.ts';
export { cbrt } from './cube-root.ts';
export { exp, exp10, expEach, expm1 } from './exponential.ts';
export { log, log1p, log10 } from './logarithm.ts';
export { pow } from './power.ts';
