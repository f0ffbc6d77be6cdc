import { exp10 } from '../numerics/elementary.ts';
import type { Process, Reaction, Setting } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import type { VariableId } from '../variables/variables.ts';
import { heldInBalance } from './exchange-pair.ts';

export interface CationExchangeParameters {
  readonly grainRate: number;
  readonly bedVelocity: number;
  readonly looseFlow: number;
  readonly calciumHold: number;
  readonly magnesiumHold: number;
  readonly potassiumHold: number;
  readonly ammoniumHold: number;
}

interface Cation {
  readonly name: string;
  readonly dissolved: VariableId;
  readonly held: VariableId;
  readonly charge: 1 | 2;
  /** log10 of the hold over that on sodium. */
  readonly hold: (parameters: CationExchangeParameters) => number;
}

const CATIONS: readonly Cation[] = [
  {
    name: 'calcium',
    dissolved: 'calcium',
    held: 'exchangeableCalcium',
    charge: 2,
    hold: ({ calciumHold }) => calciumHold,
  },
  {
    name: 'magnesium',
    dissolved: 'magnesium',
    held: 'exchangeableMagnesium',
    charge: 2,
    hold: ({ magnesiumHold }) => magnesiumHold,
  },
  { name: 'sodium', dissolved: 'sodium', held: 'exchangeableSodium', charge: 1, hold: () => 0 },
  {
    name: 'potassium',
    dissolved: 'potassium',
    held: 'exchangeablePotassium',
    charge: 1,
    hold: ({ potassiumHold }) => potassiumHold,
  },
  {
    name: 'ammonium',
    dissolved: 'ammonium',
    held: 'exchangeableAmmonium',
    charge: 1,
    hold: ({ ammoniumHold }) => ammoniumHold,
  },
];

/** mol/m3 in mol/L. */
const PER_LITRE = 1e-3;
/** Keeps quotients finite where the water holds no hydrogen ions or the exchanger no hold on them [mol/L]. */
const LEAST_PULL = 1e-12;

function reactionsOf({ name, dissolved, held, charge }: Cation): [Reaction, Reaction] {
  return [
    {
      name: `${name} bound by ground and moss`,
      stoichiometry: { [dissolved]: -1, exchangeableAcid: -charge, [held]: 1 },
    },
    {
      name: `${name} given up by ground and moss`,
      stoichiometry: { [held]: -1, [dissolved]: 1, exchangeableAcid: charge },
    },
  ];
}

/**
 * Exchange of cations against the hydrogen ions of substrate, peat and moss. Each cation moves toward what it would
 * hold in balance with the hydrogen ions and the water (Gaines-Thomas, see `heldInBalance`); when all rest, all
 * quotients of the convention hold. Two resistances in series, the grain (k) and the water's way to it (G = velocity x
 * bed + flow per site x loose sites):
 *   bound     rate = k d G c / (k held_eq + G c),  d = held_eq - held: at most G c
 *   given up  rate = k d G s / (z k d + G s),      d = held - held_eq, s = [H+] + [CO2]: at most what acid there is
 * Hydrogen ions let go are the charge that leaves the water: alkalinity falls by what is bound.
 * @validity all exchangers together count as one of mean hold on hydrogen ions; concentrations stand for activities
 *   of all but hydrogen ions, in dilute water; aluminium is left out
 * @source appelo-postma-2005 (equilibrium and constants), glueckauf-1955 (linear driving force)
 */
