import { organicBreakdown } from './organic-breakdown.ts';

/**
 * Dead animals falling apart; their nitrogen and phosphorus come free with oxygen or without. See `organicBreakdown`
 * for the equations.
 * @validity bodies below about a gram and no scavengers; large bodies last longer, shells are apart
 * @source assumed: first order; rates from the works named in the library
 */
export const carcassBreakdown = organicBreakdown({
  id: 'carcass-breakdown',
  detritusFrom: 'the dead',
  oxidationOf: 'dead animals',
  nutrientsFrom: 'dead animals',
  carbon: 'carcassCarbon',
  nitrogen: 'carcassNitrogen',
  phosphorus: 'carcassPhosphorus',
  nutrientsNeedOxygen: false,
  parameters: {
    rate: { unit: '1/d', min: 0.02, max: 2, meaning: 'loss of small dead animals at 20 degC' },
    oxidisedShare: { unit: '1', min: 0, max: 1, meaning: 'part used up at once, the rest becoming detritus' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
  },
});
