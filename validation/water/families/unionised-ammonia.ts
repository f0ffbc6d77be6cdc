import { ammoniumAcidity, unionisedFraction } from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import { figure } from '../water-figures.ts';

/** Share of total ammonia that is NH3, and its pKa at infinite dilution. */
export const unionisedAmmonia: Calculation = (inputs) => {
  const temperature = inputs.number('temperature', 'degC');
  const ionicStrength = inputs.numberOr('ionic_strength', 'mol/kgw', 0);
  const pKa = figure(ammoniumAcidity(temperature + 273.15), '-');
  if (!inputs.has('pH')) return { pKa };
  return {
    pKa,
    NH3_fraction: figure(unionisedFraction(temperature, inputs.number('pH', '-'), ionicStrength), '-'),
  };
};