export const cationExchange: Process<CationExchangeParameters> = {
  id: 'cation-exchange',
  parameters: {
    grainRate: { unit: '1/d', min: 0.02, max: 100, meaning: 'exchange of a grain in ample water' },
    bedVelocity: {
      unit: 'cm/d',
      min: 0.05,
      max: 1000,
      meaning: 'water that a bed of substrate takes in, per area',
    },
    looseFlow: {
      unit: 'L/eq/d',
      min: 1,
      max: 1e5,
      meaning: 'water that reaches moss and peat lying loose, per site',
    },
    calciumHold: { unit: 'log10', min: -0.5, max: 2, meaning: 'hold on calcium over that on sodium' },
    magnesiumHold: { unit: 'log10', min: -0.5, max: 2, meaning: 'hold on magnesium over that on sodium' },
    potassiumHold: { unit: 'log10', min: -0.5, max: 2, meaning: 'hold on potassium over that on sodium' },
    ammoniumHold: { unit: 'log10', min: -0.5, max: 3, meaning: 'hold on ammonium over that on sodium' },
  },
  reads: [
    ...CATIONS.flatMap(({ dissolved, held }) => [dissolved, held]),
    'exchangeableAcid',
    'hydrogenActivity',
    'carbonDioxide',
    'waterVolume',
    'exchangeArea',
    'looseExchanger',
    'exchangeAcidStrength',
  ],
  changes: [...CATIONS.flatMap(({ dissolved, held }) => [dissolved, held]), 'exchangeableAcid'],
  prepare(parameters, setting) {
    return { reactions: CATIONS.flatMap(reactionsOf), evaluate: evaluation(parameters, setting) };
  },
};

function evaluation(parameters: CationExchangeParameters, setting: Setting) {
  const count = CATIONS.length;
  const dissolved = Int32Array.from(CATIONS, (cation) => setting.index(cation.dissolved));
  const held = Int32Array.from(CATIONS, (cation) => setting.index(cation.held));
  const charge = Int32Array.from(CATIONS, (cation) => cation.charge);
  const hold = Float64Array.from(CATIONS, (cation) => exp10(cation.hold(parameters)) * PER_LITRE);
  const acidAt = setting.index('exchangeableAcid');
  const strengthAt = setting.index('exchangeAcidStrength');
  const activityAt = setting.index('hydrogenActivity');
  const carbonDioxideAt = setting.index('carbonDioxide');
  const volumeAt = setting.index('waterVolume');
  const flowOf = flowToSites(parameters, setting);
  const k = parameters.grainRate / SECONDS_PER_DAY;

  return (values: Float64Array, rates: Float64Array, offset: number): void => {
    const acid = values[acidAt]!;
    const volume = values[volumeAt]!;
    const flow = flowOf(values);
    let sites = acid;
    for (let i = 0; i < count; i += 1) sites += charge[i]! * values[held[i]!]!;
    if (!(sites > 0 && volume > 0 && flow > 0)) {
      rates.fill(0, offset, offset + 2 * count);
      return;
    }
    const pull = Math.max(LEAST_PULL, values[strengthAt]! * values[activityAt]!);
    const supply = flow * (values[activityAt]! / PER_LITRE + values[carbonDioxideAt]!);
    for (let i = 0; i < count; i += 1) {
      const z = charge[i]!;
      const amount = values[held[i]!]!;
      const content = values[dissolved[i]!]! / volume;
      const ratio = (hold[i]! * content) / (z === 2 ? pull * pull : pull);
      const balance = (heldInBalance(z, (z * amount + acid) / sites, ratio) * sites) / z;
      const lacking = Math.min(balance - amount, acid / z);
      if (lacking > 0) {
        // Grain and the way to it in series; the way brings at most what the water holds.
        rates[offset + 2 * i] = (k * flow * content * lacking) / (k * balance + flow * content);
        rates[offset + 2 * i + 1] = 0;
      } else {
        rates[offset + 2 * i] = 0;
        const letGo = -k * lacking;
        rates[offset + 2 * i + 1] = letGo > 0 ? (letGo * supply) / (z * letGo + supply) : 0;
      }
    }
  };
}

/** Water that reaches the sites [m3/s]. */
function flowToSites({ bedVelocity, looseFlow }: CationExchangeParameters, setting: Setting) {
  const area = setting.index('exchangeArea');
  const loose = setting.index('looseExchanger');
  const velocity = bedVelocity / 100 / SECONDS_PER_DAY;
  const perSite = (looseFlow * PER_LITRE) / SECONDS_PER_DAY;
  return (values: Float64Array): number => velocity * values[area]! + perSite * values[loose]!;
}
