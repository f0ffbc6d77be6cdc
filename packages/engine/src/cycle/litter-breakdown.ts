import type { Process, Reaction, Setting } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { thetaResponse } from './temperature-response.ts';

export interface LitterBreakdownParameters {
  readonly breakdownRate: number;
  readonly breakdownTheta: number;
  readonly fungalGrowth: number;
  readonly fungalDeath: number;
  readonly fungalYield: number;
  readonly fragments: number;
  readonly nitrogenHalf: number;
  readonly phosphorusHalf: number;
  readonly oxygenHalf: number;
  readonly acidLoss: number;
  readonly leachingRate: number;
  readonly leachingTheta: number;
  readonly labileShare: number;
}

const { nitrogenPerCarbon: NITROGEN, phosphorusPerCarbon: PHOSPHORUS } = COMPOSITIONS.fungi;
/** Activity of hydrogen ions at which half the loss by acid water is reached [mol/kg], pH 5.3. @source assumed */
const ACID_HALF = 5e-6;

function reactionsOf(carbonYield: number): Reaction[] {
  const burnt = { carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' } as const;
  const eaten = { litterCarbon: -1 / carbonYield, litterFungi: 1 };
  return [
    {
      name: 'fungi grown on the leaf alone',
      stoichiometry: balanced({ ...eaten, litterNitrogen: -NITROGEN, litterPhosphorus: -PHOSPHORUS }, burnt),
    },
    {
      name: 'fungi grown with ammonium',
      stoichiometry: balanced({ ...eaten, ammonium: -NITROGEN, phosphate: -PHOSPHORUS }, burnt),
    },
    {
      name: 'fungi grown with nitrate',
      stoichiometry: balanced({ ...eaten, nitrate: -NITROGEN, phosphate: -PHOSPHORUS }, burnt),
    },
    {
      name: 'dead fungi',
      stoichiometry: {
        litterFungi: -1,
        detritusCarbon: 1,
        detritusNitrogen: NITROGEN,
        detritusPhosphorus: PHOSPHORUS,
      },
    },
    { name: 'detritus from litter, carbon', stoichiometry: { litterCarbon: -1, detritusCarbon: 1 } },
    { name: 'detritus from litter, nitrogen', stoichiometry: { litterNitrogen: -1, detritusNitrogen: 1 } },
    {
      name: 'detritus from litter, phosphorus',
      stoichiometry: { litterPhosphorus: -1, detritusPhosphorus: 1 },
    },
    { name: 'colour from litter', stoichiometry: { litterLeachable: -1, dissolvedOrganicCarbon: 1 } },
    { name: 'sugars from litter', stoichiometry: { litterLeachable: -1, labileOrganicCarbon: 1 } },
  ];
}

/**
 * Leaf litter in the water. Its soluble part leaves within days, coloured and colourless. Fungi grow into the leaves,
 *   growth = mu theta^(T - 20) O2/(K + O2) F (1 - F/F_full) n,  F_full = phi pace acid L,
 * breathe the rest of what they take, soften as much again that falls to detritus, and die at m. Nitrogen and
 * phosphorus come from the leaf as far as they go and from the water for the rest (n: what the two allow), so poor
 * leaves hold nutrients back. phi is set so that conditioned leaves of pace 1 are lost at the breakdown rate:
 *   k = m (1 - m/mu) phi (1 + fragments)/yield.
 * Acid water lowers F_full by up to `acidLoss`. Until the fungi have grown in, leaves wait.
 * @validity leaves under water, all kinds on one pool of mean pace; eaters come on top
 * @source olson-1963 (first order in all), webster-1986 (rates), gessner-chauvet-1993 (fungi on alder),
 *   dangles-chauvet-2003 (acid water), taylor-1996 (leaching); the joined form is assumed
 */
export const litterBreakdown: Process<LitterBreakdownParameters> = {
  id: 'litter-breakdown',
  parameters: {
    breakdownRate: { unit: '1/d', min: 0.0005, max: 0.08, meaning: 'loss of conditioned oak at 20 degC' },
    breakdownTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of fungi per degree' },
    fungalGrowth: { unit: '1/d', min: 0.12, max: 1, meaning: 'highest growth of fungi at 20 degC' },
    fungalDeath: { unit: '1/d', min: 0.01, max: 0.1, meaning: 'death of fungi at 20 degC' },
    fungalYield: { unit: '1', min: 0.05, max: 0.6, meaning: 'fungal carbon made per leaf carbon taken' },
    fragments: { unit: '1', min: 0.1, max: 5, meaning: 'leaf that falls to detritus over leaf taken' },
    nitrogenHalf: { unit: 'mg/L', min: 0.001, max: 1, meaning: 'nitrogen of half the uptake from water' },
    phosphorusHalf: {
      unit: 'mg/L',
      min: 0.0005,
      max: 0.2,
      meaning: 'phosphorus of half the uptake from water',
    },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
    acidLoss: { unit: '1', min: 0, max: 0.9, meaning: 'part of the rate that very acid water takes' },
    leachingRate: { unit: '1/d', min: 0.1, max: 5, meaning: 'leaching of the soluble part at 20 degC' },
    leachingTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of leaching per degree' },
    labileShare: { unit: '1', min: 0, max: 1, meaning: 'part of the leachate that is colourless' },
  },
  reads: [
    'litterCarbon',
    'litterNitrogen',
    'litterPhosphorus',
    'litterLeachable',
    'litterFungi',
    'litterPace',
    'ammonium',
    'nitrate',
    'phosphate',
    'oxygen',
    'hydrogenActivity',
    'waterVolume',
    'waterTemperature',
  ],
  changes: [
    'litterCarbon',
    'litterNitrogen',
    'litterPhosphorus',
    'litterLeachable',
    'litterFungi',
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'dissolvedOrganicCarbon',
    'labileOrganicCarbon',
    'dissolvedInorganicCarbon',
    'ammonium',
    'nitrate',
    'phosphate',
    'oxygen',
  ],
  prepare(parameters, setting) {
    return {
      reactions: reactionsOf(parameters.fungalYield),
      evaluate: evaluation(parameters, setting),
    };
  },
};

function evaluation(parameters: LitterBreakdownParameters, setting: Setting) {
  const carbon = setting.index('litterCarbon');
  const nitrogen = setting.index('litterNitrogen');
  const phosphorus = setting.index('litterPhosphorus');
  const leachable = setting.index('litterLeachable');
  const fungi = setting.index('litterFungi');
  const pace = setting.index('litterPace');
  const acidity = setting.index('hydrogenActivity');
  const temperature = setting.index('waterTemperature');
  const { fungalYield, fungalDeath, fungalGrowth, fragments, acidLoss } = parameters;
  const full =
    (parameters.breakdownRate * fungalYield) /
    (fungalDeath * (1 - fungalDeath / fungalGrowth) * (1 + fragments));
  const growthRate = fungalGrowth / SECONDS_PER_DAY;
  const deathRate = fungalDeath / SECONDS_PER_DAY;
  const colourRate = ((1 - parameters.labileShare) * parameters.leachingRate) / SECONDS_PER_DAY;
  const sugarRate = (parameters.labileShare * parameters.leachingRate) / SECONDS_PER_DAY;
  const warmth = thetaResponse(parameters.breakdownTheta, 20);
  const leachingWarmth = thetaResponse(parameters.leachingTheta, 20);
  const fromWater = uptakeFromWater(parameters, setting);
  const breath = breathing(parameters.oxygenHalf / MOLAR_MASS.oxygen, setting);

  return (values: Float64Array, rates: Float64Array, offset: number): void => {
    const leaves = values[carbon]!;
    const living = values[fungi]!;
    const left = values[leachable]!;
    if (!(leaves > 0 || living > 0 || left > 0)) {
      rates.fill(0, offset, offset + 9);
      return;
    }
    const degrees = values[temperature]!;
    const warm = warmth(degrees);
    const acid = 1 - (acidLoss * values[acidity]!) / (values[acidity]! + ACID_HALF);
    const most = full * values[pace]! * acid * leaves;
    const room = living < most ? 1 - living / most : 0;
    const wanted = room > 0 ? growthRate * warm * breath(values) * living * room : 0;
    const own =
      leaves > 0
        ? Math.min(
            1,
            (values[nitrogen]! / leaves / fungalYield) * (1 / NITROGEN),
            (values[phosphorus]! / leaves / fungalYield) * (1 / PHOSPHORUS),
          )
        : 0;
    const { withAmmonium, withNitrate } = fromWater(values);
    rates[offset] = wanted * own;
    rates[offset + 1] = wanted * (1 - own) * withAmmonium;
    rates[offset + 2] = wanted * (1 - own) * withNitrate;
    rates[offset + 3] = deathRate * warm * living;
    const grown = rates[offset]! + rates[offset + 1]! + rates[offset + 2]!;
    const falling = leaves > 0 ? (grown * fragments) / fungalYield / leaves : 0;
    rates[offset + 4] = falling * leaves;
    rates[offset + 5] = falling * values[nitrogen]!;
    rates[offset + 6] = falling * values[phosphorus]!;
    const leaching = leachingWarmth(degrees) * left;
    rates[offset + 7] = colourRate * leaching;
    rates[offset + 8] = sugarRate * leaching;
  };
}

function breathing(half: number, setting: Setting) {
  const oxygen = setting.index('oxygen');
  const volume = setting.index('waterVolume');
  return (values: Float64Array): number => monod(concentration(values[oxygen]!, values[volume]!), half);
}

/** Shares of the wanted growth that dissolved nutrients allow [0..1]: ammonium first, nitrate for the rest. */
function uptakeFromWater(parameters: LitterBreakdownParameters, setting: Setting) {
  const ammonium = setting.index('ammonium');
  const nitrate = setting.index('nitrate');
  const phosphate = setting.index('phosphate');
  const volume = setting.index('waterVolume');
  const nitrogenHalf = parameters.nitrogenHalf / MOLAR_MASS.nitrogen;
  const phosphorusHalf = parameters.phosphorusHalf / MOLAR_MASS.phosphorus;
  const shares = { withAmmonium: 0, withNitrate: 0 };
  return (values: Float64Array): typeof shares => {
    const water = values[volume]!;
    const byPhosphorus = monod(concentration(values[phosphate]!, water), phosphorusHalf);
    const first = monod(concentration(values[ammonium]!, water), nitrogenHalf);
    const second = (1 - first) * monod(concentration(values[nitrate]!, water), nitrogenHalf);
    shares.withAmmonium = first * byPhosphorus;
    shares.withNitrate = second * byPhosphorus;
    return shares;
  };
}
