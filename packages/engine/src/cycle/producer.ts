import type { ParameterSpecs, Process, Setting } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import type { Composition } from '../variables/compositions.ts';
import type { VariableId } from '../variables/variables.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { thetaResponse } from './temperature-response.ts';

/** Parameters of growth, respiration and loss that algae and plants have in common. */
export interface ProducerParameters {
  readonly maximumGrowth: number;
  readonly growthTheta: number;
  readonly lightHalf: number;
  readonly nitrogenHalf: number;
  readonly phosphorusHalf: number;
  readonly carbonHalf: number;
  readonly preferenceHalf: number;
  readonly fullStock: number;
  readonly respirationRate: number;
  readonly lossRate: number;
  readonly lossTheta: number;
  readonly oxygenHalf: number;
}

/** One group of producers: its pool, where its light and its ground come from, and which carbon it takes. */
export interface ProducerGroup {
  readonly id: string;
  /** Read in budgets: 'attached algae'. */
  readonly name: string;
  readonly pool: VariableId;
  readonly composition: Composition;
  readonly light: VariableId;
  readonly ground: VariableId;
  /** Concentration of the carbon it can use [mol/m3]; dissolved inorganic carbon bounds it from above. */
  readonly carbon?: VariableId;
  readonly parameters: ParameterSpecs<ProducerParameters>;
}

/**
 * Share of the nitrogen that is taken as ammonium [0..1]:
 * p = A N / ((K + A)(K + N)) + A K / ((A + N)(K + N)), A ammonium and N nitrate.
 * @param ammonium A [mol/m3], >= 0
 * @param nitrate N [mol/m3], >= 0
 * @param half K [mol/m3], > 0
 * @source chapra-2008 (preference of algae for ammonium)
 */
export function ammoniumShare(ammonium: number, nitrate: number, half: number): number {
  if (!(ammonium > 0)) return 0;
  const either = ammonium / (ammonium + nitrate);
  return monod(ammonium, half) * monod(nitrate, half) + (either * half) / (half + nitrate);
}

/** The least of the shares light, nitrogen, phosphorus and carbon allow, as a function of the value array. */
function growthPerBiomass(
  group: ProducerGroup,
  parameters: ProducerParameters,
  setting: Setting,
): (values: Float64Array, ammonium: number, nitrate: number, water: number) => number {
  const light = setting.index(group.light);
  const ground = setting.index(group.ground);
  const pool = setting.index(group.pool);
  const phosphate = setting.index('phosphate');
  const inorganicCarbon = setting.index('dissolvedInorganicCarbon');
  const carbon = group.carbon === undefined ? undefined : setting.index(group.carbon);
  const temperature = setting.index('waterTemperature');
  const rate = parameters.maximumGrowth / SECONDS_PER_DAY;
  const nitrogenHalf = parameters.nitrogenHalf / MOLAR_MASS.nitrogen;
  const phosphorusHalf = parameters.phosphorusHalf / MOLAR_MASS.phosphorus;
  const warmth = thetaResponse(parameters.growthTheta, 20);
  return (values, ammonium, nitrate, water) => {
    const photons = values[light]!;
    const stock = values[pool]!;
    const room = 1 - stock / (parameters.fullStock * values[ground]!);
    if (!(photons > 0 && stock > 0 && room > 0)) return 0;
    const dissolved = concentration(values[inorganicCarbon]!, water);
    const usable = carbon === undefined ? dissolved : Math.min(values[carbon]!, dissolved);
    const scarcest = Math.min(
      monod(ammonium + nitrate, nitrogenHalf),
      monod(concentration(values[phosphate]!, water), phosphorusHalf),
      monod(usable, parameters.carbonHalf),
    );
    return (
      rate * warmth(values[temperature]!) * monod(photons, parameters.lightHalf) * scarcest * room * stock
    );
  };
}

