import { pow } from '../numerics/elementary.ts';
import { type OrganicBreakdownParameters, organicBreakdown } from './organic-breakdown.ts';
import { squareRootResponse } from './temperature-response.ts';

export interface CarcassBreakdownParameters extends OrganicBreakdownParameters {
  readonly coldest: number;
}

/** Carbon of a body of a gram fresh, a quarter of it dry and 45 % of that carbon [mol]. @source memory: common contents */
const SMALL_BODY = 0.25 * (0.45 / 12.011);
/** Exponent of the fall with body mass; see `carcassPace`. */
const EXPONENT = -1 / 6;

/**
 * Breakdown of a dead body over that of small ones [0..1, 1 up to a gram]: (M/1 g)^(-1/6).
 * @param bodyCarbon carbon of the whole body [mol], >= 0
 * @validity to some kilograms; whole bodies, no scavengers
 * @source assumed: joins bodies below a gram with whole trout (minshall-1991) in one power; in a lake whole trout in the
 *   cold deep took nine times as long as ground ones near the shore (glassic-2023), and young fish of a reservoir went
 *   faster than old ones (nobre-2019)
 */
export function carcassPace(bodyCarbon: number): number {
  return bodyCarbon > SMALL_BODY ? pow(bodyCarbon / SMALL_BODY, EXPONENT) : 1;
}

/**
 * Dead animals falling apart, by their size (`carcassPace`) and by the warmth that the bacteria of dead fish answer to;
 * their nitrogen and phosphorus come free with oxygen or without. See `organicBreakdown` for the equations.
 * @validity no scavengers but the animals of the enclosure; bones and scales go with the flesh; shells are apart
 * @source assumed: first order; rates from the works named in the library; ratkowsky-1982 (warmth)
 */
export const carcassBreakdown = organicBreakdown<CarcassBreakdownParameters>({
  id: 'carcass-breakdown',
  detritusFrom: 'the dead',
  oxidationOf: 'dead animals',
  nutrientsFrom: 'dead animals',
  carbon: 'carcassCarbon',
  nitrogen: 'carcassNitrogen',
  phosphorus: 'carcassPhosphorus',
  pace: 'carcassPace',
  nutrientsNeedOxygen: false,
  warmth: ({ coldest }) => squareRootResponse(coldest, 20),
  parameters: {
    rate: { unit: '1/d', min: 0.02, max: 2, meaning: 'loss of small dead animals at 20 degC' },
    oxidisedShare: { unit: '1', min: 0, max: 1, meaning: 'part used up at once, the rest becoming detritus' },
    coldest: { unit: '°C', min: -20, max: 2, meaning: 'temperature at which the bacteria would stop' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
  },
});
