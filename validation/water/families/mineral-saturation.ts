import {
  equilibriumWithMineral,
  type Mineral,
  MOLAR_MASS,
  speciate,
  type WaterState,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { readTotals, readWater } from '../read-water.ts';
import { amountFigure, waterFigures } from '../water-figures.ts';
import { carbonateWater } from './carbonate-water.ts';

const MINERALS: readonly Mineral[] = ['calcite', 'aragonite', 'gypsum'];

function readMineral(inputs: Inputs): Mineral {
  const name = inputs.text('mineral').toLowerCase();
  const mineral = MINERALS.find((known) => known === name);
  if (!mineral) throw new Error(`mineral '${inputs.text('mineral')}' is none of ${MINERALS.join(', ')}`);
  return mineral;
}

/** Carbon of a water that was in balance with a gas before it was sealed [mol/m3]; none without that gas. */
export function carbonWhenSealed(
  inputs: Inputs,
  water: Pick<WaterState, 'temperature' | 'composition'>,
): number {
  if (!inputs.has('initial_pCO2_before_sealing')) return 0;
  const pressure = inputs.number('initial_pCO2_before_sealing', 'Pa');
  return speciate({ ...water, carbon: { kind: 'open', pressure } }).dissolvedInorganicCarbon;
}

export function isClosed(inputs: Inputs): boolean {
  const system = inputs.textOr('system', inputs.has('pCO2') ? 'open' : 'closed');
  if (system !== 'open' && system !== 'closed')
    throw new Error(`system '${system}' is neither open nor closed`);
  return system === 'closed';
}

function readStart(inputs: Inputs): WaterState {
  if (!isClosed(inputs) || inputs.has('DIC')) return readWater(inputs);
  const temperature = inputs.number('temperature', 'degC');
  const composition = readTotals(inputs.groupOrEmpty('totals'));
  const dissolvedInorganicCarbon = carbonWhenSealed(inputs, { temperature, composition });
  return { temperature, composition, carbon: { kind: 'closed', dissolvedInorganicCarbon } };
}

/** A water brought to equilibrium with a mineral, or the saturation of one that is given. */
export const mineralSaturation: Calculation = (inputs, wanted) => {
  if (!inputs.has('mineral')) return carbonateWater(inputs, wanted);
  const { composition, speciation } = equilibriumWithMineral(readStart(inputs), readMineral(inputs));
  const calcium = composition.calcium ?? 0;
  return {
    ...waterFigures(composition, speciation),
    Ca_mg: amountFigure(calcium, MOLAR_MASS.calcium),
  };
};
