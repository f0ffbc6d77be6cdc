import { thetaResponse } from '../../packages/engine/src/cycle/temperature-response.ts';
import { arrheniusFactor } from '../../packages/engine/src/life/arrhenius.ts';
import type { Calculation } from '../harness/check.ts';
import { figuresOf } from './answers.ts';

const REFERENCE = 20;

/** Rates by temperature as animals (Arrhenius) and microbes (theta to the tenth is Q10) have them. */
export const temperatureFigures: Calculation = (inputs) => {
  const rate = inputs.number('rate20', '-');
  const temperatures = inputs.numbers('T', '-');
  const theta = thetaResponse(inputs.number('Q10', '-') ** 0.1, REFERENCE);
  return figuresOf({
    Q10: temperatures.map((temperature) => rate * theta(temperature)),
    arrhenius: temperatures.map(
      (temperature) => rate * arrheniusFactor(temperature, REFERENCE, inputs.number('E_eV', '-')),
    ),
  });
};
