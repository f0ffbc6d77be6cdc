import type { Process } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { thetaResponse } from './temperature-response.ts';

export interface FeedBreakdownParameters {
  readonly rate: number;
  readonly oxidisedShare: number;
  readonly theta: number;
  readonly oxygenHalf: number;
}

/**
 * Uneaten feed falling apart, first order: k20 pace theta^(T - 20) pool, pace being 1 for flakes and the mean of the
 * kinds that lie there. The oxidised share is used up by the bacteria on
 * it at once (carbon with oxygen, as O2/(K + O2), nitrogen to ammonium, phosphorus to phosphate); the rest becomes
 * detritus.
 * @validity soaked dry feeds; the first hours of leaching are in the mean rate
 * @source aquaculture-science-1989 (oxygen uptake of feed residue gives rate times share, and theta)
 */
export const feedBreakdown: Process<FeedBreakdownParameters> = {
  id: 'feed-breakdown',
  parameters: {
    rate: { unit: '1/d', min: 0.03, max: 3, meaning: 'loss of uneaten flakes at 20 degC' },
    oxidisedShare: { unit: '1', min: 0, max: 1, meaning: 'part used up at once, the rest becoming detritus' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
  },
  reads: [
    'feedCarbon',
    'feedNitrogen',
    'feedPhosphorus',
    'feedPace',
    'oxygen',
    'waterVolume',
    'waterTemperature',
  ],
  changes: [
    'feedCarbon',
    'feedNitrogen',
    'feedPhosphorus',
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'dissolvedInorganicCarbon',
    'ammonium',
    'phosphate',
    'oxygen',
  ],
  prepare(parameters, setting) {
    const carbon = setting.index('feedCarbon');
    const nitrogen = setting.index('feedNitrogen');
    const phosphorus = setting.index('feedPhosphorus');
    const kind = setting.index('feedPace');
    const oxygen = setting.index('oxygen');
    const volume = setting.index('waterVolume');
    const temperature = setting.index('waterTemperature');
    const rate = parameters.rate / SECONDS_PER_DAY;
    const oxidised = parameters.oxidisedShare;
    const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        { name: 'detritus from feed, carbon', stoichiometry: { feedCarbon: -1, detritusCarbon: 1 } },
        { name: 'detritus from feed, nitrogen', stoichiometry: { feedNitrogen: -1, detritusNitrogen: 1 } },
        {
          name: 'detritus from feed, phosphorus',
          stoichiometry: { feedPhosphorus: -1, detritusPhosphorus: 1 },
        },
        {
          name: 'oxidation of feed carbon',
          stoichiometry: balanced(
            { feedCarbon: -1 },
            { carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' },
          ),
        },
        { name: 'ammonium from feed', stoichiometry: { feedNitrogen: -1, ammonium: 1 } },
        { name: 'phosphate from feed', stoichiometry: { feedPhosphorus: -1, phosphate: 1 } },
      ],
      evaluate(values, rates, offset) {
        const pace = rate * values[kind]! * warmth(values[temperature]!);
        const breath = monod(concentration(values[oxygen]!, values[volume]!), oxygenHalf);
        const apart = pace * (1 - oxidised);
        const atOnce = pace * oxidised * breath;
        rates[offset] = apart * values[carbon]!;
        rates[offset + 1] = apart * values[nitrogen]!;
        rates[offset + 2] = apart * values[phosphorus]!;
        rates[offset + 3] = atOnce * values[carbon]!;
        rates[offset + 4] = atOnce * values[nitrogen]!;
        rates[offset + 5] = atOnce * values[phosphorus]!;
      },
    };
  },
};
