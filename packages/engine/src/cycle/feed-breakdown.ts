import { type OrganicBreakdownParameters, organicBreakdown } from './organic-breakdown.ts';
import { thetaResponse } from './temperature-response.ts';

export interface FeedBreakdownParameters extends OrganicBreakdownParameters {
  readonly theta: number;
}

/**
 * Uneaten feed falling apart, at a pace that is 1 for flakes and otherwise the mean of the kinds that lie there. See
 * `organicBreakdown` for the equations.
 * @validity soaked dry feeds; the first hours of leaching are in the mean rate
 * @source aquaculture-science-1989 (oxygen uptake of feed residue gives rate times share, and theta)
 */
export const feedBreakdown = organicBreakdown<FeedBreakdownParameters>({
  id: 'feed-breakdown',
  detritusFrom: 'feed',
  oxidationOf: 'feed carbon',
  nutrientsFrom: 'feed',
  carbon: 'feedCarbon',
  nitrogen: 'feedNitrogen',
  phosphorus: 'feedPhosphorus',
  pace: 'feedPace',
  nutrientsNeedOxygen: true,
  warmth: ({ theta }) => thetaResponse(theta, 20),
  parameters: {
    rate: { unit: '1/d', min: 0.03, max: 3, meaning: 'loss of uneaten flakes at 20 degC' },
    oxidisedShare: { unit: '1', min: 0, max: 1, meaning: 'part used up at once, the rest becoming detritus' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
  },
});
