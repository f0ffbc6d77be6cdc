import type { Process, RunningProcess, Setting } from '../process/contract.ts';
import { balanced, type Stoichiometry } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { COMPOSITIONS, type Composition } from '../variables/compositions.ts';
import type { ElementId } from '../variables/elements.ts';
import type { VariableId } from '../variables/variables.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { carbonLimit } from './producer-carbon.ts';
import type { ProducerGroup, ProducerParameters } from './producer-group.ts';
import { heatLimited, thetaResponse } from './temperature-response.ts';

/**
 * Kept nitrogen and phosphorus over living matter [mol/mol] at which half of the growth draws on them, and the time [d]
 * after which what is not used is given back.
 * @source assumed: what a day respires is a few per cent, and stores of that size are used up within a day of growth, not
 * within the hour (0.01 to 0.1 give the same courses, but less leaves more to the steps); starving plants give nutrients up
 * over a week or two
 */
const KEPT_HALF = 0.06;
const KEEP_TIME = 10;

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

/** A number read from the value array. */
type Read = (values: Float64Array) => number;

/** Share of the room that is left, 1 in the open; not above 0 where there is none. */
function roomLeft<P extends ProducerParameters>(
  { pool, ground, filled, id }: ProducerGroup<P>,
  { fullStock }: ProducerParameters,
  setting: Setting,
): Read {
  if (ground !== undefined) {
    if (fullStock === undefined) throw new RangeError(`${id}: a ground needs the stock that fills it`);
    const [stock, area] = [setting.index(pool), setting.index(ground)];
    return (values) => 1 - values[stock]! / (fullStock * values[area]!);
  }
  if (filled === undefined) return () => 1;
  const share = setting.index(filled);
  return (values) => 1 - values[share]!;
}

/** Growth [mol C/s]: on nitrogen and phosphorus of the water, and on those it keeps. */
interface Growth {
  onWater: number;
  onKept: number;
}

/**
 * Growth: the least of the shares nitrogen, phosphorus and carbon allow, times light, warmth and room. What it keeps
 * goes first and needs carbon alone.
 */
function growthOf<P extends ProducerParameters>(
  group: ProducerGroup<P>,
  parameters: P,
  setting: Setting,
): (values: Float64Array, nitrogen: number, water: number) => Growth {
  const light = setting.index(group.light);
  const pool = setting.index(group.pool);
  const kept = setting.index(group.kept);
  const phosphate = setting.index('phosphate');
  const temperature = setting.index('waterTemperature');
  const rate = parameters.maximumGrowth / SECONDS_PER_DAY;
  const nitrogenHalf = parameters.nitrogenHalf / MOLAR_MASS.nitrogen;
  const phosphorusHalf = parameters.phosphorusHalf / MOLAR_MASS.phosphorus;
  const warmth = heatLimited(thetaResponse(parameters.growthTheta, 20), parameters.heatLimit);
  const room = roomLeft(group, parameters, setting);
  const carbon = carbonLimit(group, parameters, setting);
  const growth: Growth = { onWater: 0, onKept: 0 };
  return (values, nitrogen, water) => {
    growth.onWater = 0;
    growth.onKept = 0;
    const photons = values[light]!;
    const stock = values[pool]!;
    if (!(photons > 0 && stock > 0)) return growth;
    const left = room(values);
    if (!(left > 0)) return growth;
    const potential =
      rate * warmth(values[temperature]!) * monod(photons, parameters.lightHalf) * left * stock;
    const fixed = carbon(values, water, photons);
    const fromKept = monod(Math.max(0, values[kept]!), KEPT_HALF * stock);
    growth.onKept = potential * fixed * fromKept;
    if (!(nitrogen > 0)) return growth;
    const scarcest = Math.min(
      monod(nitrogen, nitrogenHalf),
      monod(concentration(values[phosphate]!, water), phosphorusHalf),
      fixed,
    );
    growth.onWater = potential * scarcest * (1 - fromKept);
    return growth;
  };
}

