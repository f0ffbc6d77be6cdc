import type { ParameterSpecs, Process } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import type { VariableId } from '../variables/variables.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import type { TemperatureResponse } from './temperature-response.ts';

export interface OrganicBreakdownParameters {
  readonly rate: number;
  readonly oxidisedShare: number;
  readonly oxygenHalf: number;
}

/** What falls apart: its pools, what it is called in budgets, and how it goes. */
export interface BreakingDown<P extends OrganicBreakdownParameters> {
  readonly id: string;
  /** Read in 'detritus from ...', 'oxidation of ...' and 'ammonium from ...'. */
  readonly detritusFrom: string;
  readonly oxidationOf: string;
  readonly nutrientsFrom: string;
  readonly carbon: VariableId;
  readonly nitrogen: VariableId;
  readonly phosphorus: VariableId;
  /** Multiplies the rate [1]; 1 when left out. */
  readonly pace?: VariableId;
  /** Whether ammonium and phosphate come with oxygen only, as the oxidised carbon does. */
  readonly nutrientsNeedOxygen: boolean;
  /** Factor on the rate by the warmth of the water, 1 at 20 degC. */
  readonly warmth: (parameters: P) => TemperatureResponse;
  readonly parameters: ParameterSpecs<P>;
}

/**
 * The process of dead matter falling apart, first order: k20 pace f(T) pool. The oxidised share is used up by
 * the bacteria on it at once (carbon with oxygen, as O2/(K + O2), nitrogen to ammonium, phosphorus to phosphate); the
 * rest becomes detritus.
 * @param matter pools, names, pace, warmth and parameter ranges
 * @source assumed: first order; rates from the works named in the library
 */
export function organicBreakdown<P extends OrganicBreakdownParameters>(matter: BreakingDown<P>): Process<P> {
  const { carbon, nitrogen, phosphorus, pace } = matter;
  const read: VariableId[] = [carbon, nitrogen, phosphorus, ...(pace === undefined ? [] : [pace])];
  return {
    id: matter.id,
    parameters: matter.parameters,
    reads: [...read, 'oxygen', 'waterVolume', 'waterTemperature'],
    changes: [
      carbon,
      nitrogen,
      phosphorus,
      'detritusCarbon',
      'detritusNitrogen',
      'detritusPhosphorus',
      'dissolvedInorganicCarbon',
      'ammonium',
      'phosphate',
      'oxygen',
    ],
    prepare(parameters, setting) {
      const carbonAt = setting.index(carbon);
      const nitrogenAt = setting.index(nitrogen);
      const phosphorusAt = setting.index(phosphorus);
      const paceAt = pace === undefined ? undefined : setting.index(pace);
      const oxygen = setting.index('oxygen');
      const volume = setting.index('waterVolume');
      const temperature = setting.index('waterTemperature');
      const rate = parameters.rate / SECONDS_PER_DAY;
      const oxidised = parameters.oxidisedShare;
      const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
      const warmth = matter.warmth(parameters);
      const { detritusFrom, oxidationOf, nutrientsFrom, nutrientsNeedOxygen } = matter;
      return {
        reactions: [
          {
            name: `detritus from ${detritusFrom}, carbon`,
            stoichiometry: { [carbon]: -1, detritusCarbon: 1 },
          },
          {
            name: `detritus from ${detritusFrom}, nitrogen`,
            stoichiometry: { [nitrogen]: -1, detritusNitrogen: 1 },
          },
          {
            name: `detritus from ${detritusFrom}, phosphorus`,
            stoichiometry: { [phosphorus]: -1, detritusPhosphorus: 1 },
          },
          {
            name: `oxidation of ${oxidationOf}`,
            stoichiometry: balanced(
              { [carbon]: -1 },
              { carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' },
            ),
          },
          { name: `ammonium from ${nutrientsFrom}`, stoichiometry: { [nitrogen]: -1, ammonium: 1 } },
          { name: `phosphate from ${nutrientsFrom}`, stoichiometry: { [phosphorus]: -1, phosphate: 1 } },
        ],
        evaluate(values, rates, offset) {
          const own = paceAt === undefined ? rate : rate * values[paceAt]!;
          const pace = own * warmth(values[temperature]!);
          const breath = monod(concentration(values[oxygen]!, values[volume]!), oxygenHalf);
          const apart = pace * (1 - oxidised);
          const oxidation = pace * oxidised * breath;
          const release = nutrientsNeedOxygen ? oxidation : pace * oxidised;
          rates[offset] = apart * values[carbonAt]!;
          rates[offset + 1] = apart * values[nitrogenAt]!;
          rates[offset + 2] = apart * values[phosphorusAt]!;
          rates[offset + 3] = oxidation * values[carbonAt]!;
          rates[offset + 4] = release * values[nitrogenAt]!;
          rates[offset + 5] = release * values[phosphorusAt]!;
        },
      };
    },
  };
}
