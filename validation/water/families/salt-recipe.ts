import { type CarbonSupply, dissolveSalts, speciate } from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import { waterFigures } from '../water-figures.ts';

/** Salts dissolved in pure water, open to a gas or, without one, with the carbon they bring. */
export const saltRecipe: Calculation = (inputs) => {
  const salts = inputs.group('salts');
  const masses = Object.fromEntries(salts.names().map((formula) => [formula, salts.number(formula, 'g/m3')]));
  const { composition, dissolvedInorganicCarbon } = dissolveSalts(masses);
  const carbon: CarbonSupply = inputs.has('pCO2')
    ? { kind: 'open', pressure: inputs.number('pCO2', 'Pa') }
    : { kind: 'closed', dissolvedInorganicCarbon };
  const temperature = inputs.number('temperature', 'degC');
  return waterFigures(composition, speciate({ temperature, composition, carbon }));
};
