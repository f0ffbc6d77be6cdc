import { VARIABLE_INDEX as V, VARIABLE_IDS } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { litterContents } from '../../../packages/contract/src/enclosure/plan/pieces.ts';
import {
  createLandBreakdown,
  type LandBreakdownParameters,
} from '../../../packages/engine/src/life/land-breakdown.ts';
import { MEDIANS } from '../culture.ts';
import { type Experiment, NotStated, type Question } from '../experiment.ts';

/** A temperate year on moist ground [degC, share of what the ground can hold]. @source assumed: 11 °C, 10 K either way */
const YEAR = { days: 365, mean: 11, swing: 10, wetness: 0.7 } as const;

/** Share of oak leaves lost in a year on moist ground. Kinds are not told apart on land. */
function lostInAYear({ unit, quantity }: Question): number {
  if (!/oak/.test(`${unit} ${quantity}`)) throw new NotStated('only oak is computed');
  const oak = library.data.materials['oak-litter'];
  if (oak?.use !== 'litter') throw new Error('the library holds no oak leaves');
  const { carbon, leachable, nitrogen, phosphorus } = litterContents(oak, 0.01);
  const values = new Float64Array(VARIABLE_IDS.length);
  const start = carbon + leachable;
  values[V.landLitterCarbon] = start;
  values[V.landLitterNitrogen] = nitrogen;
  values[V.landLitterPhosphorus] = phosphorus;
  const land = createLandBreakdown(MEDIANS['land-breakdown'] as unknown as LandBreakdownParameters);
  for (let day = 0; day < YEAR.days; day += 1) {
    const temperature = YEAR.mean - YEAR.swing * Math.cos((2 * Math.PI * day) / YEAR.days);
    land.pass(values, { temperature, groundWetness: YEAR.wetness, humidity: 0.9 });
  }
  return 1 - values[V.landLitterCarbon]! / start;
}

export const leavesOnLand: Experiment = {
  name: 'breakdown of leaves on land',
  asks: /leaves on land.*mass lost/i,
  answer: lostInAYear,
};
