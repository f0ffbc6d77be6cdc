import { blended, evaporated, speciate, toppedOff } from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { type Composition, readTotals } from '../read-water.ts';
import { waterFigures } from '../water-figures.ts';

/** Words for water without salts. */
const PURE = /pure|distilled|deionised|demineralised|osmosis|\bRO\b|rain/i;

function readRefill(inputs: Inputs): Composition {
  if (inputs.has('refill_water') && !inputs.isText('refill_water'))
    return readTotals(inputs.group('refill_water'));
  const words = `${inputs.textOr('refill', '')} ${inputs.textOr('refill_water', '')}`;
  if (PURE.test(words)) return {};
  throw new Error(`the refill '${words.trim()}' has no composition in 'refill_water'`);
}

function readMixed(inputs: Inputs): Composition {
  if (inputs.has('fraction_hard_tap')) {
    const other = inputs.has('soft_water') ? readTotals(inputs.group('soft_water')) : {};
    return blended(readTotals(inputs.group('hard_tap')), other, inputs.number('fraction_hard_tap', '-'));
  }
  const start = readTotals(inputs.group('start_water'));
  const lost = inputs.numberOr('water_evaporated', '-', 0);
  const refilled = inputs.textOr('refill', inputs.has('refill_water') ? 'given' : 'none') !== 'none';
  return refilled ? toppedOff(start, readRefill(inputs), lost) : evaporated(start, lost);
}

/** A blend of two waters, or a water after evaporation with or without refill, in balance with the gas. */
export const mixedWaters: Calculation = (inputs) => {
  const composition = readMixed(inputs);
  const temperature = inputs.number('temperature', 'degC');
  const carbon = { kind: 'open', pressure: inputs.number('pCO2', 'Pa') } as const;
  return waterFigures(composition, speciate({ temperature, composition, carbon }));
};
