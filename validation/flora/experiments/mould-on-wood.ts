import { VARIABLE_INDEX as V, VARIABLE_IDS } from '@shoreglass/engine';
import type { LandBreakdownParameters } from '../../../packages/engine/src/life/land-breakdown.ts';
import { createWoodMould, SEEN_BY_EYE } from '../../../packages/engine/src/life/wood-mould.ts';
import { MEDIANS } from '../culture.ts';
import { type Experiment, NotStated, temperatureOf } from '../experiment.ts';

const LONGEST = 365;

/** The moistest air a set-up names, such as '75-95% RH' [%]. */
function moistest(setup: string): number {
  const [, from, to] = /(\d+)(?:\s*-\s*(\d+))?\s*% RH/.exec(setup) ?? [];
  if (from === undefined) throw new NotStated('no humidity is given');
  return Number(to ?? from);
}

/** Days until mould is seen by the eye on fresh sapwood in the moistest air of the set-up, its sugars untouched before. */
export const mouldOnWood: Experiment = {
  name: 'mould on bare wood',
  asks: /mould on wood|mold on wood/i,
  answer(question) {
    const air = { temperature: temperatureOf(question, 23), humidity: moistest(question.setup) };
    const values = new Float64Array(VARIABLE_IDS.length);
    values[V.landWoodCarbon] = 1;
    const parameters = MEDIANS['land-breakdown'] as unknown as LandBreakdownParameters;
    const mould = createWoodMould(parameters, 1);
    let before = 0;
    for (let day = 1; day <= LONGEST; day += 1) {
      mould.pass(values, air);
      if (mould.index >= SEEN_BY_EYE) return day - 1 + (SEEN_BY_EYE - before) / (mould.index - before);
      before = mould.index;
    }
    throw new Error('no mould is seen within a year');
  },
};
