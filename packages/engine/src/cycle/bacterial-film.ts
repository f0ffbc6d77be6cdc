import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { lossToDetritus } from './producer.ts';
import { thetaResponse } from './temperature-response.ts';

export interface BacterialFilmParameters {
  readonly maximumGrowth: number;
  readonly theta: number;
  readonly yield: number;
  readonly detritusPerFilm: number;
  readonly oxygenHalf: number;
  readonly decayRate: number;
}

const { nitrogenPerCarbon, phosphorusPerCarbon } = COMPOSITIONS.bacteria;

/**
 * Film of bacteria and their small grazers on every wetted surface, lit or dark, living on detritus:
 * growth = mu20 theta^(T - 20) d/(K B + d) O2/(K_O + O2) room B, with d the scarcest of detritus carbon, nitrogen and
 * phosphorus, each counted in the carbon it could build, and room = 1 - the share of the surface that film and attached
 * algae fill (`surface-cover`). Scarce is what each of the film finds, so film dwindles with its food and never dies of much
 * surface. Per mol C grown, 1/Y of detritus carbon is taken and 1/Y - 1 burnt; its
 * nitrogen and phosphorus come from detritus too. Decay returns it to detritus, b20 theta^(T - 20) B.
 * @validity dissolved colour is not its food; what detritus lies where is not told apart
 * @source henze-2000 (yield of heterotrophs; hydrolysis by what lies there per biomass), monod-1949; `assumed`: the share of room
 */
export const bacterialFilm: Process<BacterialFilmParameters> = {
  id: 'bacterial-film',
  parameters: {
    maximumGrowth: { unit: '1/d', min: 0.05, max: 13, meaning: 'highest growth in a film at 20 degC' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of growth and decay per degree' },
    yield: { unit: 'mol C/mol C', min: 0.1, max: 0.7, meaning: 'film grown per detritus taken, as carbon' },
    detritusPerFilm: {
      unit: 'mol C/mol C',
      min: 0.05,
      max: 200,
      meaning: 'detritus per film at half the highest growth',
    },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which growth is halved' },
    decayRate: { unit: '1/d', min: 0.005, max: 0.6, meaning: 'decay and sloughing at 20 degC' },
  },
  reads: [
    'biofilm',
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'oxygen',
    'filmGroundFilled',
    'submergedArea',
    'darkFilmSurface',
    'waterVolume',
    'waterTemperature',
  ],
  changes: [
    'biofilm',
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'dissolvedInorganicCarbon',
    'oxygen',
  ],
  prepare(parameters, setting) {
    const film = setting.index('biofilm');
    const carbon = setting.index('detritusCarbon');
    const nitrogen = setting.index('detritusNitrogen');
    const phosphorus = setting.index('detritusPhosphorus');
    const oxygen = setting.index('oxygen');
    const filled = setting.index('filmGroundFilled');
    const lit = setting.index('submergedArea');
    const dark = setting.index('darkFilmSurface');
    const volume = setting.index('waterVolume');
    const temperature = setting.index('waterTemperature');
    const rate = parameters.maximumGrowth / SECONDS_PER_DAY;
    const decay = parameters.decayRate / SECONDS_PER_DAY;
    const taken = 1 / parameters.yield;
    const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        {
          name: 'growth of bacterial film',
          stoichiometry: {
            biofilm: 1,
            detritusCarbon: -taken,
            detritusNitrogen: -nitrogenPerCarbon,
            detritusPhosphorus: -phosphorusPerCarbon,
            dissolvedInorganicCarbon: taken - 1,
            oxygen: 1 - taken,
          },
        },
        {
          name: 'decay of bacterial film',
          stoichiometry: lossToDetritus('biofilm', COMPOSITIONS.bacteria),
        },
      ],
      evaluate(values, rates, offset) {
        const stock = values[film]!;
        const area = values[lit]! + values[dark]!;
        rates[offset] = 0;
        rates[offset + 1] = decay * warmth(values[temperature]!) * stock;
        if (!(stock > 0 && area > 0)) return;
        const room = 1 - values[filled]!;
        if (!(room > 0)) return;
        const food = Math.min(
          values[carbon]!,
          (values[nitrogen]! * taken) / nitrogenPerCarbon,
          (values[phosphorus]! * taken) / phosphorusPerCarbon,
        );
        rates[offset] =
          rate *
          warmth(values[temperature]!) *
          (food / (food + parameters.detritusPerFilm * stock)) *
          monod(concentration(values[oxygen]!, values[volume]!), oxygenHalf) *
          room *
          stock;
      },
    };
  },
};