function readsOf<P extends ProducerParameters>(group: ProducerGroup<P>): VariableId[] {
  const { pool, kept, light, ground, filled, carbon, bicarbonateUsers } = group;
  return [
    pool,
    kept,
    light,
    ...(ground === undefined ? [] : [ground]),
    ...(filled === undefined ? [] : [filled]),
    ...(carbon === undefined || carbon === 'air' ? [] : [carbon]),
    ...(bicarbonateUsers === undefined ? [] : ([bicarbonateUsers, 'bicarbonate'] as const)),
    ...(carbon === 'air' ? [] : (['oxygen', 'dissolvedInorganicCarbon'] as const)),
    'ammonium',
    'nitrate',
    'phosphate',
    'waterVolume',
    'waterTemperature',
  ];
}

/** What dies of a group. */
function lossOf<P extends ProducerParameters>(group: ProducerGroup<P>): Stoichiometry {
  const { pool, composition, leavesRemains } = group;
  return leavesRemains ? lossToRemains(pool, composition) : lossToDetritus(pool, composition);
}

/** Elements closed from the water; with 'air', carbon and oxygen cross the boundary instead. */
function closing(carbon: VariableId | 'air' | undefined, nitrogen: VariableId) {
  const nutrients = { nitrogen, phosphorus: 'phosphate' } as const;
  if (carbon === 'air') return nutrients;
  return { ...nutrients, carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' } as const;
}

/** What is kept and not used goes back to the water. */
function givingBack(kept: VariableId): Stoichiometry {
  return balanced({ [kept]: -1 }, { nitrogen: 'ammonium', phosphorus: 'phosphate' });
}

/** A living pool that falls to detritus, per mol C. `derived`: element balance. */
export function lossToDetritus(pool: VariableId, composition: Composition): Stoichiometry {
  return {
    [pool]: -1,
    detritusCarbon: 1,
    detritusNitrogen: composition.nitrogenPerCarbon,
    detritusPhosphorus: composition.phosphorusPerCarbon,
  };
}

/**
 * A plant that dies, per mol C: remains of the composition of submerged plants, and what it held of nitrogen and
 * phosphorus beyond them, which leaches, to detritus. `derived`: element balance.
 */
export function lossToRemains(pool: VariableId, composition: Composition): Stoichiometry {
  const { nitrogenPerCarbon, phosphorusPerCarbon } = COMPOSITIONS.submergedPlants;
  const nitrogen = composition.nitrogenPerCarbon - nitrogenPerCarbon;
  const phosphorus = composition.phosphorusPerCarbon - phosphorusPerCarbon;
  return {
    [pool]: -1,
    plantRemains: 1,
    ...(nitrogen > 0 ? { detritusNitrogen: nitrogen } : {}),
    ...(phosphorus > 0 ? { detritusPhosphorus: phosphorus } : {}),
  };
}

function running<P extends ProducerParameters>(
  group: ProducerGroup<P>,
  parameters: P,
  setting: Setting,
): RunningProcess {
  const { pool, kept, name, carbon } = group;
  const stock = setting.index(pool);
  const store = setting.index(kept);
  const ammonium = setting.index('ammonium');
  const nitrate = setting.index('nitrate');
  const volume = setting.index('waterVolume');
  const temperature = setting.index('waterTemperature');
  const oxygen = carbon === 'air' ? undefined : setting.index('oxygen');
  const growth = growthOf(group, parameters, setting);
  const preferenceHalf = parameters.preferenceHalf / MOLAR_MASS.nitrogen;
  const oxygenHalf = (parameters.oxygenHalf ?? 0) / MOLAR_MASS.oxygen;
  const respiration = parameters.respirationRate / SECONDS_PER_DAY;
  const loss = parameters.lossRate / SECONDS_PER_DAY;
  const warmth = thetaResponse(parameters.lossTheta, 20);
  const giving = 1 / (KEEP_TIME * SECONDS_PER_DAY);
  const growthOn = (nitrogen: 'ammonium' | 'nitrate') => balanced({ [pool]: 1 }, closing(carbon, nitrogen));
  const gases = carbon === 'air' ? {} : ({ carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' } as const);
  return {
    reactions: [
      { name: `growth of ${name} on ammonium`, stoichiometry: growthOn('ammonium') },
      { name: `growth of ${name} on nitrate`, stoichiometry: growthOn('nitrate') },
      {
        name: `growth of ${name} on what it kept`,
        stoichiometry: balanced({ [pool]: 1, [kept]: -1 }, gases),
      },
      { name: `respiration of ${name}`, stoichiometry: balanced({ [pool]: -1, [kept]: 1 }, gases) },
      { name: `given back by ${name}`, stoichiometry: givingBack(kept) },
      { name: `loss of ${name}`, stoichiometry: lossOf(group) },
    ],
    evaluate(values, rates, offset) {
      const content = values[stock]!;
      const givenBack = giving * values[store]!;
      if (!(content > 0)) {
        rates.fill(0, offset, offset + 6);
        rates[offset + 4] = givenBack;
        return;
      }
      const water = values[volume]!;
      const reduced = concentration(values[ammonium]!, water);
      const oxidised = concentration(values[nitrate]!, water);
      const { onWater, onKept } = growth(values, reduced + oxidised, water);
      const share = onWater > 0 ? ammoniumShare(reduced, oxidised, preferenceHalf) : 0;
      const pace = warmth(values[temperature]!) * content;
      const breath = oxygen === undefined ? 1 : monod(concentration(values[oxygen]!, water), oxygenHalf);
      rates[offset] = onWater * share;
      rates[offset + 1] = oxidised > 0 ? onWater * Math.max(0, 1 - share) : 0;
      rates[offset + 2] = onKept;
      rates[offset + 3] = respiration * pace * breath;
      rates[offset + 4] = givenBack;
      rates[offset + 5] = loss * pace;
    },
  };
}

/**
 * The process of a group of producers: growth on ammonium and on nitrate, respiration, and loss to detritus.
 * growth = mu20 theta^(T - 20) h(T) I/(K_I + I) min(N/(K_N + N), P/(K_P + P), C/(K_C + C)) (1 - filled) B,
 * with h the fall in heat (`heatLimited`) and filled = B/(B_full A) or the share of a surface that it and its rivals fill, split between ammonium and
 * nitrate by `ammoniumShare`; C is the carbon that the group can use, and for the share of it that uses bicarbonate
 * C + a I/(K_b + I) HCO3, at most all inorganic carbon, since the uptake is driven by light; respiration = r20 theta_r^(T - 20) O2/(K + O2) B; loss = l20 theta_r^(T - 20) B.
 * Growth releases the oxygen that building from carbon dioxide and the nitrogen at hand gives; respiration returns the
 * carbon and keeps nitrogen and phosphorus for the growth of the next light, k = K/(K + 0.06 B) of which draws on them;
 * what is not used within some ten days goes back to the water. What is lost becomes detritus, or remains of plants. Those with leaves in the air exchange carbon dioxide
 * and oxygen with it and only nitrogen and phosphorus with the water.
 * Taking bicarbonate is taking inorganic carbon: alkalinity follows from the ions and stays, and the pH rises.
 * @param group pool, composition, light, what bounds it, carbon, and parameter ranges
 * @source chapra-2008 (first order with space limit, least of the nutrients), monod-1949, jones-2005 (light that the use
 *   of bicarbonate takes); `assumed`: bicarbonate counts as so much carbon dioxide
 */
export function producer<P extends ProducerParameters>(group: ProducerGroup<P>): Process<P> {
  const { pool, carbon } = group;
  const air: readonly ElementId[] = ['carbon', 'oxygen'];
  return {
    id: group.id,
    parameters: group.parameters,
    reads: readsOf(group),
    changes: [
      pool,
      group.kept,
      'ammonium',
      'nitrate',
      'phosphate',
      ...(carbon === 'air' ? [] : (['oxygen', 'dissolvedInorganicCarbon'] as const)),
      ...(Object.keys(lossOf(group)) as VariableId[]).filter((id) => id !== pool),
    ],
    ...(carbon === 'air' ? { boundary: air } : {}),
    prepare: (parameters, setting) => running(group, parameters, setting),
  };
}