/**
 * The process of a group of producers: growth on ammonium and on nitrate, respiration, and loss to detritus.
 * growth = mu20 theta^(T - 20) I/(K_I + I) min(N/(K_N + N), P/(K_P + P), C/(K_C + C)) (1 - B/(B_full A)) B,
 * split between ammonium and nitrate by `ammoniumShare`; respiration = r20 theta_r^(T - 20) O2/(K + O2) B;
 * loss = l20 theta_r^(T - 20) B. Growth releases the oxygen that building from carbon dioxide and the nitrogen at
 * hand gives; respiration returns carbon, ammonium and phosphate in the composition of the pool.
 * @param group pool, composition, light, ground and parameter ranges
 * @source chapra-2008 (bottom algae: first order with space limit, least of the nutrients), monod-1949
 */
export function producer(group: ProducerGroup): Process<ProducerParameters> {
  const { pool, composition } = group;
  const growthOn = (nitrogen: 'ammonium' | 'nitrate') =>
    balanced(
      { [pool]: 1 },
      { carbon: 'dissolvedInorganicCarbon', nitrogen, phosphorus: 'phosphate', oxygen: 'oxygen' },
    );
  return {
    id: group.id,
    parameters: group.parameters,
    reads: [
      pool,
      group.light,
      group.ground,
      ...(group.carbon === undefined ? [] : [group.carbon]),
      'ammonium',
      'nitrate',
      'phosphate',
      'oxygen',
      'dissolvedInorganicCarbon',
      'waterVolume',
      'waterTemperature',
    ],
    changes: [
      pool,
      'ammonium',
      'nitrate',
      'phosphate',
      'oxygen',
      'dissolvedInorganicCarbon',
      'detritusCarbon',
      'detritusNitrogen',
      'detritusPhosphorus',
    ],
    prepare(parameters, setting) {
      const stock = setting.index(pool);
      const ammonium = setting.index('ammonium');
      const nitrate = setting.index('nitrate');
      const oxygen = setting.index('oxygen');
      const volume = setting.index('waterVolume');
      const temperature = setting.index('waterTemperature');
      const growth = growthPerBiomass(group, parameters, setting);
      const preferenceHalf = parameters.preferenceHalf / MOLAR_MASS.nitrogen;
      const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
      const respiration = parameters.respirationRate / SECONDS_PER_DAY;
      const loss = parameters.lossRate / SECONDS_PER_DAY;
      const warmth = thetaResponse(parameters.lossTheta, 20);
      return {
        reactions: [
          { name: `growth of ${group.name} on ammonium`, stoichiometry: growthOn('ammonium') },
          { name: `growth of ${group.name} on nitrate`, stoichiometry: growthOn('nitrate') },
          {
            name: `respiration of ${group.name}`,
            stoichiometry: balanced(
              { [pool]: -1 },
              {
                carbon: 'dissolvedInorganicCarbon',
                nitrogen: 'ammonium',
                phosphorus: 'phosphate',
                oxygen: 'oxygen',
              },
            ),
          },
          {
            name: `loss of ${group.name} to detritus`,
            stoichiometry: {
              [pool]: -1,
              detritusCarbon: 1,
              detritusNitrogen: composition.nitrogenPerCarbon,
              detritusPhosphorus: composition.phosphorusPerCarbon,
            },
          },
        ],
        evaluate(values, rates, offset) {
          const water = values[volume]!;
          const reduced = concentration(values[ammonium]!, water);
          const oxidised = concentration(values[nitrate]!, water);
          const gross = growth(values, reduced, oxidised, water);
          const share = gross > 0 ? ammoniumShare(reduced, oxidised, preferenceHalf) : 0;
          const pace = warmth(values[temperature]!) * values[stock]!;
          rates[offset] = gross * share;
          rates[offset + 1] = oxidised > 0 ? gross * Math.max(0, 1 - share) : 0;
          rates[offset + 2] = respiration * pace * monod(concentration(values[oxygen]!, water), oxygenHalf);
          rates[offset + 3] = loss * pace;
        },
      };
    },
  };
}
